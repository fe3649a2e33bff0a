/** How a round surface in air gets rid of its heat, and what the sun adds. Watts per metre of length. */
import { type AirState, airProperties, standardGravity } from "./standardAir";

/** W/(m² K⁴), CODATA 2018, exact since the SI of 2019. */
export const stefanBoltzmann = 5.670_374_419e-8;

/**
 * Mean Nusselt number of free convection round a horizontal cylinder, Rayleigh 1e-5 to 1e12, any Prandtl number.
 * Source: S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 (from memory).
 */
export function cylinderNusselt(rayleigh: number, prandtl: number): number {
  const shape = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
  return (0.6 + (0.387 * rayleigh ** (1 / 6)) / shape) ** 2;
}

export interface RoundSurface {
  /** m. */
  readonly diameter: number;
  /** Share of black radiation it gives off, and of the sun that it takes in. */
  readonly emissivity: number;
  readonly absorptivity: number;
}

/** W/m by free convection from a surface at `temperature` (K) into still air; negative where the air is warmer. */
export function convection({ diameter }: Pick<RoundSurface, "diameter">, temperature: number, air: AirState): number {
  const difference = temperature - air.temperature;
  if (difference === 0) return 0;
  const film = (temperature + air.temperature) / 2;
  const { conductivity, kinematicViscosity, prandtl } = airProperties({ pressure: air.pressure, temperature: film });
  const grashof = (standardGravity * Math.abs(difference) * diameter ** 3) / (film * kinematicViscosity ** 2);
  return Math.PI * conductivity * cylinderNusselt(grashof * prandtl, prandtl) * difference;
}

/** W/m by radiation to surroundings as warm as the air. */
export const radiation = (surface: RoundSurface, temperature: number, air: AirState): number =>
  Math.PI * surface.diameter * surface.emissivity * stefanBoltzmann * (temperature ** 4 - air.temperature ** 4);

/** W/m taken from a sun of `irradiance` W/m² that stands square to the line: its shadow is one diameter wide. */
export const sunshine = ({ diameter, absorptivity }: RoundSurface, irradiance: number): number =>
  absorptivity * diameter * irradiance;

/** W/m that leaves in still air. */
export const heatIntoAir = (surface: RoundSurface, temperature: number, air: AirState): number =>
  convection(surface, temperature, air) + radiation(surface, temperature, air);
