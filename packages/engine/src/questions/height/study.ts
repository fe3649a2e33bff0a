/** The station at many heights: the antenna raised and lowered, line and path as they are. */
import type { PointRefused } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { swr } from "../../lines/reflection";
import type { Station } from "../../station/station";
import { movedStation } from "../../station/uncertainInputs";
import { combine, type InputEffect, ranked } from "../common/bounds";
import { presentHeight } from "../common/heights";
import type { Progress } from "../common/question";
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

export interface Aim {
  /** Degrees. */
  readonly elevation: number;
  readonly azimuth: number;
}

export interface Study {
  readonly points: readonly HeightPoint[];
  readonly present: HeightPoint;
  /** Names of the uncertain inputs whose range the curves show, with their effects. */
  readonly effects: readonly InputEffect[];
  readonly low: Readonly<Record<string, number | null>>;
  readonly high: Readonly<Record<string, number | null>>;
  /** Heights that could not be worked out, with the reason of the first. */
  readonly refused: PointRefused["refused"] | null;
}

/** Uncertain inputs whose range is drawn into the curves; the others move the numbers at the present height only. */
const inputsDrawn = 2;
export const pointsOfStudy = 25;

/** Where to look: the wanted elevation, in the direction in which the antenna is strongest at it. */
export function aimOf(worked: Worked, elevation: number): Aim {
  const wanted = worked.station.wanted.direction;
  if (wanted !== null) return { elevation, azimuth: (wanted * 180) / Math.PI };
  const azimuths = Array.from({ length: 36 }, (_, i) => 10 * i);
  const gains = azimuths.map((a) => gainAt(worked.result.driven, elevation, a));
  return { elevation, azimuth: azimuths[gains.indexOf(Math.max(...gains))]! };
}

export function* studyHeights(worked: Worked, heights: readonly number[], aim: Aim): Generator<Progress, Study> {
  const drawn = ranked(worked.bounds, "radiatedPower", 0.002 * worked.point.ratedPower).slice(0, inputsDrawn);
  const total = heights.length * (1 + 2 * drawn.length);
  let done = 0;
  let refused: PointRefused["refused"] | null = null;
  const curve = function* (station: Station): Generator<Progress, (HeightPoint | null)[]> {
    const points: (HeightPoint | null)[] = [];
    for (const height of heights) {
      yield { done: done++, of: total, what: "heights" };
      const point = heightPoint(worked, station, height, aim);
      if ("refused" in point) refused ??= point.refused;
      points.push("refused" in point ? null : point);
    }
    return points;
  };
  const nominal = yield* curve(worked.station);
  const effects: InputEffect[] = [];
  for (const { input } of drawn) {
    const atLow = yield* curve(movedStation(worked.station, input, "low"));
    const atHigh = yield* curve(movedStation(worked.station, input, "high"));
    effects.push({ input, atLow: flat(atLow), atHigh: flat(atHigh) });
  }
  const points = nominal.filter((p) => p !== null);
  const present = heightPoint(worked, worked.station, presentHeight(worked), aim);
  if ("refused" in present)
    throw new Error(`height: the present height was worked out before and now is not: ${present.refused.why}`);
  const bounds = combine(
    flat(points),
    effects.map((e) => ({ ...e, atLow: e.atLow, atHigh: e.atHigh })),
  );
  return { points, present, effects, ...bounds, refused };
}

/** Every column at every height as one set of numbers, by column and height. */
function flat(points: readonly (HeightPoint | null)[]): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const point of points) {
    if (point) for (const [name, value] of Object.entries(point)) numbers[heightKey(name, point.height)] = value;
  }
  return numbers;
}

export const heightKey = (column: string, height: number): string => `${column} at ${height.toFixed(4)}`;

function heightPoint(worked: Worked, station: Station, height: number, aim: Aim): HeightPoint | PointRefused {
  const band = station.bands[worked.station.bands.indexOf(worked.band)]!;
  const lift = height - presentHeight(worked);
  const point = workPoint(station, band, band.frequency.value, worked.solver, { tuner: "matched", lift });
  if ("refused" in point) return point;
  const { numbers, driven, strongest } = stationNumbers(point);
  return {
    height,
    radiatedPower: numbers.radiatedPower!,
    powerIntoAntenna: point.powerIntoAntenna,
    heatInSoil: numbers.heatInSoil!,
    swrAtTransmitter: point.swrAtTransmitter,
    swrAtFeedPoint: swr({ re: numbers.feedPointResistance!, im: numbers.feedPointReactance! }, point.ratedResistance),
    feedPointResistance: numbers.feedPointResistance!,
    feedPointReactance: numbers.feedPointReactance!,
    gainLow: gainAt(driven, aim.elevation, aim.azimuth),
    gainHigh: Math.max(-60, gainAt(driven, 90, aim.azimuth)),
    maximumGain: numbers.maximumGain!,
    elevationOfMaximum: (strongest.elevation * 180) / Math.PI,
  };
}
