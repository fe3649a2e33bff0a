/** The distance over which fields in soil vary: what the reflected field of wires near the surface varies with. */
import { speedOfLight } from "../numerics/vacuum";
import { complexPermittivity, contrast } from "./soilMedium";
import type { RealSoil } from "./soilSurface";

/**
 * One over the wavenumber of the soil at the surface; over a thin layer, twice its thickness, if less: what its lower side
 * reflects comes from images that lie deeper by that. m; frequency in Hz.
 */
export function soilLength(soil: RealSoil, frequency: number): number {
  const top = soil.kind === "layered" ? soil.layers[0]! : { ...soil, thickness: null };
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const length = 1 / (k * Math.sqrt(contrast(complexPermittivity(top, frequency))));
  return Math.min(length, 2 * (top.thickness ?? Number.POSITIVE_INFINITY));
}
