/** Metals warm and cold: what temperature makes of their conductivity. */
import type { Metal, OuterConductor, RoundConductor } from "./conductor";

/** K at which the conductivity of a metal is stated: 20 degrees Celsius. */
export const statedTemperature = 293.15;
/** Relative rise of the resistivity of annealed copper a kelvin, from 293.15 K. Source: IEC 60028. */
const copperTemperatureCoefficient = 0.00393;

/**
 * Resistivity at `temperature` (K, 150 to 600) over that at 293.15 K: 1 + a (T - 293.15). The straight line holds for the
 * metals of cables within 1 % from 220 to 420 K, and is a few per cent off at the ends of the range (handbooks, from
 * memory). Throws RangeError outside.
 */
export function resistivityRatio(temperature: number, coefficient = copperTemperatureCoefficient): number {
  if (!(temperature >= 150 && temperature <= 600)) {
    throw new RangeError(`temperature of a conductor ${temperature} K; expected 150 K to 600 K`);
  }
  return 1 + coefficient * (temperature - statedTemperature);
}

/** The metal with its conductivity at `temperature` (K); a perfect conductor stays perfect. */
export const metalAt = (metal: Metal, temperature: number): Metal => ({
  ...metal,
  conductivity: metal.conductivity / resistivityRatio(temperature, metal.temperatureCoefficient),
});

/** All layers of the conductor at `temperature` (K). Its growth, 17 millionths a kelvin for copper, is left out. */
export const roundConductorAt = (conductor: RoundConductor, temperature: number): RoundConductor => ({
  ...conductor,
  layers: conductor.layers.map((layer) => ({ ...layer, metal: metalAt(layer.metal, temperature) })),
});

/** The outer conductor, its coating and foil included, at `temperature` (K). */
export function outerConductorAt(outer: OuterConductor, temperature: number): OuterConductor {
  const { metal, coating, shield } = outer;
  return {
    ...outer,
    metal: metalAt(metal, temperature),
    ...(coating && { coating: { ...coating, metal: metalAt(coating.metal, temperature) } }),
    ...(shield &&
      "foil" in shield && {
        shield: { ...shield, foil: { ...shield.foil, metal: metalAt(shield.foil.metal, temperature) } },
      }),
  };
}
