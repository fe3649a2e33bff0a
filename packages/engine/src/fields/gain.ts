/** Gain over the pattern, and where it is largest. */
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

export interface Direction {
  /** Radians above the horizon. */
  readonly elevation: number;
  /** Radians clockwise from north, 0 to 2 pi. */
  readonly azimuth: number;
  /** Linear. */
  readonly gain: number;
}

const degree = Math.PI / 180;
const elevationStep = 5 * degree;
const azimuthStep = 15 * degree;
const halvings = 9;

const turn = (azimuth: number): number => ((azimuth % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);

/** Reflects a direction pushed beyond the zenith or nadir; null when it left the sky. */
function folded(elevation: number, azimuth: number, lowest: number): [number, number] | null {
  if (elevation > Math.PI / 2) return [Math.PI - elevation, turn(azimuth + Math.PI)];
  return elevation < lowest - 1e-12 ? null : [elevation, turn(azimuth)];
}

/** From the horizon outwards: of equal directions the one nearest to it wins. */
function gridElevations(lowest: number): number[] {
  const up = Array.from({ length: 1 + Math.round(Math.PI / 2 / elevationStep) }, (_, i) => i * elevationStep);
  return lowest === 0 ? up : up.flatMap((e) => (e === 0 ? [e] : [e, -e]));
}

/** Direction of the largest gain: a grid of 5 by 15 degrees, then a shrinking 3 by 3 search; within 0.001 dB. */
export function strongestDirection(driven: DrivenAntenna): Direction {
  const lowest = driven.solution.soil.kind === "free space" ? -Math.PI / 2 : 0;
  let best: Direction = { elevation: 0, azimuth: 0, gain: -1 };
  const consider = (elevation: number, azimuth: number): void => {
    const g = gain(driven, elevation, azimuth);
    if (g > best.gain * (1 + 1e-9)) best = { elevation, azimuth, gain: g };
  };
  for (const elevation of gridElevations(lowest)) {
    for (let a = 0; a < 2 * Math.PI - 1e-9; a += azimuthStep) consider(elevation, a);
  }
  for (let step = 0.5; step > 0.5 ** (halvings + 1); step /= 2) {
    const { elevation, azimuth } = best;
    for (const up of [-1, 0, 1]) {
      for (const round of [-1, 0, 1]) {
        const at = folded(elevation + up * step * elevationStep, azimuth + round * step * azimuthStep, lowest);
        if (at) consider(at[0], at[1]);
      }
    }
  }
  return best;
}
