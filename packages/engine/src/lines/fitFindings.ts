/** Data-sheet points that physics cannot give, and the slip of the pen that may stand behind them. */
import { nonNegativeLeastSquares } from "../numerics/nonNegativeLeastSquares";
import { speedOfLight } from "../numerics/vacuum";
import { significantNumber, withPrefix } from "../quantity/format";
import { anyAttenuation, insulationAttenuation, leastAttenuation, type SizedLine } from "./fitSize";
import { type LengthSlip, slipOf, slipSays } from "./fitSlips";

export interface SheetPoint {
  /** Hz. */
  readonly frequency: number;
  readonly decibelsPerMetre: number;
}

/** What else the sheet says; left out where it does not. SI units. */
export interface SheetFacts {
  readonly impedance?: number | undefined;
  readonly velocityFactor?: number | undefined;
  readonly capacitance?: number | undefined;
  /** Ohm/m at direct current, both ways together. */
  readonly loopResistance?: number | undefined;
  /** m over the insulation, which is the inside of a coaxial line's outer conductor. */
  readonly outerSize?: number | undefined;
}

export interface SheetFinding {
  readonly about: "loss" | "velocity factor" | "capacitance" | "loop resistance";
  /** Which of the points, counted from 0 in the order given; null where it is all of them or none. */
  readonly point: number | null;
  /** A sentence. */
  readonly says: string;
  /** What to try, a sentence; null where nothing suggests itself. */
  readonly suggestion: string | null;
}

/** How far one point may lie off: the measure of a consistent sheet. */
const slack = 0.05;

const perHundred = (decibelsPerMetre: number): string => `${significantNumber(100 * decibelsPerMetre, 3)} dB/100 m`;
const at = (point: SheetPoint): string =>
  `${perHundred(point.decibelsPerMetre)} at ${withPrefix(point.frequency, "Hz")}`;

interface Numbered extends SheetPoint {
  readonly index: number;
}

/**
 * What is wrong with a data sheet; empty where a physical line could give all of it. Points in any order. Conductors and
 * insulation make a loss a sqrt(f) + b f + c with none of the three negative: it never falls, never rises faster than f,
 * and its steepness (on logarithmic scales) never lessens. Each point is granted 5 %.
 */
export function examineDataSheet(points: readonly SheetPoint[], facts: SheetFacts = {}): SheetFinding[] {
  const numbered = points.map((point, index) => ({ ...point, index }));
  const usable = numbered.filter((p) => p.frequency > 0 && p.decibelsPerMetre > 0);
  const sorted = usable.sort((a, b) => a.frequency - b.frequency);
  const odd = oddPoint(sorted);
  const rest = odd === null ? sorted : sorted.filter((p) => p.index !== odd.point);
  return [
    ...numbered.flatMap(impossible),
    ...(odd === null ? [] : [odd]),
    ...closeness(rest),
    ...wholeSheet(rest, facts),
    ...velocity(facts),
    ...capacity(facts),
    ...resistance(rest, facts),
  ];
}

const loss = (point: number | null, says: string, suggestion: string | null = null): SheetFinding => ({
  about: "loss",
  point,
  says,
  suggestion,
});

