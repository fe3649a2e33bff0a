/** Where a measure of a study is best, and how flat it is there. */
import { leastBetween, rootBetween } from "../../numerics/crossings";
import { type StudyInput, type StudyPoint, studiedSpan, studyPoint } from "./studyPoint";

/** What is made small. */
export type Cost = (point: StudyPoint) => number;

/** Coarse steps over the span before golden section, in which a cost has one dip at most. */
const steps = 60;

/**
 * Impedance (ohm) of least `cost`, to 1e-6 of itself; null where the cost falls to an end of the span: there is no optimum.
 * Golden section on the exact measure, over the logarithm of impedance.
 */
export function impedanceOfLeast(input: StudyInput, cost: Cost): number | null {
  const [from, to] = studiedSpan(input).map(Math.log) as [number, number];
  const at = (log: number) => cost(studyPoint(input, Math.exp(log)));
  const step = (to - from) / steps;
  const values = Array.from({ length: steps + 1 }, (_, i) => at(from + i * step));
  const least = values.reduce((best, value, i) => (value < values[best]! ? i : best), 0);
  if (least === 0 || least === steps) return null;
  return Math.exp(leastBetween(at, from + (least - 1) * step, from + (least + 1) * step, 1e-7));
}

/** Ohm between which the cost stays within `share` (0.1: a tenth) of its least; an end of the span where it does not rise so far. */
export function flatSpan(
  input: StudyInput,
  cost: Cost,
  best: number,
  share: number,
): { readonly from: number; readonly to: number } {
  const [from, to] = studiedSpan(input);
  const limit = (1 + share) * cost(studyPoint(input, best));
  const over = (log: number) => cost(studyPoint(input, Math.exp(log))) - limit;
  const edge = (end: number): number => {
    const [a, b] = [Math.log(best), Math.log(end)];
    return over(b) <= 0 ? end : Math.exp(rootBetween(over, a, b, 1e-7));
  };
  return { from: edge(from), to: edge(to) };
}
