/** Small dense complex systems: the station's network has a few dozen unknowns, and a sweep hundreds of networks. */
import { type Complex, divide, magnitude } from "./complex";

/** A pivot smaller than this against its scaled row means the system has no unique solution in double precision. */
const smallestPivot = 1e-14;

/** Rows one after another, the right side as last column; real and imaginary parts side by side. */
interface Rows {
  readonly n: number;
  /** Numbers of a row. */
  readonly width: number;
  readonly values: Float64Array;
}

/**
 * Solves A x = b by elimination with row scaling and partial pivoting.
 * @param matrix square, row by row; @param right one column.
 * @returns x, or null when a pivot vanishes against its row (singular to working precision).
 */
export function solveComplexSystem(
  matrix: readonly (readonly Complex[])[],
  right: readonly Complex[],
): Complex[] | null {
  const n = matrix.length;
  const width = 2 * n + 2;
  const rows = { n, width, values: new Float64Array(n * width) };
  for (let i = 0; i < n; i++) putScaled(rows, i, matrix[i]!, right[i]!);
  for (let k = 0; k < n; k++) if (!eliminateBelow(rows, k)) return null;
  return backSubstitute(rows);
}

function putScaled({ values, width }: Rows, i: number, row: readonly Complex[], right: Complex): void {
  let largest = 0;
  // Most of a network's matrix is zero: no root for those.
  for (const x of row) if (x.re !== 0 || x.im !== 0) largest = Math.max(largest, magnitude(x));
  if (largest === 0) largest = 1;
  let at = i * width;
  for (const x of row) {
    values[at++] = x.re / largest;
    values[at++] = x.im / largest;
  }
  values[at++] = right.re / largest;
  values[at] = right.im / largest;
}

function sizeAt(values: Float64Array, at: number): number {
  const [re, im] = [values[at]!, values[at + 1]!];
  return re === 0 && im === 0 ? 0 : Math.hypot(re, im);
}

const entry = (values: Float64Array, at: number): Complex => ({ re: values[at]!, im: values[at + 1]! });

/** Row of the largest entry of column k, from k down; -1 where it vanishes. */
function pivotOf({ n, width, values }: Rows, k: number): number {
  let pivot = k;
  let size = sizeAt(values, k * width + 2 * k);
  for (let i = k + 1; i < n; i++) {
    const other = sizeAt(values, i * width + 2 * k);
    if (other > size) {
      pivot = i;
      size = other;
    }
  }
  return size < smallestPivot ? -1 : pivot;
}

function eliminateBelow(rows: Rows, k: number): boolean {
  const { n, width, values } = rows;
  const pivot = pivotOf(rows, k);
  if (pivot < 0) return false;
  const top = k * width + 2 * k;
  if (pivot !== k) swap(values, top, pivot * width + 2 * k, width - 2 * k);
  for (let i = k + 1; i < n; i++) {
    const row = i * width + 2 * k;
    if (values[row] === 0 && values[row + 1] === 0) continue;
    const { re, im } = divide(entry(values, row), entry(values, top));
    for (let c = 0; c < width - 2 * k; c += 2) {
      const [a, b] = [values[top + c]!, values[top + c + 1]!];
      values[row + c]! -= re * a - im * b;
      values[row + c + 1]! -= re * b + im * a;
    }
  }
  return true;
}

function swap(values: Float64Array, a: number, b: number, count: number): void {
  for (let c = 0; c < count; c++) {
    const kept = values[a + c]!;
    values[a + c] = values[b + c]!;
    values[b + c] = kept;
  }
}

function backSubstitute({ n, width, values }: Rows): Complex[] {
  const x = new Array<Complex>(n);
  for (let i = n - 1; i >= 0; i--) {
    const row = i * width;
    let { re, im } = entry(values, row + 2 * n);
    for (let c = i + 1; c < n; c++) {
      const [a, b] = [values[row + 2 * c]!, values[row + 2 * c + 1]!];
      re -= a * x[c]!.re - b * x[c]!.im;
      im -= a * x[c]!.im + b * x[c]!.re;
    }
    x[i] = divide({ re, im }, entry(values, row + 2 * i));
  }
  return x;
}
