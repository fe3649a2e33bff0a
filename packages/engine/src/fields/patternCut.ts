/** Cuts through the pattern as functions of one angle: a vertical plane, and a cone of one elevation. */
import { speedOfLight } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { isRealSoil } from "../wires/structure";
import { gains } from "./gain";
import { extent } from "./powerAccount";

export interface PatternCut {
  /** Linear gains at angles (rad) of the cut. */
  readonly gains: (angles: Float64Array) => Float64Array;
  readonly from: number;
  readonly to: number;
  /** The cut goes round: `to` is `from` again. */
  readonly closed: boolean;
  /** Samples this far apart (rad) let no lobe of the antenna slip through. */
  readonly step: number;
}

const degree = Math.PI / 180;
/** Samples in one lobe of two sources as far apart as the antenna reaches. */
const samplesPerLobe = 6;

const stepOf = (driven: DrivenAntenna): number => {
  const lobe = speedOfLight / driven.solution.frequency / (2 * extent(driven));
  return Math.min(degree, lobe / samplesPerLobe);
};

/** Linear gain at one angle (rad) of a cut. */
export const gainOfCut = (cut: PatternCut, angle: number): number => cut.gains(Float64Array.of(angle))[0]!;

/** Elevation and azimuth (rad) at an angle of the vertical plane through `azimuth`: 0 its horizon, pi/2 the zenith, pi the horizon opposite. */
export function directionInPlane(angle: number, azimuth: number): { elevation: number; azimuth: number } {
  const back = angle > Math.PI / 2 && angle <= 1.5 * Math.PI;
  const elevation = back ? Math.PI - angle : angle > Math.PI ? angle - 2 * Math.PI : angle;
  return { elevation, azimuth: (azimuth + (back ? Math.PI : 0)) % (2 * Math.PI) };
}

/** The vertical plane through an azimuth (rad): half a turn over ground, the whole in free space. */
export function verticalCut(driven: DrivenAntenna, azimuth: number): PatternCut {
  const { soil } = driven.solution;
  const free = soil.kind === "free space";
  const lossy = isRealSoil(soil);
  return {
    gains: (angles) => {
      const at = Array.from(angles, (angle) => directionInPlane(angle, azimuth));
      const elevation = Float64Array.from(at, (direction) => direction.elevation);
      const found = gains(driven, { elevation, azimuth: Float64Array.from(at, (direction) => direction.azimuth) });
      // Over a lossy half-space the sky wave along the surface vanishes exactly; the formula meets 0/0 there.
      return lossy ? found.map((gain, i) => (Math.abs(Math.sin(elevation[i]!)) < 1e-12 ? 0 : gain)) : found;
    },
    from: 0,
    to: free ? 2 * Math.PI : Math.PI,
    closed: free,
    step: stepOf(driven),
  };
}

/** All azimuths at one elevation (rad). */
export function levelCut(driven: DrivenAntenna, elevation: number): PatternCut {
  return {
    gains: (azimuths) => gains(driven, { elevation: azimuths.map(() => elevation), azimuth: azimuths }),
    from: 0,
    to: 2 * Math.PI,
    closed: true,
    step: stepOf(driven),
  };
}
