/** Where sampled smooth curves cross a level, and where they are least. */

/** Root of `f` between a and b, where it changes sign, by bisection to `tolerance` in x. */
export function bisect(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  let [low, high] = [a, b];
  const rising = f(low) < 0;
  while (high - low > tolerance) {
    const middle = (low + high) / 2;
    if (f(middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Intervals of a sampled curve in which it changes sign, as indices of their lower ends. */
export const signChanges = (values: readonly number[]): number[] =>
  values.slice(1).flatMap((v, i) => (v < 0 !== values[i]! < 0 ? [i] : []));

/** Least value of a smooth `f` between a and b (one minimum), by golden section to `tolerance` in x. */
export function leastBetween(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [a, b];
  while (high - low > tolerance) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (f(left) < f(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}
