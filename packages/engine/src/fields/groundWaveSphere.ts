/**
 * Attenuation of a wave along a smooth sphere of one soil, between places on its surface: field over that on a perfect
 * plane. Modes where they converge; nearer by, the flat earth with the first terms of its curvature.
 */
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  magnitude,
  multiply,
  scale,
  subtract,
  zero,
} from "../numerics/complex";
import { flatAttenuation } from "./groundWaveFlat";
import { sphereRoot } from "./groundWaveModes";

/** Mean radius of the earth, m, and the share by which the usual atmosphere's bending of waves enlarges it (ITU-R P.310). */
export const earthRadius = 6.371e6;
export const radiusForUsualAir = (4 / 3) * earthRadius;

/** Fock's reduced distance x = (k a/2)^(1/3) distance/a above which modes are summed. */
const modesFrom = 0.2;
const mostModes = 400;
/** Modes are left out once they have fallen to this share of the sum. */
const negligible = 1e-9;

/** Sum of the modes at reduced distance x (Fock 1945). */
export function modeSum(x: number, q: Complex): Complex {
  let sum = zero;
  for (let n = 1; n <= mostModes; n++) {
    const t = sphereRoot(n, q);
    const term = divide(exponential(multiply(complex(0, -x), t)), subtract(t, multiply(q, q)));
    sum = add(sum, term);
    if (magnitude(term) < negligible * magnitude(sum)) {
      return multiply(scale(exponential(complex(0, -Math.PI / 4)), Math.sqrt(Math.PI * x)), sum);
    }
  }
  throw new RangeError(`ground wave: ${mostModes} modes are not enough at reduced distance ${x}; expected 0.2 or more`);
}

/** Coefficients of F = sum of f_m y^m, y = -j sqrt(w): f_m = sqrt(pi)/Gamma((m + 1)/2). */
const powers = Array.from({ length: 60 }, () => 1);
powers[1] = Math.sqrt(Math.PI);
for (let m = 2; m < powers.length; m++) powers[m] = (powers[m - 2]! * 2) / (m - 1);
const firstPowers = powers.slice(3).map((f, i) => 2 * powers[i + 1]! - f);
const secondPowers = powers.slice(6).map((f, i) => powers[i + 2]! / 2 - f);
/** Below this |y| the closed forms cancel. */
const smallY = 1.5;

const polynomial = (coefficients: readonly number[], y: Complex): Complex =>
  coefficients.reduceRight((sum: Complex, c) => add(complex(c), multiply(sum, y)), zero);

/** What the first and the second order of curvature multiply, over y^3 and y^6. */
function curvatureTerms(y: Complex, f: Complex): readonly [Complex, Complex] {
  if (magnitude(y) < smallY) return [polynomial(firstPowers, y), polynomial(secondPowers, y)];
  const root = Math.sqrt(Math.PI);
  const square = multiply(y, y);
  const cube = multiply(square, y);
  const first = subtract(polynomial([1, root], y), multiply(polynomial([1, 0, -2], y), f));
  const second = add(polynomial([1, root, 2, root, 5 / 6], y), multiply(polynomial([-1, 0, 0, 0, 0.5], y), f));
  return [divide(first, cube), divide(second, multiply(cube, cube))];
}

/** Two orders of small curvature over the flat earth (Hill and Wait 1980, from memory; tests hold them against the modes). */
export function curvedFlat(x: number, q: Complex): Complex {
  const f = flatAttenuation(multiply(complex(0, x), multiply(q, q)));
  const step = scale(exponential(complex(0, -Math.PI / 4)), Math.sqrt(x));
  const cube = multiply(step, multiply(step, step));
  const [first, second] = curvatureTerms(multiply(step, q), f);
  return add(f, scale(add(multiply(cube, first), multiply(multiply(cube, cube), second)), 0.25));
}

/**
 * W for wavenumber `k` (rad/m), distance along the ground (m), sphere of radius `earthRadius` (m), normalised surface
 * impedance of soil (argument 0 to 45 degrees). Relative error below 2e-4.
 */
export function sphereAttenuation(k: number, distance: number, earthRadius: number, impedance: Complex): Complex {
  const m = ((k * earthRadius) / 2) ** (1 / 3);
  const q = multiply(complex(0, -m), impedance);
  const x = (m * distance) / earthRadius;
  return x > modesFrom ? modeSum(x, q) : curvedFlat(x, q);
}
