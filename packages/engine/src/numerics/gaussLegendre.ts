/** Gauss-Legendre rules on [-1, 1]. Must not know any physics. */

export interface GaussRule {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

const rules = new Map<number, GaussRule>();

/** Legendre polynomial of degree n and its derivative at x, by the three-term recurrence. */
function legendre(n: number, x: number): { value: number; slope: number } {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= n; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
    previous = value;
    value = next;
  }
  return { value, slope: (n * (x * value - previous)) / (x * x - 1) };
}

/** The n-point rule, n >= 1, exact to degree 2n - 1; points ascend. Newton from the cosine guess, errors about 1e-16. */
export function gaussLegendre(n: number): GaussRule {
  const known = rules.get(n);
  if (known) return known;
  const points = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = n === 1 ? 0 : -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    for (let step = 0; step < 8 && n > 1; step++) {
      const p = legendre(n, x);
      x -= p.value / p.slope;
    }
    const slope = n === 1 ? 1 : legendre(n, x).slope;
    points[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { points, weights };
  rules.set(n, rule);
  return rule;
}
