/** Gain over the pattern. */
import { vacuumImpedance } from "../numerics/vacuum";
import type { Radiating } from "../wires/radiating";
import { type Directions, oneDirection } from "./directions";
import { farFields, numbersOfField } from "./farField";

/** Power per solid angle (W/sr) in many directions; angles as in farField. */
export function radiationIntensities(driven: Radiating, directions: Directions): Float64Array {
  const fields = farFields(driven, directions);
  const out = new Float64Array(directions.elevation.length);
  for (let i = 0; i < out.length; i++) {
    const at = numbersOfField * i;
    const square = fields[at]! ** 2 + fields[at + 1]! ** 2 + fields[at + 2]! ** 2 + fields[at + 3]! ** 2;
    out[i] = square / vacuumImpedance;
  }
  return out;
}

/** The same in one direction. */
export const radiationIntensity = (driven: Radiating, elevation: number, azimuth: number): number =>
  radiationIntensities(driven, oneDirection(elevation, azimuth))[0]!;

/** Gains (linear) relative to an isotropic radiator fed with the power into the antenna: losses and soil included. */
export function gains(driven: Radiating, directions: Directions): Float64Array {
  const scale = (4 * Math.PI) / driven.powerIn;
  return radiationIntensities(driven, directions).map((intensity) => scale * intensity);
}

export const gain = (driven: Radiating, elevation: number, azimuth: number): number =>
  gains(driven, oneDirection(elevation, azimuth))[0]!;

/** The same in dBi; -Infinity in a perfect null. */
export const gainInDecibels = (driven: Radiating, elevation: number, azimuth: number): number =>
  10 * Math.log10(gain(driven, elevation, azimuth));
