/** Dense complex LU with partial pivoting: the safe second choice behind the symmetric factorisation. */
import type { SplitMatrix, SplitVectors } from "../door";

function swapRows(a: Float64Array, n: number, p: number, q: number): void {
  for (let j = 0; j < n; j++) {
    const held = a[p * n + j]!;
    a[p * n + j] = a[q * n + j]!;
    a[q * n + j] = held;
  }
}

function largestBelow(re: Float64Array, im: Float64Array, n: number, k: number): number {
  let best = k;
  for (let i = k + 1; i < n; i++) {
    if (Math.hypot(re[i * n + k]!, im[i * n + k]!) > Math.hypot(re[best * n + k]!, im[best * n + k]!)) best = i;
  }
  return best;
}

/** Eliminates column k below the pivot, carrying every right-hand side (n rows of `count` numbers) along. */
function eliminate(a: SplitMatrix, b: SplitMatrixLike & { readonly width: number }, k: number): void {
  const n = a.size;
  const dr = a.re[k * n + k]!;
  const di = a.im[k * n + k]!;
  const size = dr * dr + di * di;
  const subtractRow = (m: SplitMatrixLike, width: number, i: number, from: number, lr: number, li: number): void => {
    for (let j = from; j < width; j++) {
      const r = m.re[k * width + j]!;
      const q = m.im[k * width + j]!;
      m.re[i * width + j]! -= lr * r - li * q;
      m.im[i * width + j]! -= lr * q + li * r;
    }
  };
  for (let i = k + 1; i < n; i++) {
    const r = a.re[i * n + k]!;
    const q = a.im[i * n + k]!;
    const lr = (r * dr + q * di) / size;
    const li = (q * dr - r * di) / size;
    subtractRow(a, n, i, k, lr, li);
    subtractRow(b, b.width, i, 0, lr, li);
  }
}

interface SplitMatrixLike {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Transposes between "vector after vector" and "row after row". */
function transposed(values: Float64Array, rows: number, columns: number): Float64Array {
  const out = new Float64Array(values.length);
  for (let i = 0; i < rows; i++) for (let j = 0; j < columns; j++) out[j * rows + i] = values[i * columns + j]!;
  return out;
}

/** Copies the upper triangle below the diagonal, in a copy. */
function mirrored(values: Float64Array, n: number): Float64Array {
  const full = values.slice();
  for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) full[i * n + j] = full[j * n + i]!;
  return full;
}

/**
 * Solves the symmetric system whose upper triangle is given; `most` is the largest number met. Throws RangeError when no
 * pivot is left: the matrix is exactly singular, or not of finite numbers.
 */
export function solveByLu(matrix: SplitMatrix, rightSides: SplitVectors): { vectors: SplitVectors; most: number } {
  const n = matrix.size;
  const width = rightSides.count;
  const a = { size: n, re: mirrored(matrix.re, n), im: mirrored(matrix.im, n) };
  const b = { re: transposed(rightSides.re, width, n), im: transposed(rightSides.im, width, n), width };
  let most = 0;
  for (let k = 0; k < n; k++) {
    const best = largestBelow(a.re, a.im, n, k);
    for (const m of [a.re, a.im]) swapRows(m, n, k, best);
    for (const m of [b.re, b.im]) swapRows(m, width, k, best);
    const pivot = Math.hypot(a.re[k * n + k]!, a.im[k * n + k]!);
    if (!(pivot > 0)) throw new RangeError(`the system of ${n} equations is singular at equation ${k + 1}`);
    for (let j = k; j < n; j++) most = Math.max(most, Math.abs(a.re[k * n + j]!), Math.abs(a.im[k * n + j]!));
    eliminate(a, b, k);
  }
  for (let k = n - 1; k >= 0; k--) backSubstitute(a, b, k);
  return { vectors: { ...rightSides, re: transposed(b.re, n, width), im: transposed(b.im, n, width) }, most };
}

function backSubstitute(a: SplitMatrix, b: SplitMatrixLike & { readonly width: number }, k: number): void {
  const n = a.size;
  const dr = a.re[k * n + k]!;
  const di = a.im[k * n + k]!;
  const size = dr * dr + di * di;
  for (let side = 0; side < b.width; side++) {
    let r = b.re[k * b.width + side]!;
    let q = b.im[k * b.width + side]!;
    for (let j = k + 1; j < n; j++) {
      const xr = b.re[j * b.width + side]!;
      const xi = b.im[j * b.width + side]!;
      r -= a.re[k * n + j]! * xr - a.im[k * n + j]! * xi;
      q -= a.re[k * n + j]! * xi + a.im[k * n + j]! * xr;
    }
    b.re[k * b.width + side] = (r * dr + q * di) / size;
    b.im[k * b.width + side] = (q * dr - r * di) / size;
  }
}
