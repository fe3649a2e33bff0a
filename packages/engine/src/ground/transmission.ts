/** Power that plane waves, propagating and evanescent, carry into soil. e^{+jwt}. */
import { add, type Complex, divide, magnitudeSquared, multiply, one, scale } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import type { SurfaceImmittance } from "./layeredSoil";
import { reflection } from "./reflection";

/**
 * Real power through the surface for a unit radiation vector (A m) of wavenumber kz (rad/m, Im <= 0) in air:
 * `tm` (ohm m^2 / m^2) multiplies |kz u + kr n|^2, `te` multiplies |v|^2, u, n, v the parts along, upwards, across.
 * Voltages |V| of the transmission-line analogue times the real part of the soil's wave admittance. Half-space.
 */
export function transmittedPower(kz: Complex, k: number, eps: Complex): { readonly tm: number; readonly te: number } {
  const { soilDepth } = reflection(kz, k, eps);
  const tmVoltage = scale(divide(soilDepth, add(soilDepth, multiply(eps, kz))), vacuumImpedance / k);
  const teVoltage = scale(divide(one, add(kz, soilDepth)), vacuumImpedance * k);
  return {
    tm: (magnitudeSquared(tmVoltage) * divide(eps, soilDepth).re * k) / vacuumImpedance,
    te: (magnitudeSquared(teVoltage) * soilDepth.re) / (vacuumImpedance * k),
  };
}

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
