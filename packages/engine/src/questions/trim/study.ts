/** The whole study of one station: lengths at the wanted frequency, the dip over frequency while it is cut, and what is in doubt. */
import type { WorkedPoint } from "../../chain/workedPoint";
import type { Station } from "../../station/station";
import { movedStation } from "../../station/uncertainInputs";
import { type Bounds, combine, type InputEffect, type Numbers } from "../common/bounds";
import type { Progress } from "../common/question";
import { type Bench, feedPointAt, pointAt } from "./bench";
import { type DipCurve, dipAt, dipCurve, type Plane, zeroReactanceAt } from "./dips";
import { type FeedPath, feedPath } from "./feedPath";
import { fitPlane, fitRoughly } from "./fit";
import { lengthsOf, type Scan, scanLengths } from "./lengthScan";

export interface Study {
  readonly bench: Bench;
  readonly path: FeedPath;
  readonly scan: Scan;
  /** Null where feed point and frequency could not be worked out together around the wanted length. */
  readonly plane: Plane | null;
  /** Dip of the SWR at the transmitter; null where none can be followed. */
  readonly dips: DipCurve | null;
  /** At the present length: dip at the transmitter and X = 0 at the feed point, Hz. */
  readonly dipNow: number | null;
  readonly resonanceNow: number | null;
  readonly present: WorkedPoint;
  /** At the length of lowest SWR at the transmitter, and at that of X = 0. */
  readonly best: WorkedPoint | null;
  readonly resonant: WorkedPoint | null;
  readonly bounds: Bounds;
}

/** Least reach of the dip curve around the wanted length, as a share of it, and how far it goes to take in what was measured. */
const leastReach = 0.08;
const mostReach = 0.22;
const margin = 0.03;
/** Uncertain inputs are followed this far from the wanted length. */
const doubtReach = 0.06;

/**
 * `measured`: a frequency of lowest SWR that the curve has to reach, Hz. `known`: what inputs do at the present length. Null where no length can be worked out.
 */
export function* studyLengths(
  bench: Bench,
  present: WorkedPoint,
  measured: number | null,
  known: Bounds,
): Generator<Progress, Study | null> {
  const path = feedPath(bench.station, bench.band, "transmitter");
  if (path === null) return null;
  const scan = yield* counted(scanLengths(bench, path), 20, "lengths");
  if (scan === null) return null;
  const target = scan.lowestSwr;
  const plane = yield* counted(planeAround(bench, scan, measured), 28, "lengths and frequencies");
  const centre = target ?? scan.resonance;
  const dips = plane && centre !== null ? dipCurve(plane, path, bench.rated, centre, bench.frequency) : null;
  const bounds = yield* moveLengths(bench, scan, known);
  const { length } = bench.trimmed;
  const inside = plane !== null && length >= plane.lengths.from && length <= plane.lengths.to;
  const expected = centre === null ? bench.frequency : (bench.frequency * centre) / length;
  return {
    bench,
    path,
    scan,
    plane,
    dips,
    dipNow: inside ? dipAt(plane, path, bench.rated, length, expected) : null,
    resonanceNow: inside ? zeroReactanceAt(plane, null, length, expected) : null,
    present,
    best: target === null ? null : pointAt(bench, bench.frequency, target),
    resonant: scan.resonance === null ? null : pointAt(bench, bench.frequency, scan.resonance),
    bounds,
  };
}

/** Feed point over frequencies and lengths: around the wanted length, wide enough for the present one and for what was measured. */
function* planeAround(bench: Bench, scan: Scan, measured: number | null): Generator<void, Plane | null> {
  const { length, least } = bench.trimmed;
  const centre = scan.lowestSwr ?? scan.resonance ?? length;
  const off = Math.max(Math.abs(length / centre - 1), measured === null ? 0 : Math.abs(bench.frequency / measured - 1));
  const wanted = off + margin;
  const first = wanted <= mostReach ? Math.max(leastReach, wanted) : leastReach;
  // Narrower where a splitter passes no more, or the wire would reach the soil.
  for (const [reach, beyond] of [
    [first, margin],
    [leastReach / 2, margin / 2],
    [leastReach / 4, margin / 6],
  ] as const) {
    const lengths = { from: Math.max(least, centre * (1 - reach)), to: centre * (1 + reach) };
    const frequencies = {
      from: (bench.frequency * (1 - beyond)) / (1 + reach),
      to: (bench.frequency * (1 + beyond)) / (1 - reach),
    };
    const feed = yield* fitPlane((f, l) => feedPointAt(bench, f, l, frequencies.to), frequencies, lengths);
    if (feed) return { feed, frequencies, lengths };
  }
  return null;
}

