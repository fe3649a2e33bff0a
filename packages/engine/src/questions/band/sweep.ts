/** The band swept: nominal curve, its marks, and what uncertain inputs do to both. */
import { type InterpolatedAntenna, interpolateAntenna, type Wanted } from "../../chain/interpolatedAntenna";
import type { Ahead } from "../../chain/solveRequest";
import type { Station } from "../../station/station";
import { type Bounds, moveInputs, type Numbers } from "../common/bounds";
import { antennasInUse } from "../common/inUse";
import type { Progress } from "../common/question";
import type { CannotWork, Worked } from "../common/worked";
import { type CurvePoint, curveOf, isAtEdge, type Marks, marksOf } from "./curve";
import { withoutOutside } from "./withoutOutside";

/** Points of the table. */
const points = 101;

export interface Sweep {
  readonly curve: readonly CurvePoint[];
  readonly marks: Marks;
  readonly bounds: Bounds & { readonly skipped: readonly string[] };
  /** Frequency of the lowest SWR with a perfect choke at the feed point, Hz; null where no outside of a line is in the model, or none is lowest inside of the curve. */
  readonly lowestWithoutOutside: number | null;
  readonly solvedPoints: number;
  readonly interpolationError: number;
  readonly radiating: InterpolatedAntenna["radiating"];
}

/** The wanted span with half its width to either side, 1 to 10 % of the frequency: curves say little without their shoulders. */
export function viewOf(from: number, to: number): { from: number; to: number } {
  const margin = Math.min(Math.max((to - from) / 2, 0.01 * from), 0.1 * from);
  return { from: from - margin, to: to + margin };
}

export function* sweepBand(
  worked: Worked,
  view: { readonly from: number; readonly to: number },
  limit: number,
): Generator<Progress, Sweep | CannotWork> {
  const { station, solver } = worked;
  const index = station.bands.indexOf(worked.band);
  const frequencies = Array.from({ length: points }, (_, i) => view.from + ((view.to - view.from) * i) / (points - 1));
  const evaluate = function* (moved: Station, outward: boolean, wanted: Wanted) {
    const antenna = yield* interpolateAntenna(moved, view, solver, wanted);
    if ("refused" in antenna) return antenna;
    const at = curveOf(moved, moved.bands[index]!, antenna.solver);
    const curve: CurvePoint[] = [];
    for (const f of frequencies) {
      yield {};
      const point = at(f);
      if (point) curve.push(point);
    }
    if (curve.length < points)
      return { refused: { why: "the path cannot be worked out over the whole span", mend: "a narrower `band`" } };
    return { antenna, curve, marks: marksOf(curve, at, limit, outward) };
  };
  const nominal = yield* counted(evaluate(station, true, { currents: true }), points + 12, "frequencies");
  if ("refused" in nominal) return { refused: nominal.refused.why, mend: nominal.refused.mend };
  const numbers = numbersOf(nominal.curve, nominal.marks);
  const bounds = yield* moveInputs(
    station,
    numbers,
    function* (moved) {
      const result = yield* evaluate(moved, false, { nodes: nominal.antenna.nodes });
      return "refused" in result ? null : numbersOf(result.curve, result.marks);
    },
    "uncertain values over the band",
  );
  const { curve, marks, antenna } = nominal;
  const choked =
    hasOutside(worked) && !isAtEdge(curve, marks.lowestSwrFrequency)
      ? yield* counted(
          evaluate(withoutOutside(station), false, { nodes: nominal.antenna.nodes }),
          points + 12,
          "frequencies with a perfect choke",
        )
      : null;
  return {
    curve,
    marks,
    bounds,
    lowestWithoutOutside: choked === null || "refused" in choked ? null : choked.marks.lowestSwrFrequency,
    solvedPoints: antenna.solvedPoints,
    interpolationError: antenna.error,
    radiating: antenna.radiating,
  };
}

/** The line's outside reaches a feed point in use, and is not itself the return of the antenna there. */
function hasOutside({ station, point }: Worked): boolean {
  if (antennasInUse(station, point).some((a) => a.against === "outside of the line")) return false;
  return point.antenna.build.outside.some((run) => point.resolved.feedsInUse.includes(run.feed));
}

/** Steps counted against how many there will be at least. */
function* counted<T>(work: Generator<Ahead, T>, atLeast: number, what: string): Generator<Progress, T> {
  let step = work.next();
  for (let done = 0; !step.done; done++) {
    yield { done: Math.min(done, atLeast), of: atLeast, what, ...step.value };
    step = work.next();
  }
  return step.value;
}

/** Marks and every point of the curves as one set of numbers; curve columns are told by name and index. */
function numbersOf(curve: readonly CurvePoint[], marks: Marks): Numbers {
  const numbers: Record<string, number | null> = {
    lowestSwrFrequency: marks.lowestSwrFrequency,
    lowestSwr: marks.lowestSwr,
    resonantFrequency: marks.resonantFrequency,
    // An edge beyond the curve is looked for in the nominal case only: then there are no bounds to compare.
    usableWidth: marks.usableOpen ? null : marks.usableWidth,
  };
  curve.forEach((p, i) => {
    numbers[columnKey("swrAtTransmitter", i)] = p.swrAtTransmitter;
    numbers[columnKey("swrAtFeedPoint", i)] = p.swrAtFeedPoint;
  });
  return numbers;
}

export const columnKey = (column: string, index: number): string => `${column} ${index}`;
