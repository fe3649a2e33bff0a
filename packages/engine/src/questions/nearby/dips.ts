/** Where over the band the SWR is lowest and where the feed point is resonant, of one state of the station. */
import { interpolateAntenna } from "../../chain/interpolatedAntenna";
import type { Ahead } from "../../chain/solveRequest";
import { workPoint } from "../../chain/workPoint";
import { swr } from "../../lines/reflection";
import { leastBetween, rootBetween, signChanges } from "../../numerics/crossings";
import type { Band, Station } from "../../station/station";
import type { Progress } from "../common/question";
import type { Bench } from "./cases";

export interface Dips {
  /** Hz; null where the SWR falls up to an end of the span looked at. */
  readonly lowestSwr: number | null;
  readonly resonance: number | null;
}

const points = 61;
const tolerance = 1e-6;

/** The band with half its width to either side, 2 to 10 % of the frequency. */
export function spanOf({ sweep }: Band): { readonly from: number; readonly to: number } {
  const margin = Math.min(Math.max((sweep.to - sweep.from) / 2, 0.02 * sweep.from), 0.1 * sweep.from);
  return { from: sweep.from - margin, to: sweep.to + margin };
}

/** A tuner in the path is left out of the way. Null where the span cannot be worked out. */
export function* studyDips(station: Station, bench: Bench, whose: string): Generator<Progress, Dips | null> {
  const span = spanOf(bench.band);
  const antenna = yield* told(interpolateAntenna(station, span, bench.solver), `frequencies ${whose}`);
  if ("refused" in antenna) return null;
  const at = (f: number): { swr: number; x: number } | null => {
    const point = workPoint(station, bench.band, f, antenna.solver, { tuner: "through" });
    if ("refused" in point) return null;
    const feed = point.joints.find((joint) => joint.name.startsWith("feed point"))!;
    return { swr: swr(point.joints[0]!.impedance, point.ratedResistance), x: feed.impedance.im };
  };
  const frequencies = Array.from({ length: points }, (_, i) => span.from + ((span.to - span.from) * i) / (points - 1));
  const curve = frequencies.map(at);
  if (curve.includes(null)) return null;
  const read = (pick: (p: { swr: number; x: number }) => number): number[] => curve.map((p) => pick(p!));
  const swrs = read((p) => p.swr);
  const least = swrs.indexOf(Math.min(...swrs));
  const inside = least > 0 && least < points - 1;
  const to = tolerance * span.to;
  const lowestSwr = inside
    ? leastBetween((f) => at(f)?.swr ?? Number.POSITIVE_INFINITY, frequencies[least - 1]!, frequencies[least + 1]!, to)
    : null;
  const xs = read((p) => p.x);
  const middle = lowestSwr ?? bench.frequency;
  const [nearest] = signChanges(xs)
    .filter((i) => xs[i]! < xs[i + 1]!)
    .sort((a, b) => Math.abs(frequencies[a]! - middle) - Math.abs(frequencies[b]! - middle));
  const resonance =
    nearest === undefined
      ? null
      : rootBetween((f) => at(f)?.x ?? 0, frequencies[nearest]!, frequencies[nearest + 1]!, to);
  return { lowestSwr, resonance };
}

/** Solves an interpolation takes when nothing has to be refined. */
const usualSolves = 8;

function* told<T>(work: Generator<Ahead, T>, what: string): Generator<Progress, T> {
  let step = work.next();
  for (let done = 0; !step.done; done++) {
    yield { done: Math.min(done, usualSolves), of: usualSolves, what, ...step.value };
    step = work.next();
  }
  return step.value;
}
