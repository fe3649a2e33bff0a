/** Polynomial interpolation by the barycentric formula (Berrut and Trefethen 2004). Must not know any physics. */

/** Chebyshev points of the second kind on [-1, 1], descending from 1, n >= 2, with their barycentric weights. */
export function chebyshevPoints(n: number): { points: Float64Array; weights: Float64Array } {
  const points = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    points[i] = Math.cos((Math.PI * i) / (n - 1));
    weights[i] = (i % 2 === 0 ? 1 : -1) * (i === 0 || i === n - 1 ? 0.5 : 1);
  }
  return { points, weights };
}

/** Barycentric weights of any distinct points in [-1, 1]; good to about 40 points. */
export function barycentricWeights(points: Float64Array): Float64Array {
  return points.map((x, i) => {
    let product = 1;
    points.forEach((y, k) => {
      if (k !== i) product *= 2 * (x - y);
    });
    return 1 / product;
  });
}

/** Writes the values at x of all Lagrange polynomials of the points into `row`. */
export function lagrangeRow(points: Float64Array, weights: Float64Array, x: number, row: Float64Array): void {
  const n = points.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const distance = x - points[i]!;
    if (distance === 0) {
      row.fill(0);
      row[i] = 1;
      return;
    }
    const term = weights[i]! / distance;
    row[i] = term;
    sum += term;
  }
  for (let i = 0; i < n; i++) row[i] = row[i]! / sum;
}

/** Size of the two last Chebyshev coefficients of values at chebyshevPoints: how well the interpolant resolves them. */
export function chebyshevTail(values: ArrayLike<number>): number {
  const n = values.length;
  const coefficient = (k: number): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const w = i === 0 || i === n - 1 ? 0.5 : 1;
      sum += w * values[i]! * Math.cos((Math.PI * k * i) / (n - 1));
    }
    return Math.abs((k === n - 1 ? 1 : 2) * sum) / (n - 1);
  };
  return Math.max(coefficient(n - 1), coefficient(n - 2));
}
