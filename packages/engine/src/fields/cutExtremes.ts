/** Lobes and minima (nulls) of a cut, and the width of a lobe: found by refinement, not read off a grid. */
import { leastBetween, rootBetween } from "../numerics/crossings";
import { gainOfCut, type PatternCut } from "./patternCut";

export interface Extreme {
  readonly kind: "lobe" | "minimum";
  /** Of the cut, rad. */
  readonly angle: number;
  /** Linear. */
  readonly gain: number;
}

/** Of angles, rad: 0.006 degrees. */
const tolerance = 1e-4;
/** A lobe that rises less than 0.1 dB above a minimum beside it is no lobe of its own. */
const leastRise = 10 ** 0.01;

/**
 * Every maximum and minimum of a cut in the order of angle: samples at the cut's step, then golden section. An end of an open
 * cut counts as a lobe where the gain falls away from it, never as a minimum. None where the cut is level within 0.1 dB.
 */
export function extremes(cut: PatternCut): readonly Extreme[] {
  const count = Math.ceil((cut.to - cut.from) / cut.step);
  const step = (cut.to - cut.from) / count;
  const at = (i: number) => cut.from + i * step;
  const values = cut.gains(Float64Array.from({ length: cut.closed ? count : count + 1 }, (_, i) => at(i)));
  const value = (i: number): number | undefined =>
    cut.closed ? values[(i + values.length) % values.length] : values[i];
  const found = [...values].flatMap((here, i): Extreme[] => {
    const [before, after] = [value(i - 1), value(i + 1)];
    if (before === undefined || after === undefined)
      return here > (before ?? after ?? here) ? [{ kind: "lobe", angle: at(i), gain: here }] : [];
    if (here >= before && here > after) return [refined(cut, "lobe", at(i - 1), at(i + 1))];
    if (here <= before && here < after) return [refined(cut, "minimum", at(i - 1), at(i + 1))];
    return [];
  });
  return distinct(found, cut.closed);
}

function refined(cut: PatternCut, kind: Extreme["kind"], low: number, high: number): Extreme {
  const sign = kind === "lobe" ? -1 : 1;
  const found = leastBetween((t) => sign * gainOfCut(cut, t), low, high, tolerance);
  const angle = cut.closed && found < cut.from ? found + (cut.to - cut.from) : found;
  return { kind, angle, gain: gainOfCut(cut, angle) };
}

/** Drops the pairs of neighbours that differ least until all differ enough. */
function distinct(found: readonly Extreme[], closed: boolean): readonly Extreme[] {
  const left = [...found];
  while (left.length > 1) {
    const pairs = closed ? left.length : left.length - 1;
    let [least, at] = [Number.POSITIVE_INFINITY, -1];
    for (let i = 0; i < pairs; i++) {
      const [a, b] = [left[i]!.gain, left[(i + 1) % left.length]!.gain];
      const rise = Math.max(a, b) / Math.min(a, b);
      if (rise < least) [least, at] = [rise, i];
    }
    if (least >= leastRise) break;
    const next = (at + 1) % left.length;
    left.splice(Math.max(at, next), 1);
    left.splice(Math.min(at, next), 1);
  }
  return left;
}

/** Angles (rad) on both sides of a lobe at which the gain is half of it; null when it does not fall that far on a side. */
export function halfPowerAngles(
  cut: PatternCut,
  lobe: { readonly angle: number; readonly gain: number },
): { readonly from: number; readonly to: number } | null {
  const to = halfPower(cut, lobe, 1);
  const from = halfPower(cut, lobe, -1);
  return from === null || to === null ? null : { from, to };
}

function halfPower(cut: PatternCut, lobe: { readonly angle: number; readonly gain: number }, side: 1 | -1) {
  const over = (t: number): number => gainOfCut(cut, t) - lobe.gain / 2;
  const room = cut.closed ? (cut.to - cut.from) / 2 : side > 0 ? cut.to - lobe.angle : lobe.angle - cut.from;
  for (let gone = 0; gone < room; ) {
    const next = Math.min(room, gone + cut.step);
    const [a, b] = [lobe.angle + side * gone, lobe.angle + side * next];
    if (over(b) < 0) return rootBetween(over, a, b, tolerance);
    gone = next;
  }
  return null;
}

/** The strongest angle of a cut and its gain (linear); of equal ones the first. */
export function strongestOfCut(cut: PatternCut): { readonly angle: number; readonly gain: number } {
  const count = Math.ceil((cut.to - cut.from) / cut.step);
  const step = (cut.to - cut.from) / count;
  const angles = Float64Array.from({ length: count + 1 }, (_, i) => cut.from + i * step);
  const gains = cut.gains(angles);
  let best = { angle: cut.from, gain: gains[0]! };
  for (let i = 1; i <= count; i++) {
    const [angle, gain] = [angles[i]!, gains[i]!];
    if (gain > best.gain * (1 + 1e-7)) best = { angle, gain };
  }
  const [low, high] = [best.angle - step, best.angle + step];
  const angle = leastBetween(
    (t) => -gainOfCut(cut, t),
    cut.closed ? low : Math.max(cut.from, low),
    cut.closed ? high : Math.min(cut.to, high),
    tolerance,
  );
  const gain = gainOfCut(cut, angle);
  return gain > best.gain * (1 + 1e-9) ? { angle, gain } : best;
}
