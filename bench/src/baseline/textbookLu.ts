/**
 * The baseline of every ratio: solving a dense complex system by LU with partial pivoting, as textbooks write it (Golub
 * and Van Loan, Matrix Computations, outer-product form; from memory). Complex numbers interleaved, row by row.
 */

export interface DenseSystem {
  readonly size: number;
  /** 2 n^2 numbers, re and im in turn. */
  readonly matrix: Float64Array;
  /** 2 n numbers. */
  readonly right: Float64Array;
}

function pivotRow(a: Float64Array, n: number, k: number): number {
  let best = k;
  let most = -1;
  for (let i = k; i < n; i++) {
    const re = a[2 * (i * n + k)]!;
    const im = a[2 * (i * n + k) + 1]!;
    const size = re * re + im * im;
    if (size > most) {
      most = size;
      best = i;
    }
  }
  return best;
}

function swapRows(a: Float64Array, x: Float64Array, n: number, i: number, k: number): void {
  for (let j = 0; j < 2 * n; j++) {
    const kept = a[2 * i * n + j]!;
    a[2 * i * n + j] = a[2 * k * n + j]!;
    a[2 * k * n + j] = kept;
  }
  for (let c = 0; c < 2; c++) {
    const kept = x[2 * i + c]!;
    x[2 * i + c] = x[2 * k + c]!;
    x[2 * k + c] = kept;
  }
}

/** Solution of the system; the system itself is left as it is. */
export function textbookLu({ size: n, matrix, right }: DenseSystem): Float64Array {
  const a = matrix.slice();
  const x = right.slice();
  for (let k = 0; k < n; k++) {
    const pivot = pivotRow(a, n, k);
    if (pivot !== k) swapRows(a, x, n, pivot, k);
    eliminateBelow(a, x, n, k);
  }
  for (let k = n - 1; k >= 0; k--) {
    let [re, im] = [x[2 * k]!, x[2 * k + 1]!];
    for (let j = k + 1; j < n; j++) {
      const at = 2 * (k * n + j);
      re -= a[at]! * x[2 * j]! - a[at + 1]! * x[2 * j + 1]!;
      im -= a[at]! * x[2 * j + 1]! + a[at + 1]! * x[2 * j]!;
    }
    const [pr, pi] = [a[2 * (k * n + k)]!, a[2 * (k * n + k) + 1]!];
    const size = pr * pr + pi * pi;
    x[2 * k] = (re * pr + im * pi) / size;
    x[2 * k + 1] = (im * pr - re * pi) / size;
  }
  return x;
}

function eliminateBelow(a: Float64Array, x: Float64Array, n: number, k: number): void {
  const [pr, pi] = [a[2 * (k * n + k)]!, a[2 * (k * n + k) + 1]!];
  const size = pr * pr + pi * pi;
  for (let i = k + 1; i < n; i++) {
    const at = 2 * (i * n + k);
    const re = (a[at]! * pr + a[at + 1]! * pi) / size;
    const im = (a[at + 1]! * pr - a[at]! * pi) / size;
    for (let j = k + 1; j < n; j++) {
      const from = 2 * (k * n + j);
      const to = 2 * (i * n + j);
      a[to]! -= re * a[from]! - im * a[from + 1]!;
      a[to + 1]! -= re * a[from + 1]! + im * a[from]!;
    }
    x[2 * i]! -= re * x[2 * k]! - im * x[2 * k + 1]!;
    x[2 * i + 1]! -= re * x[2 * k + 1]! + im * x[2 * k]!;
  }
}
