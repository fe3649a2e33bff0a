/** Data-sheet points that physics cannot give, and the slip of the pen that may stand behind them. */
import { significantNumber, withPrefix } from "../quantity/format";
import { closeness, oddPoint } from "./fitCurve";
import { capacity, resistance, velocity } from "./fitFacts";
import { loss, type Numbered, type SheetFacts, type SheetFinding, type SheetPoint } from "./fitFinding";
import { wholeSheet } from "./fitWhole";

export { impliedImpedance } from "./fitFacts";
export type { SheetFacts, SheetFinding, SheetPoint } from "./fitFinding";

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

function impossible({ frequency, decibelsPerMetre, index }: Numbered): SheetFinding[] {
  if (!(frequency > 0)) return [loss(index, "A loss stands at no frequency above zero.")];
  if (decibelsPerMetre > 0) return [];
  const place = `At ${withPrefix(frequency, "Hz")} the loss is ${significantNumber(100 * decibelsPerMetre, 3)} dB/100 m: a line without power of its own takes some.`;
  return [loss(index, place, decibelsPerMetre < 0 ? "Write losses as positive decibels." : null)];
}
