/** The route by the data sheet: what its points are fitted to, and what is wrong with them. */
import type { LossFit } from "../../lines/dataSheetLine";
import { fitLoss } from "../../lines/dataSheetLine";
import { examineDataSheet, impliedImpedance, type SheetFacts, type SheetFinding } from "../../lines/fitFindings";
import { leastAttenuation } from "../../lines/fitSize";
import { decibelsPerNeper, lineConstants } from "../../lines/lineConstants";
import type { DataSheetLine, LineEntry } from "../../lines/lineModel";

export interface FittedPoint {
  /** Hz; dB/m. */
  readonly frequency: number;
  readonly listed: number;
  readonly fitted: number;
}

export interface SheetRoute {
  readonly line: DataSheetLine;
  readonly fit: LossFit;
  readonly points: readonly FittedPoint[];
  readonly findings: readonly SheetFinding[];
  readonly facts: SheetFacts;
  /** Fitted resistance over that of smooth solid copper of this size, in the limit of small skin depth; null without a size. */
  readonly surfaceFactor: number | null;
  /** Ohm, from velocity factor and capacitance; null without the second. */
  readonly impliedImpedance: number | null;
}

/** Null for a line that is known by its build alone. */
export function sheetRoute(entry: LineEntry): SheetRoute | null {
  if (entry.model.kind !== "data sheet") return null;
  const line = withDirectResistance(entry.model, entry);
  const facts = factsOf(line, entry);
  const fit = fitLoss(line);
  const listed = line.loss.map((p) => ({ frequency: p.frequency, decibelsPerMetre: p.decibelsPerMetre.value }));
  const { impedance, velocityFactor, outerSize, capacitance } = facts;
  return {
    line,
    fit,
    points: listed
      .map((p) => ({
        frequency: p.frequency,
        listed: p.decibelsPerMetre,
        fitted: lineConstants(line, p.frequency).gamma.re * decibelsPerNeper,
      }))
      .sort((a, b) => a.frequency - b.frequency),
    findings: examineDataSheet(listed, facts),
    facts,
    surfaceFactor:
      impedance === undefined || velocityFactor === undefined || outerSize === undefined
        ? null
        : (fit.rootResistance * decibelsPerNeper) /
          (2 * impedance * leastAttenuation({ impedance, velocityFactor, outerSize }, 1)),
    impliedImpedance:
      velocityFactor === undefined || capacitance === undefined ? null : impliedImpedance(velocityFactor, capacitance),
  };
}

/** The sheet's own resistance at direct current, where the entry lists it apart from the model. */
function withDirectResistance(line: DataSheetLine, entry: LineEntry): DataSheetLine {
  const loopResistance = line.loopResistance ?? entry.ratings?.loopResistance;
  return loopResistance === undefined || loopResistance === line.loopResistance ? line : { ...line, loopResistance };
}

const factsOf = (line: DataSheetLine, { build, ratings }: LineEntry): SheetFacts => ({
  impedance: line.impedance.value,
  velocityFactor: line.velocityFactor.value,
  capacitance: ratings?.capacitance?.value,
  loopResistance: line.loopResistance?.value,
  outerSize: build?.kind === "coaxial" ? 2 * build.outer.innerRadius : undefined,
});
