/** Many directions at once: `elevation` above the horizon and `azimuth` clockwise from north, radians, one of each. */
export interface Directions {
  readonly elevation: Float64Array;
  readonly azimuth: Float64Array;
}

export const oneDirection = (elevation: number, azimuth: number): Directions => ({
  elevation: Float64Array.of(elevation),
  azimuth: Float64Array.of(azimuth),
});

/** Every azimuth at every elevation, azimuths fastest. */
export function directionGrid(elevations: readonly number[], azimuths: readonly number[]): Directions {
  const count = elevations.length * azimuths.length;
  const grid = { elevation: new Float64Array(count), azimuth: new Float64Array(count) };
  elevations.forEach((elevation, i) => {
    grid.elevation.fill(elevation, i * azimuths.length, (i + 1) * azimuths.length);
    grid.azimuth.set(azimuths, i * azimuths.length);
  });
  return grid;
}

/** So many equal steps round the horizon, from north. */
export const azimuthsRound = (count: number): number[] =>
  Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / count);
