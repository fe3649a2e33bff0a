/** Closed loops of wire. Lengths in m. */
import { exactly } from "../quantity/quantity";
import type { Antenna } from "../station/antennaDescription";
import type { Conductor, Place } from "../station/place";
import { antennaWith, copperTube, east, metres, place, usualHeight, wavelengthAt, wireFor } from "./pieces";
import type { Starter } from "./starter";

interface Ring {
  readonly round: number;
  /** Height of the lowest wire. */
  readonly low: number;
  readonly wire: Conductor;
}

const loop = (corners: readonly Place[], side: number, wire: Conductor): Antenna =>
  antennaWith({ kind: "loop", corners, fedAt: { side }, wire });

/** An upright square, fed in the middle of its lower side. */
export function uprightSquare({ round, low, wire }: Ring): Antenna {
  const s = round / 4;
  const corners = [place(-s / 2, 0, low), place(s / 2, 0, low), place(s / 2, 0, low + s), place(-s / 2, 0, low + s)];
  return loop(corners, 1, wire);
}

/** A level square, fed in the middle of a side. */
export function levelSquare({ round, low, wire }: Ring): Antenna {
  const s = round / 8;
  return loop([place(-s, -s, low), place(s, -s, low), place(s, s, low), place(-s, s, low)], 1, wire);
}

/** An upright triangle of equal sides with its point up, fed in the middle of its lower side. */
export function uprightTriangle({ round, low, wire }: Ring): Antenna {
  const s = round / 3;
  return loop([place(-s / 2, 0, low), place(s / 2, 0, low), place(0, 0, low + (s * Math.sqrt(3)) / 2)], 1, wire);
}

/** A level triangle of equal sides, fed in the middle of a side. */
export function levelTriangle({ round, low, wire }: Ring): Antenna {
  const s = round / 3;
  return loop([place(-s / 2, 0, low), place(s / 2, 0, low), place(0, (s * Math.sqrt(3)) / 2, low)], 1, wire);
}

export const smallLoop = (d: {
  round: number;
  height: number;
  tube: Conductor;
  capacitor: { from: number; to: number; q: number };
  joints: number;
}): Antenna =>
  antennaWith({
    kind: "small loop",
    round: metres(d.round),
    height: metres(d.height),
    plane: east,
    wire: d.tube,
    capacitor: { from: d.capacitor.from, to: d.capacitor.to, q: exactly(d.capacitor.q) },
    jointsResistance: exactly(d.joints),
  });

const fullWave = "306.3 m over the frequency in MHz all round: common practice, no source";
const low = (w: number): number => Math.min(3, Math.max(1.5, w / 8));

const fullWaveStarter = (
  name: string,
  says: string,
  make: (ring: Ring) => Antenna,
  lowest: (wavelength: number) => number,
): Starter => ({
  name,
  says,
  rule: fullWave,
  feeding: { kind: "line" },
  at: (f) => {
    const w = wavelengthAt(f);
    return make({ round: 1.0217 * w, low: lowest(w), wire: wireFor(w) });
  },
});

export const loopStarters: readonly Starter[] = [
  fullWaveStarter("upright square loop", "a full wave of wire as an upright square", uprightSquare, low),
  fullWaveStarter("level square loop", "a full wave of wire as a level square", levelSquare, usualHeight),
  fullWaveStarter("upright triangle loop", "a full wave of wire as an upright triangle", uprightTriangle, low),
  fullWaveStarter("level triangle loop", "a full wave of wire as a level triangle", levelTriangle, usualHeight),
  {
    name: "quarter-wave loop",
    says: "a quarter wave of wire as an upright square, matched by a tuner at its feed",
    rule: "a quarter of a wavelength all round: common practice, no source",
    feeding: { kind: "tuner at the antenna" },
    at: (f) => {
      const w = wavelengthAt(f);
      return uprightSquare({ round: w / 4, low: low(w), wire: wireFor(w) });
    },
  },
  {
    name: "small transmitting loop",
    says: "a ring of tube much shorter than a wave, tuned by its capacitor",
    rule: "an eighth of a wavelength round, tube of 22 mm, capacitor of Q 2000, joints of 5 mohm: common practice, no source",
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const round = w / 8;
      const tube = copperTube(Math.min(22e-3, Number((round / 100).toPrecision(1))));
      return smallLoop({
        round,
        height: 1.5 + round / (2 * Math.PI),
        tube,
        capacitor: rangeFor(round, tube, f),
        joints: 5e-3,
      });
    },
  },
];

/** A capacitor from a third to three times what a round loop needs: L = μ0 b (ln(8 b/a) - 2), elementary texts. */
function rangeFor(round: number, tube: Conductor, frequency: number) {
  const b = round / (2 * Math.PI);
  const inductance = 4e-7 * Math.PI * b * (Math.log((16 * b) / tube.diameter.value) - 2);
  const needed = 1 / ((2 * Math.PI * frequency) ** 2 * inductance);
  const tidy = (c: number): number => Number(c.toPrecision(2));
  return { from: tidy(needed / 3), to: tidy(needed * 3), q: 2000 };
}
