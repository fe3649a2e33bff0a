/** Interpolation on Chebyshev points of the second kind. Berrut and Trefethen, SIAM Review 46 (2004) 501. */

/** `intervals` + 1 points from `from` to `to`; the points of n intervals are among those of 2n. */
export const chebyshevPoints = (from: number, to: number, intervals: number): number[] =>
  Array.from(
    { length: intervals + 1 },
    (_, k) => (from + to) / 2 - ((to - from) / 2) * Math.cos((Math.PI * k) / intervals),
  );

/** Barycentric interpolant at x through `values` at `chebyshevPoints`. */
export function interpolateChebyshev(points: readonly number[], values: readonly number[], x: number): number {
  const last = points.length - 1;
  let above = 0;
  let below = 0;
  for (let k = 0; k <= last; k++) {
    if (x === points[k]) return values[k]!;
    const weight = ((k % 2 === 0 ? 1 : -1) * (k === 0 || k === last ? 0.5 : 1)) / (x - points[k]!);
    above += weight * values[k]!;
    below += weight;
  }
  return above / below;
}
