/** How well solutions meet their symmetric system, from the upper triangle alone: a row's entries serve its column too. */
import type { SplitMatrix, SplitVectors } from "../door";

const largest = (values: Float64Array): number => values.reduce((most, v) => Math.max(most, Math.abs(v)), 0);

/** Infinity norm, |re| + |im| for the size of a number. */
function normOf({ size: n, re, im }: SplitMatrix): number {
  const sums = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = i; j < n; j++) {
      const size = Math.abs(re[i * n + j]!) + Math.abs(im[i * n + j]!);
      sums[i]! += size;
      if (j > i) sums[j]! += size;
    }
  }
  return largest(sums);
}

/** Adds A x to r. */
function addProduct(a: SplitMatrix, xr: Float64Array, xi: Float64Array, rr: Float64Array, ri: Float64Array): void {
  const n = a.size;
  for (let i = 0; i < n; i++) {
    const row = i * n;
    let sumRe = a.re[row + i]! * xr[i]! - a.im[row + i]! * xi[i]!;
    let sumIm = a.re[row + i]! * xi[i]! + a.im[row + i]! * xr[i]!;
    for (let j = i + 1; j < n; j++) {
      const re = a.re[row + j]!;
      const im = a.im[row + j]!;
      sumRe += re * xr[j]! - im * xi[j]!;
      sumIm += re * xi[j]! + im * xr[j]!;
      rr[j]! += re * xr[i]! - im * xi[i]!;
      ri[j]! += re * xi[i]! + im * xr[i]!;
    }
    rr[i]! += sumRe;
    ri[i]! += sumIm;
  }
}

/** Largest component of b - A x over norm(A) norm(x), over all right-hand sides. */
export function relativeResidual(matrix: SplitMatrix, x: SplitVectors, b: SplitVectors): number {
  const n = matrix.size;
  const norm = normOf(matrix);
  let worst = 0;
  for (let side = 0; side < b.count; side++) {
    const of = (values: Float64Array): Float64Array => values.subarray(side * n, side * n + n);
    const rr = of(b.re).map((v) => -v);
    const ri = of(b.im).map((v) => -v);
    addProduct(matrix, of(x.re), of(x.im), rr, ri);
    const scale = norm * Math.max(largest(of(x.re)), largest(of(x.im)));
    worst = Math.max(worst, Math.max(largest(rr), largest(ri)) / (scale || 1));
  }
  return worst;
}
