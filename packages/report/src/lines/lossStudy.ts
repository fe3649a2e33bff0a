/** Losses of a few lines over the frequencies people use, for their figure. */
import type { LossStudy } from "@feedpath/figures";
import { compareLines, type LineConditions, type ListedLine } from "./compareLines";
import { lengthText } from "./linesTable";
import { type LineUnits, lineUnits } from "./units";

/** More curves than this cannot be told apart. */
export const mostCurves = 4;
const places = 60;
/** Hz. */
const span = { from: 1.8e6, to: 1e9 };

/** From 1.8 MHz to 1 GHz, wider where `at` (Hz) lies outside; `at` is one of the points. Its sentence tells of `length` m. */
export function lossStudy(
  lines: readonly ListedLine[],
  { at, length }: Pick<LineConditions, "at" | "length">,
  units: LineUnits,
): LossStudy {
  const from = Math.min(span.from, at);
  const to = Math.max(span.to, at);
  const even = Array.from({ length: places + 1 }, (_, i) => from * (to / from) ** (i / places));
  const frequencies = [...new Set([...even, at])].sort((a, b) => a - b);
  const { rows } = compareLines(lines, { at, frequencies, length: null });
  const { run, runLength } = lineUnits[units];
  return {
    frequencies,
    at,
    run: { says: run, length: runLength },
    ...(length !== null && { told: { says: lengthText(length, units), length } }),
    lines: rows.map(({ designation, losses }) => ({
      name: designation,
      loss: losses.map((one) => one?.value ?? null),
      low: losses.map((one) => one?.low ?? null),
      high: losses.map((one) => one?.high ?? null),
    })),
  };
}
