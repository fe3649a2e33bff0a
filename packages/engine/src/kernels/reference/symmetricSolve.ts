/**
 * Dense complex symmetric systems: U^T D U without pivoting (half the work of LU), watched by growth, pivots and
 * residual; LU with partial pivoting takes over when the watch says so. Theory bounds the growth only for definite
 * real and imaginary parts (Higham 1998), hence the watch.
 */
import type { SplitMatrix, SplitVectors, SymmetricSolution } from "../door";
import { solveByLu } from "./pivotedSolve";
import { relativeResidual } from "./relativeResidual";

const smallestPivot = 1e-10;
const largestGrowth = 100;
const largestResidual = 1e-12;

/** Largest |re| or |im| of the upper triangle. */
function largestOf({ size: n, re, im }: SplitMatrix): number {
  let most = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i * n + i; j < i * n + n; j++) most = Math.max(most, Math.abs(re[j]!), Math.abs(im[j]!));
  }
  return most;
}

/** Entry i of the unscaled row k over its pivot. */
function multiplier(re: Float64Array, im: Float64Array, n: number, k: number, i: number): [number, number] {
  const dr = re[k * n + k]!;
  const di = im[k * n + k]!;
  const size = dr * dr + di * di;
  const ar = re[k * n + i]!;
  const ai = im[k * n + i]!;
  return [(ar * dr + ai * di) / size, (ai * dr - ar * di) / size];
}

/** Subtracts what rows k and k + 1 (where above i) have in row i; two at once, for half the traffic. */
function subtractRows(re: Float64Array, im: Float64Array, n: number, i: number, k: number): void {
  const [pr, pi] = multiplier(re, im, n, k, i);
  const two = k + 1 < i;
  const [qr, qi] = two ? multiplier(re, im, n, k + 1, i) : [0, 0];
  const target = i * n;
  const first = k * n;
  const second = two ? first + n : first;
  for (let j = i; j < n; j++) {
    const ar = re[first + j]!;
    const ai = im[first + j]!;
    const br = re[second + j]!;
    const bi = im[second + j]!;
    re[target + j]! -= pr * ar - pi * ai + (qr * br - qi * bi);
    im[target + j]! -= pr * ai + pi * ar + (qr * bi + qi * br);
  }
}

/** Rows finished together, an even number: each pair of rows above is read once for all of them. */
const blockRows = 16;

/** Overwrites the upper triangle with D (diagonal) and the unscaled rows D U; returns smallest pivot and largest number. */
function factor(re: Float64Array, im: Float64Array, n: number): { pivot: number; most: number } {
  let pivot = Number.POSITIVE_INFINITY;
  let most = 0;
  for (let from = 0; from < n; from += blockRows) {
    const to = Math.min(from + blockRows, n);
    for (let k = 0; k < from; k += 2) for (let i = from; i < to; i++) subtractRows(re, im, n, i, k);
    for (let i = from; i < to; i++) {
      for (let k = from; k < i; k += 2) subtractRows(re, im, n, i, k);
      pivot = Math.min(pivot, Math.hypot(re[i * n + i]!, im[i * n + i]!));
      for (let j = i * n + i; j < i * n + n; j++) most = Math.max(most, Math.abs(re[j]!), Math.abs(im[j]!));
    }
  }
  return { pivot, most };
}

/** Solves with the factors in place: forward by columns of U^T, divide by D, back by rows of U. */
function substitute(re: Float64Array, im: Float64Array, n: number, xr: Float64Array, xi: Float64Array): void {
  const divideByPivot = (k: number): void => {
    const dr = re[k * n + k]!;
    const di = im[k * n + k]!;
    const size = dr * dr + di * di;
    const r = (xr[k]! * dr + xi[k]! * di) / size;
    xi[k] = (xi[k]! * dr - xr[k]! * di) / size;
    xr[k] = r;
  };
  for (let k = 0; k < n; k++) {
    divideByPivot(k);
    const r = xr[k]!;
    const i = xi[k]!;
    for (let j = k + 1; j < n; j++) {
      xr[j]! -= re[k * n + j]! * r - im[k * n + j]! * i;
      xi[j]! -= re[k * n + j]! * i + im[k * n + j]! * r;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let r = 0;
    let i = 0;
    for (let j = k + 1; j < n; j++) {
      r += re[k * n + j]! * xr[j]! - im[k * n + j]! * xi[j]!;
      i += re[k * n + j]! * xi[j]! + im[k * n + j]! * xr[j]!;
    }
    const dr = re[k * n + k]!;
    const di = im[k * n + k]!;
    const size = dr * dr + di * di;
    xr[k]! -= (r * dr + i * di) / size;
    xi[k]! -= (i * dr - r * di) / size;
  }
}

/** See Kernels.solveSymmetric. The matrix is left as it was. */
export function solveSymmetric(matrix: SplitMatrix, rightSides: SplitVectors): SymmetricSolution {
  const n = matrix.size;
  const re = matrix.re.slice();
  const im = matrix.im.slice();
  const scale = largestOf(matrix);
  const { pivot, most } = factor(re, im, n);
  const vectors = { ...rightSides, re: rightSides.re.slice(), im: rightSides.im.slice() };
  for (let side = 0; side < rightSides.count; side++) {
    const from = side * n;
    substitute(re, im, n, vectors.re.subarray(from, from + n), vectors.im.subarray(from, from + n));
  }
  const growth = most / scale;
  const residual = relativeResidual(matrix, vectors, rightSides);
  const sound = pivot > smallestPivot * scale && growth < largestGrowth && residual < largestResidual;
  if (sound) return { vectors, method: "LDL^T without pivoting", growth, residual };
  const second = solveByLu(matrix, rightSides);
  return {
    vectors: second.vectors,
    method: "LU with partial pivoting",
    growth: second.most / scale,
    residual: relativeResidual(matrix, second.vectors, rightSides),
  };
}