/** Inputs that move none of these by more at either end cannot move a length by a millimetre. */
const telling: Readonly<Record<string, number>> = {
  feedPointResistance: 0.05,
  feedPointReactance: 0.05,
  swrAtTransmitter: 0.002,
};

const isTelling = ({ atLow, atHigh }: InputEffect, nominal: Numbers): boolean =>
  Object.entries(telling).some(([name, least]) =>
    [atLow, atHigh].some((end) => Math.abs((end[name] ?? 0) - (nominal[name] ?? 0)) > least),
  );

/** Lengths with every uncertain input that matters at its ends, from four solves each around the nominal ones. */
function* moveLengths(bench: Bench, scan: Scan, known: Bounds): Generator<Progress, Study["bounds"]> {
  const index = bench.station.bands.indexOf(bench.band);
  const centre = scan.lowestSwr ?? scan.resonance ?? bench.trimmed.length;
  const span = {
    from: Math.max(scan.span.from, centre * (1 - doubtReach)),
    to: Math.min(scan.span.to, centre * (1 + doubtReach)),
  };
  const lengthsFor = function* (station: Station): Generator<void, Numbers | null> {
    const moved: Bench = {
      ...bench,
      station,
      band: station.bands[index]!,
      rated: station.transmitter.designedFor.value,
    };
    const path = feedPath(station, moved.band, "transmitter");
    const feed = path && (yield* fitRoughly((l) => feedPointAt(moved, bench.frequency, l, bench.frequency), span));
    return path && feed ? numbersOf(lengthsOf(moved, path, feed, span, centre)) : null;
  };
  const nominal = numbersOf(scan);
  const told = known.effects.filter((effect) => isTelling(effect, known.nominal));
  const of = 8 * told.length + 4;
  const rough = yield* counted(lengthsFor(bench.station), of, "uncertain values");
  const effects: InputEffect[] = [];
  for (const { input } of told) {
    const at = function* (end: "low" | "high"): Generator<Progress, Numbers> {
      const moved = yield* counted(lengthsFor(movedStation(bench.station, input, end)), of, "uncertain values");
      return moved && rough ? shiftedBy(nominal, rough, moved) : nominal;
    };
    effects.push({ input, atLow: yield* at("low"), atHigh: yield* at("high") });
  }
  return { nominal, ...combine(nominal, effects), effects };
}

/** The nominal numbers moved by what lies between two rough ones, so that the error of these cancels. */
function shiftedBy(nominal: Numbers, rough: Numbers, moved: Numbers): Numbers {
  const shifted = Object.entries(nominal).map(([name, value]) => {
    const [a, b] = [rough[name] ?? null, moved[name] ?? null];
    return [name, value === null || a === null || b === null ? value : value + b - a] as const;
  });
  return Object.fromEntries(shifted);
}

const numbersOf = ({ lowestSwr, lowestSwrAtFeedPoint, resonance }: Omit<Scan, "span" | "feed">): Numbers => ({
  lengthForLowestSwr: lowestSwr,
  lengthForLowestSwrAtFeedPoint: lowestSwrAtFeedPoint,
  lengthForResonance: resonance,
});

/** Steps counted against how many there will be at least. */
export function* counted<T>(work: Generator<void, T>, atLeast: number, what: string): Generator<Progress, T> {
  let step = work.next();
  for (let done = 0; !step.done; done++) {
    yield { done: Math.min(done, atLeast), of: atLeast, what };
    step = work.next();
  }
  return step.value;
}
