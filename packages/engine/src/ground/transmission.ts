/** Power that plane waves, propagating and evanescent, carry into soil. e^{+jwt}. */
import type { Complex } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import { type LayeredMedium, writeImmittance } from "./layeredSoil";
import { writeReflection } from "./reflection";

const eight = new Float64Array(8);

/**
 * Real power through the surface for a unit radiation vector (A m) of wavenumber kz = `re` + j `im` (rad/m, Im <= 0) in air:
 * the first number written (ohm m^2 / m^2) multiplies |kz u + kr n|^2, the second |v|^2, u, n, v the parts along, upwards,
 * across. Voltages |V| of the transmission-line analogue times the real part of the soil's wave admittance. Half-space.
 */
export function writeTransmission(re: number, im: number, k: number, eps: Complex, out: Float64Array): void {
  writeReflection(re, im, k, eps, eight);
  const k1Re = eight[0]!;
  const k1Im = eight[1]!;
  // |k1/(k1 + eps kz)|^2 Re(eps/k1) = Re(eps conj k1)/|k1 + eps kz|^2, and so on.
  const tmSum = (k1Re + eps.re * re - eps.im * im) ** 2 + (k1Im + eps.re * im + eps.im * re) ** 2;
  const teSum = (re + k1Re) ** 2 + (im + k1Im) ** 2;
  out[0] = (vacuumImpedance * (eps.re * k1Re + eps.im * k1Im)) / (k * tmSum);
  out[1] = (vacuumImpedance * k * k1Re) / teSum;
}

/** The same of layers: what has gone in does not come out again. */
export function writeLayeredTransmission(re: number, im: number, medium: LayeredMedium, out: Float64Array): void {
  writeImmittance(re, im, medium, eight);
  const tmRe = eight[0]!;
  const teRe = eight[2]!;
  // Re(1/tm) |tm|^2 = Re tm: no division by an impedance that may vanish.
  out[0] = (vacuumImpedance * tmRe) / (medium.k * ((tmRe + re) ** 2 + (eight[1]! + im) ** 2));
  out[1] = (vacuumImpedance * medium.k * teRe) / ((teRe + re) ** 2 + (eight[3]! + im) ** 2);
}
