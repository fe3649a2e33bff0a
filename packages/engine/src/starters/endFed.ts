/** Wires fed at their end. Lengths in m. */
import type { Antenna } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import { halfWave } from "./dipoles";
import { antennaOfWires, feedAt, place, usualHeight, wavelengthAt, wireFor } from "./pieces";
import type { Starter } from "./starter";

/** A wire from its feed, level to the east; a counterpoise level to the west. */
export function endFedWire(d: { length: number; counterpoise: number; height: number; wire: Conductor }): Antenna {
  const feed = place(0, 0, d.height);
  return antennaOfWires(
    [
      ["wire", feed, place(d.length, 0, d.height), d.wire],
      ["counterpoise", feed, place(-d.counterpoise, 0, d.height), d.wire],
    ],
    [feedAt(feed, "wire", "counterpoise")],
  );
}

/** A wire from a low feed up to a mast and on, level; a counterpoise level below it. */
export function randomWire(d: {
  length: number;
  counterpoise: number;
  foot: number;
  height: number;
  wire: Conductor;
}): Antenna {
  const feed = place(0, 0, d.foot);
  const up = d.height - d.foot;
  const top = place(up / 2, 0, d.height);
  const rest = d.length - Math.hypot(up, up / 2);
  return antennaOfWires(
    [
      ["slope", feed, top, d.wire],
      ["level wire", top, place(up / 2 + rest, 0, d.height), d.wire],
      ["counterpoise", feed, place(d.counterpoise, 0, d.foot), d.wire],
    ],
    [feedAt(feed, "slope", "counterpoise")],
  );
}

/** A half wave standing on a quarter-wave stub of two wires, shorted at its foot and fed across it a little above. */
export function jAntenna(d: {
  halfWave: number;
  stub: number;
  spacing: number;
  tap: number;
  foot: number;
  wire: Conductor;
}): Antenna {
  const at = (x: number, up: number) => place(x, 0, d.foot + up);
  const { spacing: x, tap } = d;
  return antennaOfWires(
    [
      ["radiator", at(0, d.stub), at(0, d.stub + d.halfWave), d.wire],
      ["long side", at(0, tap), at(0, d.stub), d.wire],
      ["long foot", at(0, 0), at(0, tap), d.wire],
      ["short", at(0, 0), at(x, 0), d.wire],
      ["short foot", at(x, 0), at(x, tap), d.wire],
      ["short side", at(x, tap), at(x, d.stub), d.wire],
      ["tap", at(0, tap), at(x, tap), d.wire],
    ],
    [feedAt(at(x, tap), "tap", "short foot")],
  );
}

export const endFedStarters: readonly Starter[] = [
  {
    name: "end-fed half wave",
    says: "a half-wave wire fed at its end through a transformer, with a short counterpoise",
    rule: "142.6 m over the frequency in MHz, counterpoise a twentieth of a wavelength, 2450 ohm: common practice, no source",
    feeding: { kind: "transformer", ohms: 2450 },
    at: (f) => {
      const w = wavelengthAt(f);
      return endFedWire({ length: halfWave * w, counterpoise: w / 20, height: usualHeight(w), wire: wireFor(w) });
    },
  },
  {
    name: "random wire",
    says: "a wire of no special length from a tuner up to a mast and on, with a counterpoise",
    rule: "three eighths of a wavelength, far from a half wave, counterpoise a quarter: common practice, no source",
    feeding: { kind: "tuner at the antenna" },
    at: (f) => {
      const w = wavelengthAt(f);
      const height = usualHeight(w);
      const size = { length: Math.max(0.375 * w, 1.6 * height), counterpoise: w / 4, foot: height / 4 };
      return randomWire({ ...size, height, wire: wireFor(w) });
    },
  },
  {
    name: "J-shaped half wave",
    says: "an upright half wave on a quarter-wave matching stub",
    rule: "0.485 and 0.25 wavelengths, tapped at 0.0115: found with this program's own moment method for 50 ohm",
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const size = { halfWave: 0.485 * w, stub: 0.25 * w, spacing: Math.min(0.014 * w, 0.1), tap: 0.0115 * w };
      return jAntenna({ ...size, foot: Math.max(1, w / 4), wire: wireFor(w) });
    },
  },
];
