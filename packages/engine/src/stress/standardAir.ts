/** Air as lines and gaps meet it: pressure with altitude, density, and what it carries of heat. */

/** Pascal and kelvin at sea level in the standard atmosphere. */
const seaLevel = { pressure: 101_325, temperature: 288.15 } as const;
/** K/m, m/s², J/(kg K). */
const lapse = 0.0065;
const gravity = 9.80665;
const gasConstant = 287.052_87;

export interface AirState {
  /** Pa. */
  readonly pressure: number;
  /** K. */
  readonly temperature: number;
}

/**
 * Pressure and temperature of the standard atmosphere at `altitude` metres, −1000 to 11000.
 * Source: ISO 2533:1975, troposphere; geopotential altitude, which differs from the true one by less than 0.1 % below 5 km.
 */
export function standardAir(altitude: number): AirState {
  if (!(altitude >= -1000 && altitude <= 11_000)) {
    throw new RangeError(
      `standard air: altitude ${altitude} m; expected -1000 to 11000 m, where the troposphere's law holds`,
    );
  }
  const temperature = seaLevel.temperature - lapse * altitude;
  const pressure = seaLevel.pressure * (temperature / seaLevel.temperature) ** (gravity / (gasConstant * lapse));
  return { pressure, temperature };
}

/** Density of the air over that at 101325 Pa and `reference` kelvin; ideal gas. */
export const relativeDensity = ({ pressure, temperature }: AirState, reference: number): number =>
  (pressure / seaLevel.pressure) * (reference / temperature);

/** K to which Peek's and the uniform-field laws refer their density: 25 and 20 degrees Celsius. */
export const peekReference = 298.15;
export const gapReference = 293.15;

export interface AirProperties {
  /** W/(m K), m²/s, 1. */
  readonly conductivity: number;
  readonly kinematicViscosity: number;
  readonly prandtl: number;
}

/**
 * What carries heat in dry air at its pressure and temperature (200 to 600 K).
 * Source: ISO 2533:1975, formulas for dynamic viscosity (Sutherland) and thermal conductivity; specific heat 1005 J/(kg K).
 */
export function airProperties({ pressure, temperature: t }: AirState): AirProperties {
  const viscosity = (1.458e-6 * t ** 1.5) / (t + 110.4);
  const conductivity = (2.648_151e-3 * t ** 1.5) / (t + 245.4 * 10 ** (-12 / t));
  const density = pressure / (gasConstant * t);
  return { conductivity, kinematicViscosity: viscosity / density, prandtl: (1005 * viscosity) / conductivity };
}

export { gravity as standardGravity };
