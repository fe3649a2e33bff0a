/** How well a gain is known, from the two meshes of a solution. */
import type { DrivenAntenna } from "../wires/driveAntenna";
import { gain } from "./gain";

export interface GainError {
  /** dB by which the gain may be off; large or infinite in a null, where the other measure says more. */
  readonly decibels: number;
  /** The same difference as a share of the largest gain. */
  readonly shareOfLargest: number;
}

/**
 * A third of the difference between the meshes, as the error falls with the square of the element. `coarse` is the twin of
 * the mesh of doubled elements under the same voltages, `largest` the largest gain (linear); angles as in farField.
 */
export function gainError(
  fine: DrivenAntenna,
  coarse: DrivenAntenna,
  elevation: number,
  azimuth: number,
  largest: number,
): GainError {
  const here = gain(fine, elevation, azimuth);
  const difference = Math.abs(here - gain(coarse, elevation, azimuth)) / 3;
  return { decibels: 10 * Math.log10(1 + difference / here), shareOfLargest: difference / largest };
}
