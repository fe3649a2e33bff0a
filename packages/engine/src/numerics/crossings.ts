/** Where sampled smooth curves cross a level, and where they are least. */

/**
 * Root of `f` between a and b, where it changes sign, to `tolerance` in x: false position with the Illinois weighting
 * (Dowell and Jarratt, BIT 11 (1971) 168), a handful of calls on a smooth curve.
 */
export function rootBetween(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  let [x0, x1] = [a, b];
  let [f0, f1] = [f(a), f(b)];
  for (let step = 0; step < mostSteps && Math.abs(x1 - x0) > tolerance; step++) {
    const x = step < mostSteps / 2 ? x1 - (f1 * (x1 - x0)) / (f1 - f0) : (x0 + x1) / 2;
    const fx = f(x);
    if (fx === 0 || Math.abs(x - x1) < tolerance) return x;
    if (fx < 0 !== f1 < 0) [x0, f0] = [x1, f1];
    else f0 /= 2;
    [x1, f1] = [x, fx];
  }
  return x1;
}

/** Half of them by false position, then by halving, which cannot fail to shrink the interval. */
const mostSteps = 80;

/** Intervals of a sampled curve in which it changes sign, as indices of their lower ends. */
export const signChanges = (values: readonly number[]): number[] =>
  values.slice(1).flatMap((v, i) => (v < 0 !== values[i]! < 0 ? [i] : []));

/**
 * Least value of a smooth `f` between a and b (one minimum), by golden section to `tolerance` in x: one call a step, for one
 * of the two places inside is that of the step before, but for rounding.
 */
export function leastBetween(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [a, b];
  const leftPlace = () => high - golden * (high - low);
  const rightPlace = () => low + golden * (high - low);
  let [left, right] = [leftPlace(), rightPlace()];
  let [atLeft, atRight] = [f(left), f(right)];
  while (high - low > tolerance) {
    if (atLeft < atRight) {
      high = right;
      [right, atRight] = [left, atLeft];
      left = leftPlace();
      atLeft = f(left);
    } else {
      low = left;
      [left, atLeft] = [right, atRight];
      right = rightPlace();
      atRight = f(right);
    }
  }
  return (low + high) / 2;
}
