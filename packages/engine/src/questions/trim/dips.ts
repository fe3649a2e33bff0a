/** Where the SWR dips over frequency as the piece is cut: the curve a person walks along while trimming. */
import { nearestTo, valleys, zeros } from "./curveSearch";
import { type FeedPath, reflectionSize } from "./feedPath";
import type { Fit, Span } from "./fit";

export interface Plane {
  /** Feed point over frequency (Hz) and length (m). */
  readonly feed: Fit<[number, number]>;
  readonly frequencies: Span;
  readonly lengths: Span;
}

export interface DipCurve {
  /** Falling frequencies over rising lengths; only the stretch that can be followed without a gap. */
  readonly lengths: readonly number[];
  readonly frequencies: readonly number[];
}

const steps = 24;
/** Steps between neighbouring lengths may move the dip this many times as far as the rule 1/L says, or less than nothing. */
const mostJump = 4;

/** Lowest SWR over frequency at the joint of `path`, nearest to `near`; null without one. */
export const dipAt = (plane: Plane, path: FeedPath, rated: number, length: number, near: number): number | null =>
  nearestTo(
    near,
    valleys((f) => reflectionSize(path.towardsTransmitter(f, plane.feed.at(f, length)), rated), plane.frequencies),
  );

/** X = 0 over frequency at the joint of `path` (at the feed point without one), nearest to `near`. */
export const zeroReactanceAt = (plane: Plane, path: FeedPath | null, length: number, near: number): number | null =>
  nearestTo(
    near,
    zeros((f) => {
      const feed = plane.feed.at(f, length);
      return (path ? path.towardsTransmitter(f, feed) : feed).im;
    }, plane.frequencies),
  );

/** Followed from `start` (m), where the dip lies near `near` (Hz), to both ends of the lengths. */
export function dipCurve(plane: Plane, path: FeedPath, rated: number, start: number, near: number): DipCurve | null {
  const first = dipAt(plane, path, rated, start, near);
  if (first === null) return null;
  const { from, to } = plane.lengths;
  const walk = (direction: 1 | -1): { length: number; dip: number }[] => {
    const found: { length: number; dip: number }[] = [];
    let at = { length: start, dip: first };
    const step = (to - from) / steps;
    for (let k = 1; ; k++) {
      const length = start + direction * k * step;
      if (length < from || length > to) return found;
      const dip = dipAt(plane, path, rated, length, (at.dip * at.length) / length);
      if (dip === null) return found;
      const moved = (direction * (at.dip - dip) * length) / (at.dip * step);
      if (!(moved > 0 && moved < mostJump)) return found;
      at = { length, dip };
      found.push(at);
    }
  };
  const points = [...walk(-1).reverse(), { length: start, dip: first }, ...walk(1)];
  return points.length < 4 ? null : { lengths: points.map((p) => p.length), frequencies: points.map((p) => p.dip) };
}

/** Length (m) at which the dip lies at a frequency, through the four nearest points; null beyond the curve. */
export function lengthOfDip({ lengths, frequencies }: DipCurve, frequency: number): number | null {
  const last = frequencies.length - 1;
  if (frequency > frequencies[0]! || frequency < frequencies[last]!) return null;
  const after = Math.max(
    1,
    frequencies.findIndex((f) => f <= frequency),
  );
  const first = Math.min(Math.max(0, after - 2), last - 3);
  const picked = [first, first + 1, first + 2, first + 3];
  return picked.reduce((sum, i) => {
    const weight = picked.reduce(
      (w, k) => (k === i ? w : (w * (frequency - frequencies[k]!)) / (frequencies[i]! - frequencies[k]!)),
      1,
    );
    return sum + weight * lengths[i]!;
  }, 0);
}

/** m of length per hertz of dip at a frequency, from a hundredth of it to either side; null beyond the curve. */
export function slopeAt(curve: DipCurve, frequency: number): number | null {
  const off = 0.005 * frequency;
  const [below, above] = [lengthOfDip(curve, frequency - off), lengthOfDip(curve, frequency + off)];
  return below === null || above === null ? null : (above - below) / (2 * off);
}
