/** What a pattern is judged by: directivity, average gain, front against back and rear. */
import type { DrivenAntenna } from "../wires/driveAntenna";
import { strongestOfCut } from "./cutExtremes";
import { gain } from "./gain";
import { levelCut, type PatternCut } from "./patternCut";
import type { Direction } from "./strongestDirection";

/** Directivity (linear) of the strongest direction: gain over the share of power that leaves for the sky (`radiated`, W). IEEE Std 145. */
export const directivity = (driven: DrivenAntenna, strongest: Direction, radiated: number): number =>
  (strongest.gain * driven.powerIn) / radiated;

/**
 * Gain (linear) averaged over the whole sphere: `radiated` (W, integrated by powerAccount) over the power in. 1 without losses in
 * free space and over a perfect plane counted over the sphere; over soil the share that leaves for the sky.
 */
export const averageGain = (driven: DrivenAntenna, radiated: number): number => radiated / driven.powerIn;

/** Gain over that in the direction opposite in azimuth at the same elevation; linear, Infinity against a perfect null. */
export const frontToBack = (driven: DrivenAntenna, front: Direction): number =>
  front.gain / gain(driven, front.elevation, front.azimuth + Math.PI);

/** Gain over the strongest in the rear half at the same elevation (90 to 270 degrees from the front); linear. */
export function frontToRear(driven: DrivenAntenna, front: Direction): number {
  const whole = levelCut(driven, front.elevation);
  const rear: PatternCut = {
    ...whole,
    from: front.azimuth + Math.PI / 2,
    to: front.azimuth + 1.5 * Math.PI,
    closed: false,
  };
  return front.gain / strongestOfCut(rear).gain;
}
