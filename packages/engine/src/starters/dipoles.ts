/** Half-wave wires fed in the middle or near it. Lengths in m. */
import { exactly } from "../quantity/quantity";
import type { Antenna } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import { antennaOfWires, antennaWith, east, feedAt, metres, place, usualHeight, wavelengthAt, wireFor } from "./pieces";
import type { Starter } from "./starter";

/** 142.6 m over the frequency in MHz, the usual length of wire of a half-wave dipole, in wavelengths. */
export const halfWave = 0.4757;
const halfWaveRule = "142.6 m over the frequency in MHz: common practice, no source";

const level = (height: number, wire: Conductor) => ({
  height: metres(height),
  endsHeight: metres(height),
  sag: exactly(0),
  direction: east,
  wire,
});

export const dipole = (d: { length: number; height: number; wire: Conductor }): Antenna =>
  antennaWith({ kind: "dipole", length: metres(d.length), ...level(d.height, d.wire) });

export const invertedVee = (d: { length: number; height: number; ends: number; wire: Conductor }): Antenna =>
  antennaWith({
    kind: "inverted vee",
    length: metres(d.length),
    height: metres(d.height),
    endsHeight: metres(d.ends),
    direction: east,
    wire: d.wire,
  });

export const foldedDipole = (d: { length: number; spacing: number; height: number; wire: Conductor }): Antenna =>
  antennaWith({
    kind: "folded dipole",
    length: metres(d.length),
    spacing: metres(d.spacing),
    height: metres(d.height),
    direction: east,
    wire: d.wire,
  });

export const offCentreDipole = (d: { legs: readonly [number, number]; height: number; wire: Conductor }): Antenna =>
  antennaWith({
    kind: "off-centre dipole",
    legs: [metres(d.legs[0]), metres(d.legs[1])],
    ...level(d.height, d.wire),
  });

/** A dipole that slopes at 45 degrees from a mast, its lower end at `low`. */
export function sloper(d: { length: number; low: number; wire: Conductor }): Antenna {
  const half = d.length / 2 / Math.SQRT2;
  const middle = place(half, 0, d.low + half);
  return antennaOfWires(
    [
      ["upper leg", middle, place(0, 0, d.low + 2 * half), d.wire],
      ["lower leg", middle, place(2 * half, 0, d.low), d.wire],
    ],
    [feedAt(middle, "upper leg", "lower leg")],
  );
}

const line = { kind: "line" } as const;

export const dipoleStarters: readonly Starter[] = [
  {
    name: "dipole",
    says: "a level half-wave wire fed in the middle",
    rule: halfWaveRule,
    feeding: line,
    at: (f) => {
      const w = wavelengthAt(f);
      return dipole({ length: halfWave * w, height: usualHeight(w), wire: wireFor(w) });
    },
  },
  {
    name: "inverted vee",
    says: "a half-wave wire with one mast in the middle, its legs 30 degrees down",
    rule: halfWaveRule,
    feeding: line,
    at: (f) => {
      const w = wavelengthAt(f);
      const height = usualHeight(w);
      const drop = Math.min((halfWave * w) / 4, height - 2);
      return invertedVee({ length: halfWave * w, height, ends: height - drop, wire: wireFor(w) });
    },
  },
  {
    name: "folded dipole",
    says: "two parallel half-wave wires joined at their ends, one of them fed: four times the impedance",
    rule: halfWaveRule,
    feeding: { kind: "balun", ohms: 200 },
    at: (f) => {
      const w = wavelengthAt(f);
      const spacing = Math.min(0.3, w / 100);
      return foldedDipole({ length: halfWave * w, spacing, height: usualHeight(w), wire: wireFor(w) });
    },
  },
  {
    name: "off-centre dipole",
    says: "a half-wave wire fed at a third of its length, for its even multiples too",
    rule: `${halfWaveRule}; legs one to two`,
    feeding: { kind: "balun", ohms: 200 },
    at: (f) => {
      const w = wavelengthAt(f);
      const legs = [(halfWave * w) / 3, (2 * halfWave * w) / 3] as const;
      return offCentreDipole({ legs, height: usualHeight(w), wire: wireFor(w) });
    },
  },
  {
    name: "sloper",
    says: "a half-wave wire sloping down from a mast",
    rule: halfWaveRule,
    feeding: line,
    at: (f) => {
      const w = wavelengthAt(f);
      return sloper({ length: halfWave * w, low: 2, wire: wireFor(w) });
    },
  },
  {
    name: "doublet",
    says: "a wire of no special length fed in the middle by a pair line and a tuner, for many bands",
    rule: "0.62 wavelengths, far from resonance: common practice, no source",
    feeding: { kind: "tuner and pair line" },
    at: (f) => {
      const w = wavelengthAt(f);
      return dipole({ length: 0.62 * w, height: usualHeight(w), wire: wireFor(w) });
    },
  },
];
