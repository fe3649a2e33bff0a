/** Where a ray that leaves at an elevation comes down again after one mirror reflection at a layer: geometry only. */

/** Mean radius of the earth, m (ITU-R P.533 takes 6371 km). */
export const earthRadius = 6371e3;

/**
 * Distance along a round earth (m) of one hop at an elevation (rad, 0 to pi/2) and a layer height (m):
 * 2 R (arccos(R cos e/(R + h)) - e), the law of sines in the triangle of antenna, layer and centre of the earth.
 * The ray is straight and the layer a mirror; whether it reflects at all is not asked. Throws RangeError outside.
 */
export function firstHop(elevation: number, layerHeight: number): number {
  if (!(elevation >= 0 && elevation <= Math.PI / 2 + 1e-12) || !(layerHeight > 0)) {
    throw new RangeError(
      `first hop: elevation ${elevation} rad, layer ${layerHeight} m; expected 0 to pi/2 and a height above 0`,
    );
  }
  const ratio = (earthRadius * Math.cos(elevation)) / (earthRadius + layerHeight);
  return Math.max(0, 2 * earthRadius * (Math.acos(ratio) - elevation));
}
