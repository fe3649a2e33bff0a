/** Polynomial interpolation by the barycentric formula (Berrut and Trefethen 2004). Must not know any physics. */

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
