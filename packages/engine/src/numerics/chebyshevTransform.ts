/** Values at the zeros of a Chebyshev polynomial to coefficients. Must not know any physics. */

const zerosOf = new Map<number, Float64Array>();
const matrices = new Map<number, Float64Array>();

function kept(map: Map<number, Float64Array>, n: number, make: () => Float64Array): Float64Array {
  const known = map.get(n) ?? make();
  map.set(n, known);
  return known;
}

/** Zeros of T_n on [-1, 1], descending. */
export const chebyshevZeros = (n: number): Float64Array =>
  kept(zerosOf, n, () => Float64Array.from({ length: n }, (_, i) => Math.cos((Math.PI * (i + 0.5)) / n)));

/** Row k: weights of the values in coefficient k. */
const matrixOf = (n: number): Float64Array =>
  kept(matrices, n, () =>
    Float64Array.from({ length: n * n }, (_, at) => {
      const k = Math.floor(at / n);
      return ((k === 0 ? 1 : 2) / n) * Math.cos((Math.PI * k * ((at % n) + 0.5)) / n);
    }),
  );

/**
 * Coefficients of T_0 .. T_(n-1) of the polynomials through values at `chebyshevZeros(n)`, for `width` functions at once:
 * values of the first zero come first.
 */
export function chebyshevTransform(values: Float64Array, n: number, width: number): Float64Array {
  const matrix = matrixOf(n);
  const out = new Float64Array(values.length);
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      const weight = matrix[k * n + i]!;
      for (let f = 0; f < width; f++) out[k * width + f]! += weight * values[i * width + f]!;
    }
  }
  return out;
}
