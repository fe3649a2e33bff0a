/** Power that plane waves, propagating and evanescent, carry into soil. e^{+jwt}. */
import { add, type Complex, magnitudeSquared } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import type { SurfaceImmittance } from "./layeredSoil";
import { writeReflection } from "./reflection";

/**
 * Real power through the surface for a unit radiation vector (A m) of wavenumber kz (rad/m, Im <= 0) in air:
 * `tm` (ohm m^2 / m^2) multiplies |kz u + kr n|^2, `te` multiplies |v|^2, u, n, v the parts along, upwards, across.
 * Voltages |V| of the transmission-line analogue times the real part of the soil's wave admittance. Half-space.
 */
export function transmittedPower(kz: Complex, k: number, eps: Complex): { readonly tm: number; readonly te: number } {
  writeReflection(kz.re, kz.im, k, eps, eight);
  const re = eight[0]!;
  const im = eight[1]!;
  // |k1/(k1 + eps kz)|^2 Re(eps/k1) = Re(eps conj k1)/|k1 + eps kz|^2, and so on.
  const tmSum = (re + eps.re * kz.re - eps.im * kz.im) ** 2 + (im + eps.re * kz.im + eps.im * kz.re) ** 2;
  const teSum = (kz.re + re) ** 2 + (kz.im + im) ** 2;
  return {
    tm: (vacuumImpedance * (eps.re * re + eps.im * im)) / (k * tmSum),
    te: (vacuumImpedance * k * re) / teSum,
  };
}

const eight = new Float64Array(8);

/** The same through a surface of known immittance: what has gone in does not come out again. */
export function powerThrough(
  kz: Complex,
  k: number,
  { tm, te }: SurfaceImmittance,
): { readonly tm: number; readonly te: number } {
  // Re(1/tm) |tm|^2 = Re tm: no division by an impedance that may vanish.
  return {
    tm: (vacuumImpedance * tm.re) / (k * magnitudeSquared(add(tm, kz))),
    te: (vacuumImpedance * k * te.re) / magnitudeSquared(add(te, kz)),
  };
}
