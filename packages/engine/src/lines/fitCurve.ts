/** Losses against each other: the point that stands out, and steps that no line's loss can take. */
import { nonNegativeLeastSquares } from "../numerics/nonNegativeLeastSquares";
import { significantNumber, withPrefix } from "../quantity/format";
import { at, loss, type Numbered, perHundred, type SheetFinding, type SheetPoint, slack } from "./fitFinding";
import { slipOf, slipSays } from "./fitSlips";

/** Fit of a sqrt(f) + b f (+ c with more than two points), as a function of frequency, and how far it misses its points. */
function smoothFit(points: readonly SheetPoint[]): { readonly at: (f: number) => number; readonly worst: number } {
  const terms = (f: number): number[] => [Math.sqrt(f), f, ...(points.length > 2 ? [1] : [])];
  const rows = points.map((p) => terms(p.frequency).map((t) => t / p.decibelsPerMetre));
  const found = nonNegativeLeastSquares(
    rows,
    points.map(() => 1),
  );
  const fitted = (f: number): number => terms(f).reduce((sum, t, i) => sum + t * found[i]!, 0);
  return { at: fitted, worst: Math.max(...points.map((p) => Math.abs(fitted(p.frequency) / p.decibelsPerMetre - 1))) };
}

/** The one point without which the others agree; null where all agree, or no single one is to blame. */
export function oddPoint(points: readonly Numbered[]): SheetFinding | null {
  if (points.length < 4 || smoothFit(points).worst <= slack) return null;
  const tried = points.map((point) => {
    const fit = smoothFit(points.filter((other) => other !== point));
    return { point, worst: fit.worst, ratio: point.decibelsPerMetre / fit.at(point.frequency) };
  });
  const best = tried.reduce((a, b) => (b.worst < a.worst ? b : a));
  if (best.worst > slack || Math.abs(best.ratio - 1) <= 2 * slack) return null;
  const expected = best.point.decibelsPerMetre / best.ratio;
  const slip = slipOf(best.ratio, 0.25);
  return loss(
    best.point.index,
    `${at(best.point)} does not go with the other points, which ask for about ${perHundred(expected)} there.`,
    slip === null
      ? null
      : `It looks like a loss ${slipSays(slip)}: ${perHundred(best.point.decibelsPerMetre / slip.factor)}.`,
  );
}

interface Step {
  readonly from: Numbered;
  readonly to: Numbered;
  readonly steepness: number;
  /** What 5 % of both points make of it. */
  readonly doubt: number;
}

/** What neighbours say of each other; where they say nothing, whether any line could meet them all. */
export function closeness(points: readonly Numbered[]): SheetFinding[] {
  const found = neighbours(points);
  if (found.length > 0 || points.length < 3) return found;
  const fit = smoothFit(points);
  if (fit.worst <= slack) return [];
  const off = (p: Numbered): number => Math.abs(fit.at(p.frequency) / p.decibelsPerMetre - 1);
  const farthest = points.reduce((a, b) => (off(b) > off(a) ? b : a));
  const says = `No line's conductors and insulation meet these losses closer than ${significantNumber(100 * fit.worst, 2)} %; farthest off is ${at(farthest)}, where they ask for about ${perHundred(fit.at(farthest.frequency))}.`;
  return [loss(farthest.index, says)];
}

function neighbours(points: readonly Numbered[]): SheetFinding[] {
  const steps: Step[] = points.slice(1).map((to, i) => {
    const from = points[i]!;
    const octaves = Math.log(to.frequency / from.frequency);
    const steepness = Math.log(to.decibelsPerMetre / from.decibelsPerMetre) / octaves;
    return { from, to, steepness, doubt: (2 * slack) / octaves };
  });
  return steps.flatMap((step, i) => stepFinding(step, steps.slice(0, i)));
}

function stepFinding({ from, to, steepness, doubt }: Step, before: readonly Step[]): SheetFinding[] {
  const span = `From ${withPrefix(from.frequency, "Hz")} to ${withPrefix(to.frequency, "Hz")}`;
  if (to.frequency === from.frequency) {
    return from.decibelsPerMetre === to.decibelsPerMetre
      ? []
      : [loss(to.index, `Two losses stand at ${withPrefix(to.frequency, "Hz")}: ${at(from)} and ${at(to)}.`)];
  }
  if (to.decibelsPerMetre < from.decibelsPerMetre) {
    const says = `${span} the loss falls from ${perHundred(from.decibelsPerMetre)} to ${perHundred(to.decibelsPerMetre)}: no line takes less at a higher frequency.`;
    return [loss(to.index, says, "See whether two points have changed places.")];
  }
  const power = significantNumber(steepness, 2);
  if (steepness > 1 + doubt) {
    return [
      loss(
        to.index,
        `${span} the loss rises as the power ${power} of frequency; conductors rise with its root, insulation with frequency itself, and nothing faster.`,
      ),
    ];
  }
  const steepest = before.reduce<Step | null>(
    (a, b) => (a === null || b.steepness - b.doubt > a.steepness - a.doubt ? b : a),
    null,
  );
  if (steepest === null || steepness + doubt >= Math.min(steepest.steepness - steepest.doubt, 1)) return [];
  return [
    loss(
      to.index,
      `${span} the loss rises only as the power ${power} of frequency, below it already as the power ${significantNumber(steepest.steepness, 2)}: a line's loss never grows less steep.`,
    ),
  ];
}
