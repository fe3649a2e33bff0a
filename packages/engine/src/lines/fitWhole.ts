/** The losses of a sheet against what a line of its size must take, and against what any line takes. */
import { significantNumber, withPrefix } from "../quantity/format";
import { at, loss, type Numbered, perHundred, type SheetFacts, type SheetFinding, type SheetPoint } from "./fitFinding";
import { anyAttenuation, insulationAttenuation, leastAttenuation, type SizedLine } from "./fitSize";
import { type LengthSlip, slipOf, slipSays } from "./fitSlips";

/** Ratios to the least loss of the size within which lines are made: below, copper is not good enough; above, braid and strands not bad enough. */
const usual = { least: 0.75, most: 3.2, typical: 1.4 };

export function wholeSheet(points: readonly Numbered[], facts: SheetFacts): SheetFinding[] {
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
