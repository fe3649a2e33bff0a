/** Gain over the pattern. */
import { magnitudeSquared } from "../numerics/complex";
import { vacuumImpedance } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { farField, groundReflection } from "./farField";

/** Power per solid angle (W/sr) in a direction; angles as in farField. */
export function radiationIntensity(
  driven: DrivenAntenna,
  elevation: number,
  azimuth: number,
  coefficients = groundReflection(driven, elevation),
): number {
  const { eTheta, ePhi } = farField(driven, elevation, azimuth, coefficients);
  return (magnitudeSquared(eTheta) + magnitudeSquared(ePhi)) / vacuumImpedance;
}

/** Gain (linear) relative to an isotropic radiator fed with the power into the antenna: losses and soil included. */
export const gain = (driven: DrivenAntenna, elevation: number, azimuth: number): number =>
  (4 * Math.PI * radiationIntensity(driven, elevation, azimuth)) / driven.powerIn;

/** The same in dBi; -Infinity in a perfect null. */
export const gainInDecibels = (driven: DrivenAntenna, elevation: number, azimuth: number): number =>
  10 * Math.log10(gain(driven, elevation, azimuth));
