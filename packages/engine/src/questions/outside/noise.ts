/**
 * What the outside picks up, by reciprocity: 1 V in series with the outside at a place gives at the open feed as many volts
 * as the current there is of the feed current when sending. Told as the wave from the antenna's best side that does the same.
 */
import { vacuumImpedance } from "../../numerics/vacuum";
import type { OutsideState } from "./state";

/**
 * V/m (rms) of a plane wave from the strongest direction that gives 1 V at the open feed: 1/effective length, from the
 * available power V²/(4R) = E² λ² G/(4 π η0); `resistance` in ohm, `gain` as a factor, `wave` in m. Exact by reciprocity.
 */
export const fieldForOneVolt = (resistance: number, gain: number, wave: number): number =>
  Math.sqrt((Math.PI * vacuumImpedance) / (resistance * gain)) / wave;

/** V/m of that wave for 1 V in series with the outside near the house. */
export function noiseAsField(state: OutsideState, resistance: number, gain: number, wave: number): number {
  return (state.house.current / state.feedCurrent) * fieldForOneVolt(resistance, gain, wave);
}
