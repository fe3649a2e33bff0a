/** The outside of the line in every band of the station. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import { requestAt } from "../../chain/solveRequest";
import type { Band, Station } from "../../station/station";
import type { Progress } from "../common/question";
import { isOutside, type OutsideState, workOutside } from "./state";

export interface BandPoint {
  readonly band: Band;
  readonly share: number;
  readonly current: number;
  readonly house: number;
  readonly at: number;
}

/** Bands whose path does not reach the feed over this line are left out. Empty for a station of one band. */
export function* studyBands(
  station: Station,
  solver: AntennaSolver,
  share: (state: OutsideState) => number,
): Generator<Progress, BandPoint[]> {
  const { bands } = station;
  if (bands.length < 2) return [];
  const found: BandPoint[] = [];
  const ahead = bands.map((band) => requestAt(station, band.frequency.value));
  for (const [i, band] of bands.entries()) {
    yield { done: i, of: bands.length, what: "bands", ...(i === 0 ? { ahead } : {}) };
    const state = workOutside(station, { band, frequency: band.frequency.value, solver });
    if (!isOutside(state)) continue;
    found.push({
      band,
      share: share(state),
      current: state.largest.current,
      house: state.house.current / state.antennaCurrent,
      at: state.largest.at,
    });
  }
  return found;
}
