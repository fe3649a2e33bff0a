/**
 * The Faddeeva function w(z) = e^{-z^2} erfc(-jz). Must not know any physics.
 * Trapezoidal and midpoint rules on its integral, with the pole's residue where the pole comes near: Al Azah and
 * Chandler-Wilde, SIAM J. Numer. Anal. 59 (2021), recalled from memory; the tests hold it against other forms.
 */
import { add, type Complex, complex, divide, exponential, multiply, negate, one, scale, subtract } from "./complex";

const last = 11;
const step = Math.sqrt(Math.PI / (last + 1));

/** (2 h j z / pi) sum of e^{-t^2}/(z^2 - t^2) over t = (n + offset) h, n from `first`. */
function ruleSum(z: Complex, square: Complex, first: number, offset: number): Complex {
  let sum = complex(0);
  for (let n = first; n <= last; n++) {
    const t2 = ((n + offset) * step) ** 2;
    sum = add(sum, divide(complex(Math.exp(-t2)), subtract(square, complex(t2))));
  }
  return multiply(multiply(complex(0, (2 * step) / Math.PI), z), sum);
}

/** In the first quadrant. */
function firstQuadrant(z: Complex): Complex {
  const square = multiply(z, z);
  if (z.im >= Math.max(z.re, Math.PI / step)) return ruleSum(z, square, 0, 0.5);
  const cell = z.re / step - Math.floor(z.re / step);
  const midpoint = z.im < z.re && cell >= 0.25 && cell <= 0.75;
  // 2 e^{-z^2}/(1 +- e^{-2 pi j z/h}), both divided by the size of the second, which may overflow.
  const shift = (2 * Math.PI * z.im) / step;
  const damped = exponential(complex(-square.re - shift, -square.im));
  const wave = exponential(complex(0, (-2 * Math.PI * z.re) / step));
  const rest = complex(Math.exp(-shift));
  const residue = divide(scale(damped, 2), midpoint ? add(rest, wave) : subtract(rest, wave));
  if (midpoint) return add(residue, ruleSum(z, square, 0, 0.5));
  const atZero = divide(complex(0, step / Math.PI), z);
  return add(residue, add(atZero, ruleSum(z, square, 1, 0)));
}

/** w(z) for any z but where e^{-z^2} overflows in the lower half plane; relative error below 1e-13 above the real axis. */
export function faddeeva(z: Complex): Complex {
  if (z.re === 0 && z.im === 0) return one;
  if (z.im < 0) {
    return subtract(scale(exponential(negate(multiply(z, z))), 2), faddeeva(negate(z)));
  }
  if (z.re >= 0) return firstQuadrant(z);
  const mirrored = firstQuadrant(complex(-z.re, z.im));
  return complex(mirrored.re, -mirrored.im);
}
