/** Complete elliptic integrals of the first and second kind. Must not know any physics. */

/**
 * K and E of the modulus `k`, 0 <= k < 1, by the arithmetic-geometric mean, to rounding.
 * Source: Abramowitz and Stegun 1964, 17.6.
 */
export function ellipticIntegrals(k: number): { readonly first: number; readonly second: number } {
  if (!(k >= 0 && k < 1)) throw new RangeError(`elliptic integrals: modulus ${k}, expected 0 up to but not 1`);
  let [a, b, c] = [1, Math.sqrt((1 - k) * (1 + k)), k];
  let [sum, weight] = [(c * c) / 2, 1];
  while (c > 1e-17 && weight < 1e6) {
    [a, b, c] = [(a + b) / 2, Math.sqrt(a * b), (a - b) / 2];
    sum += weight * c * c;
    weight *= 2;
  }
  const first = Math.PI / (2 * a);
  return { first, second: first * (1 - sum) };
}
