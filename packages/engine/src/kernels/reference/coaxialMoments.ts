/**
 * Static moments of two elements on one axis with the exact cylindrical kernel, in closed form: repeated integrals
 * of 1/r with r^2 = x^2 + D^2, averaged over the azimuth between the two surfaces. The logarithm is split,
 * ln((x + r)/D) = ln((x + r)/b) - ln(D/b): the first part is periodic and analytic in azimuth, so that the midpoint rule
 * converges geometrically, and the mean of the second is known exactly. Splitting idea: Bruno and Haslam 2007.
 * Relative errors 1e-11 down to elements of a/16, 1e-8 at a/64, beside ones of up to 1000 a: what cancels in the moments.
 */

const mostAzimuths = 500;
/** The midpoint rule of n points leaves e^{-4 n s}, s the distance of the nearest singularity: 3e-17. */
const decay = 9.5;

interface Primitives {
  readonly f2: number;
  readonly f3: number;
  readonly f4: number;
}

/**
 * Azimuth means of the second to fourth integral of 1/r at axial distance x, for radii a <= b (metres). Half the azimuth, t,
 * is stretched by tan t = m tan u, which gathers the points where the surfaces face each other: r vanishes at t = i d,
 * sinh d = sqrt(x^2 + (b - a)^2)/(2 sqrt(ab)); in u that lies at i atanh(tanh(d)/m), and the stretch's own pole at distance
 * atanh(m): both are farthest for m = sqrt(tanh d).
 */
function primitives(x: number, a: number, b: number): Primitives {
  const u = Math.abs(x);
  const closest = Math.asinh(Math.max(Math.hypot(u, b - a), 1e-9 * b) / (2 * Math.sqrt(a * b)));
  const stretch = Math.sqrt(Math.tanh(closest));
  const n = Math.min(mostAzimuths, Math.max(3, Math.ceil(decay / Math.atanh(stretch))));
  let f2 = 0;
  let f3 = 0;
  let f4 = 0;
  for (let i = 0; i < n; i++) {
    const sine = Math.sin((Math.PI * (i + 0.5)) / (2 * n));
    const whole = 1 - (1 - stretch * stretch) * sine * sine;
    const weight = stretch / (n * whole);
    const d2 = (b - a) ** 2 + (4 * a * b * (stretch * sine) ** 2) / whole;
    const r = Math.sqrt(u * u + d2);
    const log = Math.log((u + r) / b);
    f2 += weight * (u * log - r);
    f3 += weight * (((u * u) / 2 - d2 / 4) * log - 0.75 * u * r);
    f4 += weight * ((u ** 3 / 6 - (d2 * u) / 4) * log - (11 / 36) * r ** 3 + (5 / 12) * d2 * r);
  }
  return { f2, f3: Math.sign(x) * f3 + (Math.sign(x) * a * a) / 4, f4: f4 + (a * a * u) / 4 };
}

/** The values at x = 0 for equal radii are exact; the midpoint rule does not reach them. */
function primitivesAt(x: number, a: number, b: number): Primitives {
  if (Math.abs(x) > 1e-9 * b || b - a > 1e-9 * b) return primitives(x, a, b);
  return { f2: (-4 * a) / Math.PI, f3: 0, f4: (32 * a ** 3) / (27 * Math.PI) };
}

/**
 * Four moments (see NearMoments) of a test element on [0, length] and a source on [from, to] of the same axis, metres.
 * `from` > `to` means the source runs the other way.
 */
export function coaxialMoments(
  length: number,
  from: number,
  to: number,
  testRadius: number,
  sourceRadius: number,
  out: Float64Array,
): void {
  const a = Math.min(testRadius, sourceRadius);
  const b = Math.max(testRadius, sourceRadius);
  const t0 = Math.min(from, to);
  const t1 = Math.max(from, to);
  const m = t1 - t0;
  const at = [0, length].map((s) => {
    const near = primitivesAt(s - t0, a, b);
    const far = primitivesAt(s - t1, a, b);
    return {
      rising2: -far.f2 + (near.f3 - far.f3) / m,
      rising3: -far.f3 + (near.f4 - far.f4) / m,
      falling2: near.f2 - (near.f3 - far.f3) / m,
      falling3: near.f3 - (near.f4 - far.f4) / m,
    };
  });
  const [start, end] = [at[0]!, at[1]!];
  const forward = from < to;
  const falling = forward ? 0 : 1;
  const slopeFalling = (end.falling3 - start.falling3) / length;
  const slopeRising = (end.rising3 - start.rising3) / length;
  out[falling] = -start.falling2 + slopeFalling;
  out[1 - falling] = -start.rising2 + slopeRising;
  out[2 + falling] = end.falling2 - slopeFalling;
  out[3 - falling] = end.rising2 - slopeRising;
}
