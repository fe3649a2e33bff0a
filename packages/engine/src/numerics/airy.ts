/**
 * The Airy function Ai and its slope around the negative real axis. Must not know any physics.
 * Power series up to |z| = 8 (DLMF 9.4), asymptotic series beyond (DLMF 9.7.9 and 9.7.10).
 */
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  magnitude,
  multiply,
  one,
  scale,
  squareRoot,
  subtract,
  zero,
} from "./complex";

export interface AiryValues {
  readonly ai: Complex;
  readonly slope: Complex;
}

const seriesRadius = 8;
/** Ai(0) and -Ai'(0), DLMF 9.2. */
const atZero = 0.355_028_053_887_817_2;
const slopeAtZero = 0.258_819_403_792_806_8;

function bySeries(z: Complex): AiryValues {
  const cube = multiply(multiply(z, z), z);
  let [even, odd] = [one, z];
  let [ai, slope] = [subtract(scale(even, atZero), scale(odd, slopeAtZero)), complex(-slopeAtZero)];
  for (let n = 3; n < 150; n += 3) {
    even = scale(multiply(even, cube), 1 / (n * (n - 1)));
    odd = scale(multiply(odd, cube), 1 / (n * (n + 1)));
    ai = add(ai, subtract(scale(even, atZero), scale(odd, slopeAtZero)));
    const rise = subtract(scale(even, atZero * n), scale(odd, slopeAtZero * (n + 1)));
    slope = add(slope, divide(rise, z));
    if (magnitude(even) + magnitude(odd) < 1e-20) break;
  }
  return { ai, slope };
}

/** Sums of u_k or v_k over zeta^k with signs ++--, even and odd k apart. */
function phaseSums(zeta: Complex): {
  readonly u: readonly [Complex, Complex];
  readonly v: readonly [Complex, Complex];
} {
  const u: [Complex, Complex] = [one, zero];
  const v: [Complex, Complex] = [one, zero];
  let term = one;
  for (let k = 1; k < 40; k++) {
    const growth = ((6 * k - 5) * (6 * k - 3) * (6 * k - 1)) / (216 * k * (2 * k - 1));
    const next = divide(scale(term, growth), zeta);
    if (magnitude(next) > magnitude(term) || magnitude(next) < 1e-18) break;
    term = next;
    const sign = k % 4 < 2 ? 1 : -1;
    u[(k % 2) as 0 | 1] = add(u[(k % 2) as 0 | 1], scale(term, sign));
    v[(k % 2) as 0 | 1] = add(v[(k % 2) as 0 | 1], scale(term, (sign * (6 * k + 1)) / (1 - 6 * k)));
  }
  return { u, v };
}

/** `z` is minus the argument of Ai. */
function byAsymptotics(z: Complex): AiryValues {
  const root = squareRoot(z);
  const zeta = scale(multiply(z, root), 2 / 3);
  const { u, v } = phaseSums(zeta);
  const at = subtract(zeta, complex(Math.PI / 4));
  const [up, down] = [exponential(multiply(complex(0, 1), at)), exponential(multiply(complex(0, -1), at))];
  const cosine = scale(add(up, down), 0.5);
  const sine = multiply(complex(0, -0.5), subtract(up, down));
  const fourth = squareRoot(root);
  const ai = divide(add(multiply(cosine, u[0]), multiply(sine, u[1])), fourth);
  const slope = multiply(subtract(multiply(sine, v[0]), multiply(cosine, v[1])), fourth);
  const factor = 1 / Math.sqrt(Math.PI);
  return { ai: scale(ai, factor), slope: scale(slope, factor) };
}

/**
 * Ai(z) and Ai'(z) for z within 60 degrees of the negative real axis, and z = 0 not. Relative error of the pair below
 * 1e-9. Throws RangeError elsewhere, where the series cancel.
 */
export function airyBelowZero(z: Complex): AiryValues {
  if (!(z.re < 0 && Math.abs(z.im) <= -Math.sqrt(3) * z.re)) {
    throw new RangeError(`Airy function at ${z.re} + j ${z.im}: expected within 60 degrees of the negative real axis`);
  }
  return magnitude(z) < seriesRadius ? bySeries(z) : byAsymptotics(complex(-z.re, -z.im));
}
