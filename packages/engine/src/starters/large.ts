/** Antennas of many wavelengths: the helix and the rhombic. Lengths in m. */
import { exactly } from "../quantity/quantity";
import type { Antenna } from "../station/antennaDescription";
import type { Conductor, Place } from "../station/place";
import {
  antennaOfWires,
  copperTube,
  feedAt,
  metres,
  place,
  type Run,
  usualHeight,
  wavelengthAt,
  wireFor,
} from "./pieces";
import type { Starter } from "./starter";

/** Straight pieces of one turn of a helix. */
const piecesPerTurn = 8;

/** A helix with its axis to the east, before a reflector of spokes, fed between its beginning and the lowest spoke. */
export function helix(d: {
  turns: number;
  /** Length of one turn's circle; the pieces are as long together. */
  round: number;
  rise: number;
  height: number;
  spokes: number;
  spoke: number;
  wire: Conductor;
}): Antenna {
  const radius = d.round / (2 * piecesPerTurn * Math.sin(Math.PI / piecesPerTurn));
  const around = (x: number, from: number, turn: number): Place =>
    place(x, from * Math.sin(turn), d.height - from * Math.cos(turn));
  const turned = (i: number): Place =>
    around(d.round / 40 + (d.rise * i) / piecesPerTurn, radius, (2 * Math.PI * i) / piecesPerTurn);
  const [hub, foot] = [place(0, 0, d.height), around(0, radius, 0)];
  const coil = Array.from(
    { length: d.turns * piecesPerTurn },
    (_, i): Run => [`turn ${i + 1}`, turned(i), turned(i + 1), d.wire],
  );
  const spokes = Array.from({ length: d.spokes }, (_, i): Run => {
    const end = around(0, d.spoke, (2 * Math.PI * i) / d.spokes);
    return [`spoke ${i + 1}`, i === 0 ? foot : hub, end, d.wire];
  });
  const inner: Run = ["inner spoke", hub, foot, d.wire];
  return antennaOfWires(
    [["lead", foot, turned(0), d.wire], ...coil, inner, ...spokes],
    [feedAt(foot, "lead", "spoke 1")],
  );
}

/** Four legs in a level rhombus, its long diagonal to the east: fed at the west corner, ended by a resistor at the east one. */
export function rhombic(d: {
  leg: number;
  /** Half of the angle between the legs at the feed, rad. */
  halfAngle: number;
  resistance: number;
  height: number;
  wire: Conductor;
}): Antenna {
  const [x, y] = [d.leg * Math.cos(d.halfAngle), d.leg * Math.sin(d.halfAngle)];
  const at = (east: number, north: number): Place => place(east, north, d.height);
  return antennaOfWires(
    [
      ["near left", at(0, 0), at(x, y), d.wire],
      ["near right", at(0, 0), at(x, -y), d.wire],
      ["far left", at(x, y), at(2 * x, 0), d.wire],
      ["far right", at(x, -y), at(2 * x, 0), d.wire],
    ],
    [feedAt(at(0, 0), "near left", "near right")],
    {
      loads: [
        {
          kind: "resistor",
          component: {
            coil: null,
            capacitor: null,
            resistor: exactly(d.resistance),
            q: exactly(Number.POSITIVE_INFINITY),
          },
          selfCapacitance: null,
          hat: null,
          on: "far left",
          // A little before the far corner, where the wires meet.
          fromFeed: metres(0.985 * d.leg),
          length: null,
        },
      ],
    },
  );
}

export const largeStarters: readonly Starter[] = [
  {
    name: "helix",
    says: "four turns of about a wavelength before a reflector of spokes, for circular polarisation",
    rule: "1.15 wavelengths round, 13 degrees of pitch: Kraus, Antennas (from memory)",
    feeding: { kind: "transformer", ohms: 140 },
    at: (f) => {
      const w = wavelengthAt(f);
      const wire = copperTube(Math.max(2e-3, Number((w / 200).toPrecision(1))));
      const round = 1.15 * w;
      const size = { turns: 4, round, rise: round * Math.tan((13 * Math.PI) / 180), spokes: 6, spoke: 0.4 * w };
      return helix({ ...size, height: Math.max(4, 1.5 * w), wire });
    },
  },
  {
    name: "rhombic",
    says: "a level rhombus of legs two waves long, ended by a resistor",
    rule: "legs of 2 wavelengths, 31 degrees to either side: textbooks, from memory; 800 ohm",
    feeding: { kind: "balun", ohms: 800 },
    at: (f) => {
      const w = wavelengthAt(f);
      const size = { leg: 2 * w, halfAngle: (31 * Math.PI) / 180, resistance: 800 };
      return rhombic({ ...size, height: Math.max(usualHeight(w), 0.6 * w), wire: wireFor(w) });
    },
  },
];
