/** The part all questions about a whole station share: solve it, account for every watt, move what is uncertain. */
import { type AntennaSolver, createAntennaSolver } from "../../chain/antennaSolver";
import type { WorkedPoint } from "../../chain/workedPoint";
import { type PointOptions, workPoint } from "../../chain/workPoint";
import type { Band, Station } from "../../station/station";
import { bandOf } from "./bandOf";
import { type Bounds, moveInputs, type Numbers } from "./bounds";
import type { Parameters, Progress } from "./question";
import { type StationNumbers, stationNumbers } from "./stationNumbers";

export interface Worked {
  readonly station: Station;
  readonly band: Band;
  readonly frequency: number;
  readonly solver: AntennaSolver;
  readonly point: WorkedPoint;
  readonly result: StationNumbers;
  /** Numbers of `result` and those the question added. */
  readonly numbers: Numbers;
  readonly bounds: Bounds & { readonly skipped: readonly string[] };
}

/** Further numbers of a question, from a worked point and its shared numbers. */
export type MoreNumbers = (point: WorkedPoint, result: StationNumbers) => Numbers;

export interface CannotWork {
  readonly refused: string;
  readonly mend: string;
}

export function* workStation(
  station: Station,
  parameters: Parameters,
  more: MoreNumbers,
  tuner: PointOptions["tuner"] = "matched",
): Generator<Progress, Worked | CannotWork> {
  const band = bandOf(station, parameters);
  if ("refused" in band) return band;
  const solver = createAntennaSolver();
  yield { done: 0, of: 1, what: "the antenna" };
  const evaluate = (moved: Station) => {
    const movedBand = moved.bands[station.bands.indexOf(band)]!;
    const point = workPoint(moved, movedBand, movedBand.frequency.value, solver, { tuner });
    if ("refused" in point) return point;
    const result = stationNumbers(point);
    return { point, result, numbers: { ...result.numbers, ...more(point, result) } };
  };
  const nominal = evaluate(station);
  if ("refused" in nominal) return { refused: nominal.refused.why, mend: nominal.refused.mend };
  const bounds = yield* moveInputs(
    station,
    nominal.numbers,
    (moved) => {
      const result = evaluate(moved);
      return "refused" in result ? null : result.numbers;
    },
    "uncertain values",
  );
  return { station, band, frequency: band.frequency.value, solver, ...nominal, bounds };
}
