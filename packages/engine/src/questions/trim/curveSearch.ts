/** Valleys and zeros of a smooth curve over a span. */
import { leastBetween, rootBetween, signChanges } from "../../numerics/crossings";
import type { Span } from "./fit";

/** Samples between which a valley or a zero is looked for. */
const samples = 161;
/** Both are found to this share of the variable. */
const tolerance = 1e-7;

const sampled = ({ from, to }: Span): number[] =>
  Array.from({ length: samples }, (_, i) => from + ((to - from) * i) / (samples - 1));

/** Places of all least values inside the span, its ends left out. */
export function valleys(f: (x: number) => number, span: Span): number[] {
  const xs = sampled(span);
  const values = xs.map(f);
  return values.flatMap((v, i) => {
    if (i === 0 || i === samples - 1 || v > values[i - 1]! || v >= values[i + 1]!) return [];
    return [leastBetween(f, xs[i - 1]!, xs[i + 1]!, tolerance * xs[i]!)];
  });
}

/** Places where the curve crosses zero. */
export function zeros(f: (x: number) => number, span: Span): number[] {
  const xs = sampled(span);
  return signChanges(xs.map(f)).map((i) => rootBetween(f, xs[i]!, xs[i + 1]!, tolerance * xs[i]!));
}

export const nearestTo = (wanted: number, places: readonly number[]): number | null =>
  places.reduce<number | null>(
    (best, x) => (best === null || Math.abs(x - wanted) < Math.abs(best - wanted) ? x : best),
    null,
  );
