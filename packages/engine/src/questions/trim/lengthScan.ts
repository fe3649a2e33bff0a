/** The wanted frequency: which length gives the lowest SWR at both ends of the path, and which one X = 0. */
import { type Bench, feedPointAt } from "./bench";
import { nearestTo, valleys, zeros } from "./curveSearch";
import { type FeedPath, reflectionSize } from "./feedPath";
import { type Fit, fitLine, type Span } from "./fit";

export interface Lengths {
  /** m; null where the SWR has no least value over the lengths searched. */
  readonly lowestSwr: number | null;
  readonly lowestSwrAtFeedPoint: number | null;
  readonly resonance: number | null;
}

export interface Scan extends Lengths {
  readonly span: Span;
  readonly feed: Fit<[number]>;
}

/** Lengths searched, as shares of the present one: first, where that has no lowest SWR, and where it cannot be worked out. */
const usual = [0.82, 1.22] as const;
const wide = [0.65, 1.5] as const;
const narrow = [0.93, 1.07] as const;
const mostIntervals = 32;
/** A valley this much shallower in SWR than the deepest still counts, where it is nearer. */
const asGood = 0.1;

/** Null where no span of lengths can be worked out. */
export function* scanLengths(bench: Bench, path: FeedPath): Generator<void, Scan | null> {
  const scan = yield* scanOver(bench, path, usual);
  if (scan === null) return yield* scanOver(bench, path, narrow);
  if (scan.lowestSwr !== null) return scan;
  const wider = yield* scanOver(bench, path, wide);
  return wider ?? scan;
}

function* scanOver(
  bench: Bench,
  path: FeedPath,
  [shorter, longer]: readonly [number, number],
): Generator<void, Scan | null> {
  const { length, least } = bench.trimmed;
  const span = { from: Math.max(least, shorter * length), to: Math.max(least * 1.1, longer * length) };
  const exact = (l: number) => feedPointAt(bench, bench.frequency, l, bench.frequency);
  const feed = yield* fitLine(exact, span, mostIntervals);
  return feed && { span, feed, ...lengthsOf(bench, path, feed, span, length) };
}

/** The marks on a fitted curve; of several as good as each other the ones nearest to `near`. */
export function lengthsOf(
  { frequency, rated }: Bench,
  path: FeedPath,
  feed: Fit<[number]>,
  span: Span,
  near: number,
): Lengths {
  const atTransmitter = (l: number) => reflectionSize(path.towardsTransmitter(frequency, feed.at(l)), rated);
  const atFeedPoint = (l: number) => reflectionSize(feed.at(l), rated);
  const lowestSwr = bestValley(atTransmitter, span, near);
  const beside = lowestSwr ?? near;
  return {
    lowestSwr,
    lowestSwrAtFeedPoint: bestValley(atFeedPoint, span, beside),
    resonance: nearestTo(
      beside,
      zeros((l) => feed.at(l).im, span),
    ),
  };
}

const swrOf = (size: number): number => (1 + size) / Math.max(1 - size, 1e-9);

function bestValley(size: (l: number) => number, span: Span, near: number): number | null {
  const found = valleys(size, span);
  const lowest = Math.min(...found.map((l) => swrOf(size(l))));
  return nearestTo(
    near,
    found.filter((l) => swrOf(size(l)) <= lowest + asGood),
  );
}
