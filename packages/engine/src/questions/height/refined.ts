/** Heights between those of the study, each worked out itself: where the pattern splits, and where the SWR is lowest. */
import type { Progress } from "../common/question";
import type { HeightPoint } from "./point";

type At = (height: number) => Generator<Progress, HeightPoint | null>;

/** Straight up this many dB below the strongest direction counts as a split pattern. */
export const splitDepth = 1;
/** Straight up this far below the strongest direction at every height is a null of the antenna, not a split. */
export const nullDepth = 10;
/** dB to which the depth at the split is met, and how many heights are tried for it at most. */
const splitTolerance = 0.01;
const mostTries = 6;

const depth = (p: HeightPoint): number => p.maximumGain - p.gainHigh - splitDepth;

/** Straight up is a null of the antenna itself, at every height. */
export const zenithIsNull = (points: readonly HeightPoint[]): boolean =>
  points.every((p) => depth(p) > nullDepth - splitDepth);

/** Lowest height (m) at which straight up falls `splitDepth` dB below the strongest direction, by false position; null without one. */
export function* splitBetween(points: readonly HeightPoint[], at: At): Generator<Progress, number | null> {
  if (zenithIsNull(points)) return null;
  const i = points.findIndex((p, k) => k > 0 && depth(p) >= 0 && depth(points[k - 1]!) < 0);
  if (i < 0) return null;
  let [below, above] = [points[i - 1]!, points[i]!];
  for (let tries = 0; tries < mostTries && Math.abs(depth(above)) > splitTolerance; tries++) {
    const share = depth(below) / (depth(below) - depth(above));
    const here = yield* at(below.height + share * (above.height - below.height));
    if (here === null || Math.abs(depth(here)) <= splitTolerance) return here?.height ?? above.height;
    if (depth(here) < 0) below = here;
    else above = here;
  }
  return above.height;
}

/** Works out the height of the lowest SWR between the points: the foot of the parabola through the lowest and its neighbours. */
export function* lowestBetween(points: readonly HeightPoint[], at: At): Generator<Progress, void> {
  const least = points.reduce((best, p, i) => (p.swrAtTransmitter < points[best]!.swrAtTransmitter ? i : best), 0);
  const [a, b, c] = [points[least - 1], points[least], points[least + 1]];
  if (!a || !b || !c) return;
  const slopes = [slope(a, b), slope(b, c)] as const;
  const bend = (slopes[1] - slopes[0]) / (c.height - a.height);
  const foot = (a.height + b.height) / 2 - slopes[0] / (2 * bend);
  if (bend > 0 && foot > a.height && foot < c.height && foot !== b.height) yield* at(foot);
}

const slope = (a: HeightPoint, b: HeightPoint): number =>
  (b.swrAtTransmitter - a.swrAtTransmitter) / (b.height - a.height);
