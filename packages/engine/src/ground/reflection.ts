/** Reflection of plane waves, propagating and evanescent, at a homogeneous half-space. e^{+jwt}, roots with Im <= 0. */
import { add, type Complex, complex, divide, multiply, scale, subtract } from "../numerics/complex";
import { decayingRoot } from "./soilMedium";

export interface Reflection {
  /** Vertical wavenumber in the soil, rad/m. */
  readonly soilDepth: Complex;
  /** TM coefficient of the tangential electric field; -1 over a perfect plane. */
  readonly tm: Complex;
  /** TE coefficient of the tangential electric field; -1 over a perfect plane. */
  readonly te: Complex;
  /** (te - tm)/kr^2 in m^2, without cancellation. */
  readonly difference: Complex;
}

/**
 * Coefficients for vertical wavenumber `kz` (rad/m, Im <= 0) in the air with wavenumber `k` (rad/m), over complex
 * relative permittivity `eps`. Formulae of a half-space as in Michalski and Zheng 1990 (from memory), derived anew.
 */
export function reflection(kz: Complex, k: number, eps: Complex): Reflection {
  const step = complex(1 - eps.re, -eps.im);
  const k1 = decayingRoot(subtract(multiply(kz, kz), scale(step, k * k)));
  const epsKz = multiply(eps, kz);
  const tmSum = add(k1, epsKz);
  const teSum = add(kz, k1);
  // te = (kz - k1)/(kz + k1), extended with its denominator: no cancellation at grazing or dense soil.
  return {
    soilDepth: k1,
    tm: divide(subtract(k1, epsKz), tmSum),
    te: divide(scale(step, k * k), multiply(teSum, teSum)),
    difference: divide(scale(step, 2), multiply(teSum, tmSum)),
  };
}
