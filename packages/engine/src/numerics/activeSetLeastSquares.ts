/** Least squares in a dozen unknowns that may not be negative. */

/**
 * Minimises |A x - b| over x >= 0, `columns` holding A by columns. Unknowns enter one by one where the slope is steepest and
 * leave when they would turn negative. Columns are scaled first; what lowers the sum by less than rounding stays at zero.
 * Source: Lawson and Hanson, Solving Least Squares Problems (1974), chapter 23.
 */
export function activeSetLeastSquares(columns: readonly Float64Array[], b: Float64Array): Float64Array {
  const lengths = columns.map((column) => Math.sqrt(dot(column, column)) || 1);
  const scaled = columns.map((column, k) => column.map((x) => x / lengths[k]!));
  const gram = scaled.map((p) => Float64Array.from(scaled, (q) => dot(p, q)));
  const target = Float64Array.from(scaled, (p) => dot(p, b));
  const least = 1e-13 * Math.sqrt(dot(b, b));
  let x: Float64Array = new Float64Array(columns.length);
  const active = new Set<number>();
  for (let round = 0; round < 4 * columns.length; round++) {
    const entering = steepest(gram, target, x, active, least);
    if (entering === null) break;
    active.add(entering);
    x = settle(gram, target, x, active);
  }
  return x.map((value, k) => value / lengths[k]!);
}

function dot(p: Float64Array, q: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < p.length; i++) sum += p[i]! * q[i]!;
  return sum;
}

/** The unknown at zero whose growth lowers the sum fastest. */
function steepest(
  gram: readonly Float64Array[],
  target: Float64Array,
  x: Float64Array,
  active: ReadonlySet<number>,
  least: number,
): number | null {
  let best: number | null = null;
  let slope = least;
  for (let k = 0; k < x.length; k++) {
    const rising = active.has(k) ? 0 : target[k]! - dot(gram[k]!, x);
    if (rising > slope) [best, slope] = [k, rising];
  }
  return best;
}

/** Solves on the active unknowns; those that would turn negative are walked to zero and leave. */
function settle(
  gram: readonly Float64Array[],
  target: Float64Array,
  from: Float64Array,
  active: Set<number>,
): Float64Array {
  let x = from;
  while (active.size > 0) {
    const members = [...active];
    const solved = solveOn(gram, target, members);
    const next = new Float64Array(x.length);
    members.forEach((k, m) => {
      next[k] = solved[m]!;
    });
    const falling = members.filter((k) => !(next[k]! > 0));
    if (falling.length === 0) return next;
    const step = Math.min(...falling.map((k) => x[k]! / (x[k]! - next[k]!)));
    x = x.map((value, k) => value + (Number.isFinite(step) ? step : 0) * (next[k]! - value));
    for (const k of falling) {
      if (x[k]! > 1e-15 * Math.max(...x)) continue;
      x[k] = 0;
      active.delete(k);
    }
  }
  return x;
}

/** Cholesky factorisation on some of the unknowns; a column that depends on the others to rounding gets zero. */
function solveOn(gram: readonly Float64Array[], target: Float64Array, members: readonly number[]): Float64Array {
  const size = members.length;
  const lower = Array.from({ length: size }, () => new Float64Array(size));
  const y = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = gram[members[i]!]![members[j]!]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      if (i === j) lower[i]![i] = sum > 1e-14 ? Math.sqrt(sum) : Number.POSITIVE_INFINITY;
      else lower[i]![j] = sum / lower[j]![j]!;
    }
    let rest = target[members[i]!]!;
    for (let k = 0; k < i; k++) rest -= lower[i]![k]! * y[k]!;
    y[i] = rest / lower[i]![i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    let rest = y[i]!;
    for (let k = i + 1; k < size; k++) rest -= lower[k]![i]! * y[k]!;
    y[i] = rest / lower[i]![i]!;
  }
  return y;
}
