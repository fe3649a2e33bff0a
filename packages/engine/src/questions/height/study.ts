/** The station at many heights. */
import type { PointRefused } from "../../chain/workedPoint";
import { strongestOfCut } from "../../fields/cutExtremes";
import { levelCut } from "../../fields/patternCut";
import type { Station } from "../../station/station";
import { movedStation } from "../../station/uncertainInputs";
import type { Aim } from "../common/aim";
import { combine, type InputEffect, ranked } from "../common/bounds";
import { presentHeight } from "../common/heights";
import type { Progress } from "../common/question";
import type { Worked } from "../common/worked";
import { type Found, type HeightLobes, type HeightPoint, heightPoint, heightRequest } from "./point";
import { lowestBetween, splitBetween } from "./refined";

export interface Study {
  readonly points: readonly HeightPoint[];
  readonly present: HeightPoint;
  /** At the heights of `points`, and at the present one. */
  readonly lobes: readonly HeightLobes[];
  readonly presentLobes: HeightLobes;
  /** m; null where the pattern does not split between the points. */
  readonly split: number | null;
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
/** Fewer heights than this make no curve. */
export const fewestPoints = 3;

const degree = Math.PI / 180;

/** Where to look: the wanted elevation, in the direction in which the antenna is strongest at it. */
export function aimOf(worked: Worked, elevation: number): Aim {
  const wanted = worked.station.wanted.direction;
  const azimuth = wanted ?? strongestOfCut(levelCut(worked.result.driven, elevation * degree)).angle;
  return { elevation, azimuth: azimuth / degree };
}

export function* studyHeights(worked: Worked, heights: readonly number[], aim: Aim): Generator<Progress, Study> {
  const drawn = ranked(worked.bounds, "radiatedPower", 0.002 * worked.point.ratedPower).slice(0, inputsDrawn);
  const total = heights.length * (1 + 2 * drawn.length);
  let done = 0;
  let refused: PointRefused["refused"] | null = null;
  const at = (station: Station, height: number): Found | null => {
    const found = heightPoint(worked, station, height, aim);
    if (!("refused" in found)) return found;
    refused ??= found.refused;
    return null;
  };
  const curve = function* (station: Station, hung: readonly number[]): Generator<Progress, (Found | null)[]> {
    const points: (Found | null)[] = [];
    for (const [i, height] of hung.entries()) {
      const ahead = i === 0 ? { ahead: hung.map((h) => heightRequest(worked, station, h)) } : {};
      yield { done: Math.min(done++, total), of: total, what: "heights", ...ahead };
      points.push(at(station, height));
    }
    return points;
  };
  const coarse = (yield* curve(worked.station, heights)).filter((f) => f !== null);
  const { found, split } = yield* refinedCurve(coarse, (height) => curve(worked.station, [height]));
  const kept = found.map((f) => f.point.height);
  const effects: InputEffect[] = [];
  // Without a curve there is nothing to draw a range around.
  for (const { input } of kept.length < fewestPoints ? [] : drawn) {
    const atLow = yield* curve(movedStation(worked.station, input, "low"), kept);
    const atHigh = yield* curve(movedStation(worked.station, input, "high"), kept);
    effects.push({ input, atLow: flat(atLow), atHigh: flat(atHigh) });
  }
  const present = heightPoint(worked, worked.station, presentHeight(worked), aim);
  if ("refused" in present)
    throw new Error(`height: the present height was worked out before and now is not: ${present.refused.why}`);
  return {
    points: found.map((f) => f.point),
    lobes: found.map((f) => f.lobes()),
    present: present.point,
    presentLobes: present.lobes(),
    split,
    effects,
    ...combine(flat(found), effects),
    refused,
  };
}

/** The curve with the height of the lowest SWR and that of the split among its points, each worked out itself. */
function* refinedCurve(
  coarse: readonly Found[],
  solve: (height: number) => Generator<Progress, (Found | null)[]>,
): Generator<Progress, { found: Found[]; split: number | null }> {
  const more: Found[] = [];
  const at = function* (height: number): Generator<Progress, HeightPoint | null> {
    const [found] = yield* solve(height);
    if (found) more.push(found);
    return found?.point ?? null;
  };
  const points = coarse.map((f) => f.point);
  const split = yield* splitBetween(points, at);
  const splits = more.filter((f) => f.point.height === split);
  more.length = 0;
  yield* lowestBetween(points, at);
  return { found: [...coarse, ...splits, ...more].sort((a, b) => a.point.height - b.point.height), split };
}

/** Every column at every height as one set of numbers, by column and height. */
function flat(found: readonly (Found | null)[]): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const one of found) {
    if (one) for (const [name, value] of Object.entries(one.point)) numbers[heightKey(name, one.point.height)] = value;
  }
  return numbers;
}

export const heightKey = (column: string, height: number): string => `${column} at ${height.toFixed(4)}`;