function impossible({ frequency, decibelsPerMetre, index }: Numbered): SheetFinding[] {
  if (!(frequency > 0)) return [loss(index, "A loss stands at no frequency above zero.")];
  if (decibelsPerMetre > 0) return [];
  const place = `At ${withPrefix(frequency, "Hz")} the loss is ${significantNumber(100 * decibelsPerMetre, 3)} dB/100 m: a line without power of its own takes some.`;
  return [loss(index, place, decibelsPerMetre < 0 ? "Write losses as positive decibels." : null)];
}

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
function oddPoint(points: readonly Numbered[]): SheetFinding | null {
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
function closeness(points: readonly Numbered[]): SheetFinding[] {
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

/** Ratios to the least loss of the size within which lines are made: below, copper is not good enough; above, braid and strands not bad enough. */
const usual = { least: 0.75, most: 3.2, typical: 1.4 };

function wholeSheet(points: readonly Numbered[], facts: SheetFacts): SheetFinding[] {
  if (points.length === 0) return [];
  const { impedance, velocityFactor = 0.66, outerSize } = facts;
  const sized =
    impedance !== undefined &&
    outerSize !== undefined &&
    impedance > 0 &&
    outerSize > 0 &&
    velocityFactor > 0.2 &&
    velocityFactor <= 1;
  return sized ? sizedSheet(points, { impedance, velocityFactor, outerSize }) : unsizedSheet(points, velocityFactor);
}

/** The middle one of some numbers: a slip of one point does not move it. */
const middleOf = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!;

function sizedSheet(points: readonly Numbered[], line: SizedLine): SheetFinding[] {
  const least = (f: number): number => leastAttenuation(line, f);
  const much = (f: number): number => least(f) + insulationAttenuation(line.velocityFactor, 1e-3, f);
  const overLeast = middleOf(points.map((p) => p.decibelsPerMetre / least(p.frequency)));
  const overMuch = middleOf(points.map((p) => p.decibelsPerMetre / much(p.frequency)));
  if (overLeast >= usual.least && overMuch <= usual.most) return [];
  const first = points[0]!;
  const size = `smooth solid copper of this size and impedance (${significantNumber(1000 * line.outerSize, 3)} mm over the insulation) takes`;
  const says =
    overLeast < usual.least
      ? `${at(first)} is less than ${size}: ${perHundred(least(first.frequency))}.`
      : `${at(first)} is ${significantNumber(first.decibelsPerMetre / least(first.frequency), 2)} times what ${size}; strands, braid and insulation make it up to about ${usual.most} times.`;
  const slip = slipOf((overLeast < usual.least ? overLeast : overMuch) / usual.typical, 0.6);
  return [
    loss(null, says, slip === null ? "Check the losses, the impedance and the size." : slipSuggestion(first, slip)),
  ];
}

const slipSuggestion = (first: SheetPoint, slip: LengthSlip): string =>
  `The losses look ${slipSays(slip)}: then it is ${perHundred(first.decibelsPerMetre / slip.factor)} at ${withPrefix(first.frequency, "Hz")}.`;

function unsizedSheet(points: readonly Numbered[], velocityFactor: number): SheetFinding[] {
  const middle = points[Math.floor(points.length / 2)]!;
  const { least, most } = anyAttenuation(middle.frequency, velocityFactor);
  const value = middle.decibelsPerMetre;
  if (value >= least && value <= most) return [];
  const [says, factor] =
    value > most
      ? [`${at(middle)} is more than a line of half a millimetre takes, about ${perHundred(most)}.`, 100]
      : [`${at(middle)} is less than a copper tube a hand wide takes, about ${perHundred(least)}.`, 1 / 100];
  return [loss(null, says, slipSuggestion(middle, slipOf(factor, 0.1)!))];
}

function velocity({ velocityFactor }: SheetFacts): SheetFinding[] {
  if (velocityFactor === undefined) return [];
  const finding = (says: string, suggestion: string | null): SheetFinding[] => [
    { about: "velocity factor", point: null, says, suggestion },
  ];
  const text = significantNumber(velocityFactor, 3);
  if (!(velocityFactor > 0)) return finding(`A velocity factor of ${text} is none: waves move.`, null);
  if (velocityFactor > 20 && velocityFactor <= 100) {
    return finding(
      `A velocity factor of ${text} is above 1, and nothing passes light.`,
      `Written in per cent? That is ${significantNumber(velocityFactor / 100, 3)}.`,
    );
  }
  if (velocityFactor > 1)
    return finding(
      `A velocity factor of ${text} is above 1, and nothing passes light.`,
      "Air-spaced lines reach 0.95 to 0.99.",
    );
  if (velocityFactor < 0.3) {
    return finding(
      `A velocity factor of ${text} asks for a permittivity of ${significantNumber(velocityFactor ** -2, 2)}; insulation of lines has 1 to 4.`,
      "Solid polyethylene gives 0.66, foam 0.8 to 0.88, air 0.95 and more.",
    );
  }
  return [];
}

/** Impedance (ohm) that a velocity factor and a capacitance (F/m) imply: 1/(v C). In US units 101670/(VP% C), C in pF/ft. */
export const impliedImpedance = (velocityFactor: number, capacitance: number): number =>
  1 / (velocityFactor * speedOfLight * capacitance);

/** Root of the sum of squares of what sheets grant: 4 % of impedance, 4 % of capacitance, 0.005 of the velocity factor. */
const capacitanceSlack = 0.06;

function capacity({ impedance, velocityFactor, capacitance }: SheetFacts): SheetFinding[] {
  if (capacitance === undefined) return [];
  const picofarads = `${significantNumber(1e12 * capacitance, 3)} pF/m`;
  const finding = (says: string, suggestion: string | null): SheetFinding[] => [
    { about: "capacitance", point: null, says, suggestion },
  ];
  if (!(capacitance > 0)) return finding(`A capacitance of ${picofarads} is none.`, null);
  if (impedance === undefined || velocityFactor === undefined || !(velocityFactor > 0 && velocityFactor <= 1))
    return [];
  const implied = impliedImpedance(velocityFactor, capacitance);
  if (Math.abs(implied / impedance - 1) <= capacitanceSlack) return [];
  const feet = 1 / 0.3048;
  const slip = [feet, 1 / feet].find((factor) => Math.abs(implied / factor / impedance - 1) <= capacitanceSlack);
  return finding(
    `${picofarads} and a velocity factor of ${significantNumber(velocityFactor, 3)} give ${significantNumber(implied, 3)} Ω, not ${significantNumber(impedance, 3)} Ω.`,
    slip === undefined
      ? "One of the three is off."
      : `It looks like a capacitance ${slip > 1 ? "meant per foot and read per metre" : "meant per metre and read per foot"}: ${significantNumber(1e12 * capacitance * slip, 3)} pF/m.`,
  );
}

function resistance(points: readonly Numbered[], { impedance, loopResistance }: SheetFacts): SheetFinding[] {
  const first = points[0];
  if (loopResistance === undefined || impedance === undefined || first === undefined) return [];
  const most = 2 * impedance * first.decibelsPerMetre * (Math.LN10 / 20) * (1 + slack);
  if (loopResistance <= most && loopResistance > 0) return [];
  return [
    {
      about: "loop resistance",
      point: null,
      says:
        loopResistance > 0
          ? `${withPrefix(loopResistance, "Ω/m", 3)} at direct current is more than the conductors show at ${withPrefix(first.frequency, "Hz")}, at most ${withPrefix(most, "Ω/m", 3)} from the loss there: skin effect only adds.`
          : "A loop resistance of nothing is that of no metal.",
      suggestion:
        loopResistance > 0 ? "See whether it is per kilometre or per 1000 ft, and of both conductors together." : null,
    },
  ];
}
