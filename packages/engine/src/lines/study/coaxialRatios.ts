/** Coaxial lines by the ratio of their diameters: impedance, conductor loss, and the ratios that are best in something. */
import { surfaceResistance } from "../../conductors/solidWire";
import { vacuumImpedance } from "../../numerics/vacuum";
import type { Metal } from "../lineModel";

/** Impedance (ohm) of a coaxial line without loss: eta0/(2 pi sqrt(eps)) ln(D/d). */
export const impedanceOfRatio = (ratio: number, permittivity: number): number =>
  (vacuumImpedance / (2 * Math.PI * Math.sqrt(permittivity))) * Math.log(ratio);

/** D/d of a coaxial line without loss from its impedance (ohm). */
export const ratioOfImpedance = (impedance: number, permittivity: number): number =>
  Math.exp((2 * Math.PI * Math.sqrt(permittivity) * impedance) / vacuumImpedance);

/** Surface resistance of the outer conductor over that of the inner one, in the limit of small skin depth. */
export const surfaceRatio = (input: { readonly inner: Metal; readonly outer: Metal; readonly frequency: number }) => {
  const at = (metal: Metal) => surfaceResistance(metal.conductivity, metal.permeability, 2 * Math.PI * input.frequency);
  return at(input.outer) / at(input.inner);
};

/** Conductor loss against D/d, outer size fixed, up to a factor: (x + r)/ln x. `r` is the surface ratio. */
export const conductorLoss = (ratio: number, r: number): number => (ratio + r) / Math.log(ratio);

/**
 * D/d of least conductor loss for a fixed outer size: root of ln x = 1 + r/x, the stationary point of (x + r)/ln x, by
 * Newton's method to rounding. `r` is the outer conductor's surface resistance over the inner one's, 0 or more and finite.
 */
export function ratioOfLeastLoss(r: number): number {
  if (!(r >= 0 && r < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`ratio of surface resistances ${r}: expected a finite number of 0 or more`);
  }
  let x = Math.E + r;
  for (let step = 0; step < 50; step++) {
    const next = x - (x * (Math.log(x) - 1) - r) / Math.log(x);
    if (Math.abs(next - x) <= 4e-16 * x) return next;
    x = next;
  }
  return x;
}

/** D/d of greatest voltage for a given field (ln x = 1) and of greatest power (ln x = 1/2), outer size fixed. */
export const ratioOfGreatestVoltage = Math.E;
export const ratioOfGreatestPower = Math.sqrt(Math.E);

/** The two means of a pair of impedances (ohm), as the history of 50 ohm is told with them. */
export const meansOf = (
  first: number,
  second: number,
): { readonly arithmetic: number; readonly geometric: number } => ({
  arithmetic: (first + second) / 2,
  geometric: Math.sqrt(first * second),
});
