/**
 * Modified Bessel functions of order 0 and 1 for complex argument in the right half plane.
 * Three regions: power series (|z| <= 2), continued fraction with a Wronskian (|z| <= 25), Hankel series beyond.
 */
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  logarithm,
  magnitude,
  multiply,
  negate,
  one,
  reciprocal,
  scale,
  squareRoot,
  subtract,
  zero,
} from "./complex";

const eulerGamma = 0.577_215_664_901_532_9;
const seriesRadius = 2;
const hankelRadius = 25;
const epsilon = 2 ** -53;

export interface ModifiedBessel {
  /** e^(-z) I0(z) and e^(-z) I1(z). */
  readonly i0: Complex;
  readonly i1: Complex;
  /** e^z K0(z) and e^z K1(z). */
  readonly k0: Complex;
  readonly k1: Complex;
}

/**
 * Scaled I0, I1, K0, K1 at z with Re z >= 0, z not 0 (K has its pole there). Scaled by e^(-z) (I) and e^z (K), so that
 * nothing overflows. Error below 1e-14 of the larger of the two functions of a kind up to |z| = 1e4.
 * Source: Abramowitz and Stegun 1964, sections 9.6 to 9.7; Temme, J. Comput. Phys. 19 (1975) 324, for the fraction.
 */
export function modifiedBessel(z: Complex): ModifiedBessel {
  const size = magnitude(z);
  if (!(z.re >= 0 && size > 0 && size < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`modified Bessel functions: z = ${z.re} + j ${z.im}, expected Re z >= 0 and z finite, not 0`);
  }
  if (size <= seriesRadius) return bySeries(z);
  if (size <= hankelRadius) return byFraction(z, size);
  return byHankel(z);
}

/** Abramowitz and Stegun 9.6.10 to 9.6.13. */
function bySeries(z: Complex): ModifiedBessel {
  const quarter = scale(multiply(z, z), 0.25);
  let term = one;
  let harmonic = 0;
  let [i0, i1, k0Sum, k1Sum] = [one, one, zero, complex(1)];
  for (let k = 1; k < 40 && magnitude(term) > 1e-20; k++) {
    term = scale(multiply(term, quarter), 1 / (k * k));
    harmonic += 1 / k;
    i0 = add(i0, term);
    i1 = add(i1, scale(term, 1 / (k + 1)));
    k0Sum = add(k0Sum, scale(term, harmonic));
    // psi(k+1) + psi(k+2) without Euler's constant, which joins the logarithm below.
    k1Sum = add(k1Sum, scale(term, (2 * harmonic + 1 / (k + 1)) / (k + 1)));
  }
  const half = scale(z, 0.5);
  i1 = multiply(half, i1);
  const log = add(logarithm(half), complex(eulerGamma));
  const k0 = subtract(k0Sum, multiply(log, i0));
  const k1 = add(reciprocal(z), subtract(multiply(log, i1), scale(multiply(half, k1Sum), 0.5)));
  const [down, up] = [exponential(negate(z)), exponential(z)];
  return { i0: multiply(down, i0), i1: multiply(down, i1), k0: multiply(up, k0), k1: multiply(up, k1) };
}

/** K by Temme's continued fraction, I by backward recurrence scaled with I0 K1 + I1 K0 = 1/z. */
function byFraction(z: Complex, size: number): ModifiedBessel {
  const { k0, k1 } = fractionK(z);
  let [above, here] = [zero, one];
  const start = Math.ceil(1.5 * size + 40);
  const twoOverZ = divide(complex(2), z);
  for (let n = start; n >= 1; n--) [above, here] = [here, add(above, scale(multiply(twoOverZ, here), n))];
  const factor = reciprocal(multiply(z, add(multiply(here, k1), multiply(above, k0))));
  return { i0: multiply(here, factor), i1: multiply(above, factor), k0, k1 };
}

/** Temme 1975: a_n = -(n - 1/2)^2, b_n = 2 (z + n), evaluated forwards together with the normalising sum. */
function fractionK(z: Complex): { readonly k0: Complex; readonly k1: Complex } {
  let b = scale(add(one, z), 2);
  let d = reciprocal(b);
  let step = d;
  let h = d;
  let [previous, current] = [zero, one];
  let [a, c] = [-0.25, 0.25];
  let q: Complex = complex(c);
  let sum = add(one, multiply(q, step));
  for (let n = 2; n < 500; n++) {
    a -= 2 * (n - 1);
    c = (-a * c) / n;
    const next = scale(subtract(previous, multiply(b, current)), 1 / a);
    [previous, current] = [current, next];
    q = add(q, scale(next, c));
    b = add(b, complex(2));
    d = reciprocal(add(b, scale(d, a)));
    step = multiply(subtract(multiply(b, d), one), step);
    h = add(h, step);
    const change = multiply(q, step);
    sum = add(sum, change);
    if (magnitude(change) < epsilon * magnitude(sum)) break;
  }
  const k0 = divide(squareRoot(divide(complex(Math.PI / 2), z)), sum);
  const k1 = divide(multiply(k0, subtract(add(z, complex(0.5)), scale(h, 0.25))), z);
  return { k0, k1 };
}

/** Abramowitz and Stegun 9.7.1 and 9.7.2, I with its recessive part: it counts near the imaginary axis. */
function byHankel(z: Complex): ModifiedBessel {
  const [zeroth, first] = [hankelSums(z, 0), hankelSums(z, 4)];
  const kFactor = squareRoot(divide(complex(Math.PI / 2), z));
  const iFactor = reciprocal(squareRoot(scale(z, 2 * Math.PI)));
  const recessive = multiply(complex(0, z.im >= 0 ? 1 : -1), exponential(scale(z, -2)));
  return {
    i0: multiply(iFactor, add(zeroth.alternating, multiply(recessive, zeroth.plain))),
    i1: multiply(iFactor, subtract(first.alternating, multiply(recessive, first.plain))),
    k0: multiply(kFactor, zeroth.plain),
    k1: multiply(kFactor, first.plain),
  };
}

/** Sums of a_k(nu)/z^k, plain and with alternating sign, up to the smallest term; `square` is 4 nu^2. */
function hankelSums(z: Complex, square: number): { readonly plain: Complex; readonly alternating: Complex } {
  const inverse = reciprocal(z);
  let [plain, alternating, term] = [one, one, one];
  for (let k = 1; k < 60; k++) {
    const next = scale(multiply(term, inverse), (square - (2 * k - 1) ** 2) / (8 * k));
    if (magnitude(next) >= magnitude(term)) break;
    term = next;
    plain = add(plain, term);
    alternating = add(alternating, k % 2 === 0 ? term : negate(term));
    if (magnitude(term) < epsilon) break;
  }
  return { plain, alternating };
}
