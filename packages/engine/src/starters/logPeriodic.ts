/** The log-periodic row of dipoles from its two constants. Lengths in m. */

import type { LineEntry } from "../lines/lineModel";
import { exactly } from "../quantity/quantity";
import type { Antenna, Joined } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import { antennaOfWires, feedAt, metres, place, type Run, tubeFor, usualHeight, wavelengthAt } from "./pieces";
import type { Starter } from "./starter";

/** Each element `ratio` times as long as the one behind it, `spacing` times twice its length before it. */
export interface LogPeriodicConstants {
  readonly ratio: number;
  readonly spacing: number;
}

/** Longest element, in wavelengths at the lowest frequency. */
const longest = 0.5;

/**
 * Several elements work at each frequency: how far above the highest one the shortest must resonate,
 * 1.1 + 7.7 (1 - ratio)² cot α, cot α = 4 spacing/(1 - ratio). Carrel 1961, from memory.
 */
const activeRegion = ({ ratio, spacing }: LogPeriodicConstants): number =>
  1.1 + 7.7 * (1 - ratio) ** 2 * ((4 * spacing) / (1 - ratio));

/** Lengths of the elements and their places along the boom, longest first. */
export function logPeriodicRow(
  constants: LogPeriodicConstants,
  from: number,
  to: number,
): (readonly [length: number, along: number])[] {
  const { ratio, spacing } = constants;
  const row: [number, number][] = [];
  let [length, along] = [longest * wavelengthAt(from), 0];
  const last = (longest * wavelengthAt(to)) / activeRegion(constants);
  for (;;) {
    row.push([length, along]);
    if (length <= last) return row;
    along += 2 * spacing * length;
    length *= ratio;
  }
}

/** Elements across a boom to the east, joined by a crossed line of air, fed at the shortest. */
export function logPeriodic(d: {
  row: readonly (readonly [length: number, along: number])[];
  lineImpedance: number;
  height: number;
  tube: Conductor;
}): Antenna {
  const count = d.row.length;
  const name = (i: number): string => (i === count - 1 ? "front" : `element ${i + 1}`);
  const centre = (i: number) => place(d.row[i]![1], 0, d.height);
  const runs = d.row.flatMap(([length, along], i): Run[] => [
    [`${name(i)} left`, centre(i), place(along, length / 2, d.height), d.tube],
    [`${name(i)} right`, centre(i), place(along, -length / 2, d.height), d.tube],
  ]);
  const feeds = d.row.map((_, i) => feedAt(centre(i), `${name(i)} left`, `${name(i)} right`, name(i)));
  const joined = d.row.slice(1).map(([, along], i): Joined => {
    const length = metres(along - d.row[i]![1]);
    return { line: airLine(d.lineImpedance), length, from: name(i + 1), farEnd: { feed: name(i), crossed: true } };
  });
  return antennaOfWires(runs, feeds, { joined });
}

/** A line of two tubes in air: nearly without loss. */
const airLine = (impedance: number): LineEntry => ({
  designation: `${impedance} ohm line`,
  model: {
    kind: "data sheet",
    side: "balanced",
    impedance: exactly(impedance),
    velocityFactor: exactly(1),
    loss: [{ frequency: 30e6, decibelsPerMetre: exactly(1e-3) }],
  },
  build: null,
  sources: [{ value: "impedance, velocity factor, loss", source: "the station file", status: "stated by the owner" }],
});

export const logPeriodicStarters: readonly Starter[] = [
  {
    name: "log-periodic",
    says: "a row of dipoles that grow by a constant ratio, for a frequency and half as much again",
    rule: "ratio 0.9, spacing 0.06 (Carrel 1961, from memory); crossed line of 150 ohm",
    feeding: { kind: "line to one feed", feed: "front" },
    at: (f) => {
      const w = wavelengthAt(f);
      const row = logPeriodicRow({ ratio: 0.9, spacing: 0.06 }, f, 1.5 * f);
      return logPeriodic({ row, lineImpedance: 150, height: usualHeight(w), tube: tubeFor(w) });
    },
  },
];
