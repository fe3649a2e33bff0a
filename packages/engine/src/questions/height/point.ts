/** The station at one height: the antenna raised or lowered, line and path as they are. */
import { requestAt, type SolveRequest } from "../../chain/solveRequest";
import type { PointRefused } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { type Extreme, extremes } from "../../fields/cutExtremes";
import { verticalCut } from "../../fields/patternCut";
import { swr } from "../../lines/reflection";
import type { Band, Station } from "../../station/station";
import type { Aim } from "../common/aim";
import { presentHeight } from "../common/heights";
import { gainAt, stationNumbers } from "../common/stationNumbers";
import type { Worked } from "../common/worked";

export interface HeightPoint {
  readonly height: number;
  readonly radiatedPower: number;
  readonly powerIntoAntenna: number;
  readonly heatInSoil: number;
  readonly swrAtTransmitter: number;
  readonly swrAtFeedPoint: number;
  readonly feedPointResistance: number;
  readonly feedPointReactance: number;
  readonly gainLow: number;
  readonly gainHigh: number;
  readonly maximumGain: number;
  readonly elevationOfMaximum: number;
}

/** Lobes and minima from the horizon up to the zenith, in the plane of the aim. */
export interface HeightLobes {
  readonly height: number;
  readonly extremes: readonly Extreme[];
}

export interface Found {
  readonly point: HeightPoint;
  /** Worked out when asked for: moved inputs need the point only. */
  readonly lobes: () => HeightLobes;
}

/** dBi: a null has no bottom. */
export const deepest = -60;
const degree = Math.PI / 180;

/** The solve that heightPoint needs. */
export const heightRequest = (worked: Worked, station: Station, height: number): SolveRequest =>
  requestAt(station, bandIn(worked, station).frequency.value, height - presentHeight(worked));

const bandIn = (worked: Worked, station: Station): Band => station.bands[worked.station.bands.indexOf(worked.band)]!;

export function heightPoint(worked: Worked, station: Station, height: number, aim: Aim): Found | PointRefused {
  const band = bandIn(worked, station);
  const lift = height - presentHeight(worked);
  const point = workPoint(station, band, band.frequency.value, worked.solver, { tuner: "matched", lift });
  if ("refused" in point) return point;
  const { numbers, driven, strongest } = stationNumbers(point);
  const upright = verticalCut(driven, aim.azimuth * degree);
  return {
    lobes: () => ({ height, extremes: extremes({ ...upright, to: Math.PI / 2, closed: false }) }),
    point: {
      height,
      radiatedPower: numbers.radiatedPower!,
      powerIntoAntenna: point.powerIntoAntenna,
      heatInSoil: numbers.heatInSoil!,
      swrAtTransmitter: point.swrAtTransmitter,
      swrAtFeedPoint: swr({ re: numbers.feedPointResistance!, im: numbers.feedPointReactance! }, point.ratedResistance),
      feedPointResistance: numbers.feedPointResistance!,
      feedPointReactance: numbers.feedPointReactance!,
      gainLow: gainAt(driven, aim.elevation, aim.azimuth),
      gainHigh: Math.max(deepest, gainAt(driven, 90, aim.azimuth)),
      maximumGain: numbers.maximumGain!,
      elevationOfMaximum: strongest.elevation / degree,
    },
  };
}
