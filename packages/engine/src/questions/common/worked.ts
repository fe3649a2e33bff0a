/** The part all questions about a whole station share: solve it, account for every watt, move what is uncertain. */
import { type AntennaSolver, createAntennaSolver } from "../../chain/antennaSolver";
import { requestAt, type SolveRequest } from "../../chain/solveRequest";
import type { WorkedPoint } from "../../chain/workedPoint";
import { type PointOptions, workPoint } from "../../chain/workPoint";
import type { Band, Station } from "../../station/station";
import { bandOf } from "./bandOf";
import { type Bounds, moveInputs, movesOf, type Numbers } from "./bounds";
import type { Context, Parameters, Progress } from "./question";
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
  { kept }: Pick<Context, "kept">,
  more: MoreNumbers,
  tuner: PointOptions["tuner"] = "matched",
): Generator<Progress, Worked | CannotWork> {
  const band = bandOf(station, parameters);
  if ("refused" in band) return band;
  const solver = createAntennaSolver(kept);
  yield { done: 0, of: 1, what: "the antenna", ahead: solvesOf(station, band) };
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

/** The antennas of the station as it is and with each uncertain input moved. */
function solvesOf(station: Station, band: Band): SolveRequest[] {
  const index = station.bands.indexOf(band);
  const moved = movesOf(station).flatMap(({ low, high }) => [low, high]);
  return [station, ...moved].map((one) => requestAt(one, one.bands[index]!.frequency.value));
}
