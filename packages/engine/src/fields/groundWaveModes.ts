/**
 * Modes of the wave along a smooth sphere (Fock 1945, Bremmer 1949; ITU-R P.368 rests on them): roots t of
 * w2'(t) = q w2(t), w2 the Airy function of waves that go outwards, e^{+jwt}. q tells the surface: -j m times its
 * normalised impedance, m = (k a/2)^(1/3).
 */
import { airyBelowZero } from "../numerics/airy";
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  magnitude,
  multiply,
  one,
  reciprocal,
  scale,
  subtract,
} from "../numerics/complex";

const towardsRoots = exponential(complex(0, -Math.PI / 3));
const slopeTurn = exponential(complex(0, (-2 * Math.PI) / 3));
const steps = 24;
const mostIterations = 20;

/** Zeros of Ai' (slope) or Ai, counted from 1, positive, by their asymptotic series (DLMF 9.9): starts for Newton. */
function airyZero(n: number, slope: boolean): number {
  const y = (3 * Math.PI * (4 * n - (slope ? 3 : 1))) / 8;
  return y ** (2 / 3) * (1 + (slope ? -7 : 5) / (48 * y * y));
}

/** w2'/w2. */
function logarithmicSlope(t: Complex): Complex {
  const { ai, slope } = airyBelowZero(scale(divide(t, towardsRoots), -1));
  return divide(multiply(slopeTurn, slope), ai);
}

/** dt/dq = 1/(t - q^2) from q = 0, or dt/dQ = 1/(1 - t Q^2) from Q = 1/q = 0: fourth-order Runge-Kutta. */
function follow(t: Complex, end: Complex, rate: (t: Complex, at: Complex) => Complex): Complex {
  const h = scale(end, 1 / steps);
  let at = t;
  for (let i = 0; i < steps; i++) {
    const here = scale(end, i / steps);
    const [middle, there] = [add(here, scale(h, 0.5)), add(here, h)];
    const a = multiply(h, rate(at, here));
    const b = multiply(h, rate(add(at, scale(a, 0.5)), middle));
    const c = multiply(h, rate(add(at, scale(b, 0.5)), middle));
    const d = multiply(h, rate(add(at, c), there));
    at = add(at, scale(add(add(a, d), scale(add(b, c), 2)), 1 / 6));
  }
  return at;
}

/** The slope of w2'/w2 is t - (w2'/w2)^2. */
function newton(start: Complex, q: Complex): Complex {
  let t = start;
  for (let i = 0; i < mostIterations; i++) {
    const r = logarithmicSlope(t);
    // In 1/r where r is large: the poles of r lie close to the roots there.
    const large = magnitude(q) > 1;
    const slope = subtract(t, multiply(r, r));
    const step = large
      ? divide(multiply(r, subtract(one, divide(r, q))), scale(slope, -1))
      : divide(subtract(r, q), slope);
    t = subtract(t, step);
    if (magnitude(step) < 1e-10 * magnitude(t)) return t;
  }
  throw new Error(`ground wave: root near ${start.re} + j ${start.im} was not found for q = ${q.re} + j ${q.im}`);
}

/** The n-th root, n from 1, for q from 0 to infinity with an argument between -135 and -45 degrees (soil is such). */
export function sphereRoot(n: number, q: Complex): Complex {
  const fromSlope = scale(towardsRoots, airyZero(n, true));
  if (magnitude(q) ** 2 < magnitude(fromSlope)) {
    const first = newton(fromSlope, complex(0));
    return newton(
      follow(first, q, (t, at) => reciprocal(subtract(t, multiply(at, at)))),
      q,
    );
  }
  const first = scale(towardsRoots, airyZero(n, false));
  return newton(
    follow(first, reciprocal(q), (t, at) => reciprocal(subtract(one, multiply(t, multiply(at, at))))),
    q,
  );
}
