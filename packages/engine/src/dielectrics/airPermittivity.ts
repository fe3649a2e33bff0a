/** Permittivity of air by pressure, temperature and humidity. */

/**
 * Relative permittivity of air at `temperature` K, `pressure` Pa, and `vapour` Pa of water vapour (0: dry): the square of its
 * refractive index 1 + 77.6e-6/T (p + 4810 e/T), pressures in hPa; the same at every radio frequency below some 100 GHz.
 * Source: Recommendation ITU-R P.453 (from memory); dry air at 0 degrees Celsius and 1 atmosphere 1.00058.
 */
export function airPermittivity(temperature: number, pressure: number, vapour = 0): number {
  if (!(temperature > 0 && pressure >= 0 && vapour >= 0 && vapour <= pressure)) {
    throw new RangeError(
      `air at ${temperature} K, ${pressure} Pa, of it ${vapour} Pa vapour: expected a temperature above 0 and no more vapour than air`,
    );
  }
  const index = 1 + ((77.6e-6 / temperature) * (pressure + (4810 * vapour) / temperature)) / 100;
  return index * index;
}
