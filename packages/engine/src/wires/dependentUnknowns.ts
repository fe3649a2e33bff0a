/** Homogeneous linear equations between unknowns, solved for those that depend on the others. */

/** Unknown to factor: a sum of unknowns. */
export type UnknownSum = Map<number, number>;

/** Factors are sums of a few numbers of 1, 1/2, 1/4: what is left of a vanishing one is rounding. */
const nothing = 1e-9;

function addTo(sum: UnknownSum, unknown: number, factor: number): void {
  const value = (sum.get(unknown) ?? 0) + factor;
  if (Math.abs(value) < nothing) sum.delete(unknown);
  else sum.set(unknown, value);
}

/** Every dependent unknown as a sum of independent ones (empty: it is zero). Equations are sums that vanish. */
export function dependentUnknowns(equations: Iterable<UnknownSum>): Map<number, UnknownSum> {
  const known = new Map<number, UnknownSum>();
  const users = new Map<number, Set<number>>();
  const use = (sum: UnknownSum, dependent: number): void => {
    for (const unknown of sum.keys()) users.set(unknown, (users.get(unknown) ?? new Set()).add(dependent));
  };
  for (const equation of equations) {
    const row: UnknownSum = new Map();
    for (const [unknown, factor] of equation) {
      const sum = known.get(unknown);
      if (sum) for (const [other, share] of sum) addTo(row, other, factor * share);
      else addTo(row, unknown, factor);
    }
    const pivot = largestOf(row);
    if (pivot === null) continue;
    const divisor = row.get(pivot)!;
    row.delete(pivot);
    const sum: UnknownSum = new Map([...row].map(([unknown, factor]) => [unknown, -factor / divisor]));
    known.set(pivot, sum);
    use(sum, pivot);
    for (const dependent of users.get(pivot) ?? []) {
      const older = known.get(dependent)!;
      const factor = older.get(pivot);
      if (factor === undefined) continue;
      older.delete(pivot);
      for (const [unknown, share] of sum) addTo(older, unknown, factor * share);
      use(sum, dependent);
    }
  }
  return known;
}

/** Unknown of the largest factor, the last one of several; null when the sum is empty. */
function largestOf(row: UnknownSum): number | null {
  let best: number | null = null;
  let most = 0;
  for (const [unknown, factor] of row) {
    const size = Math.abs(factor);
    if (size < most - nothing || (size < most + nothing && best !== null && unknown < best)) continue;
    most = size;
    best = unknown;
  }
  return best;
}
