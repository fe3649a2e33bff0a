/** A corrugated tube: how much longer the current's way is than the tube. */
import { ellipticIntegrals } from "../numerics/ellipticIntegrals";

/**
 * Length of a sine of `depth` m from crest to trough and `pitch` m, over its length along the axis: (2/pi) sqrt(1 + m^2) E(k),
 * m = pi depth/pitch, k^2 = m^2/(1 + m^2). The wall is taken as thick along the way as across it; that the girth changes with the
 * corrugation is left out. Source: arc length of the sine (elementary).
 */
export function corrugationFactor(depth: number, pitch: number): number {
  if (!(depth >= 0 && pitch > 0 && depth < 10 * pitch)) {
    throw new RangeError(
      `corrugated tube: depth ${depth} m, pitch ${pitch} m; expected a positive pitch and a depth of less than ten pitches`,
    );
  }
  const m = (Math.PI * depth) / pitch;
  const stretch = Math.hypot(1, m);
  return (2 / Math.PI) * stretch * ellipticIntegrals(m / stretch).second;
}
