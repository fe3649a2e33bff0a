/** A reel without marking: lines of the catalogue that measure alike. */
import type { Table } from "../../answer/answer";
import { outerRadius } from "../../conductors/roundConductor";
import { decibelsPerNeper, lineConstants } from "../../lines/lineConstants";
import type { CoaxialLine, LineEntry } from "../../lines/lineModel";

export interface SimilarLine {
  readonly designation: string;
  /** m: over the inner conductor and over the insulation, by the catalogue. */
  readonly inner: number;
  readonly outer: number;
  readonly velocityFactor: number;
  /** dB/m at the frequency asked. */
  readonly attenuation: number;
  /** Root mean square of the relative differences of these three from the line asked for. */
  readonly difference: number;
}

interface Measures {
  readonly inner: number;
  readonly outer: number;
  readonly velocityFactor: number;
}

/** As a caliper and a sweep have them. Differences of a tenth are those of another line: our rule. */
const most = 0.1;
const mostTold = 5;
/** Hz at which the velocity factors are compared: skin effect no longer slows the wave. */
const compared = 100e6;

const measuresOf = (build: CoaxialLine, model: LineEntry["model"]): Measures => ({
  inner: 2 * outerRadius(build.inner),
  outer: 2 * build.outer.innerRadius,
  velocityFactor: lineConstants(model, compared).velocityFactor,
});

/** Nearest first; none for a line that has a data sheet, whose name is known. `frequency` in Hz. */
export function similarLines(entry: LineEntry, catalogue: readonly LineEntry[], frequency: number): SimilarLine[] {
  const own = entry.build ?? entry.model;
  if (entry.model.kind === "data sheet" || own.kind !== "coaxial") return [];
  const wanted = measuresOf(own, entry.model);
  const found = catalogue.flatMap((candidate): SimilarLine[] => {
    const build = candidate.build ?? candidate.model;
    if (build.kind !== "coaxial" || candidate.designation === entry.designation) return [];
    const measures = measuresOf(build, candidate.model);
    const off = (["inner", "outer", "velocityFactor"] as const).map((key) => Math.log(measures[key] / wanted[key]));
    const difference = Math.hypot(...off) / Math.sqrt(off.length);
    if (difference > most) return [];
    const attenuation = lineConstants(candidate.model, frequency).gamma.re * decibelsPerNeper;
    return [{ designation: candidate.designation, ...measures, attenuation, difference }];
  });
  return found.sort((a, b) => a.difference - b.difference).slice(0, mostTold);
}

export const similarTable = (lines: readonly SimilarLine[]): Table => ({
  name: "similarLines",
  axis: "rank",
  labels: lines.map((line) => line.designation),
  columns: {
    rank: { unit: "1", values: lines.map((_, i) => i + 1) },
    overInner: { unit: "mm", values: lines.map((line) => 1e3 * line.inner) },
    overInsulation: { unit: "mm", values: lines.map((line) => 1e3 * line.outer) },
    velocityFactor: { unit: "1", values: lines.map((line) => line.velocityFactor) },
    attenuation: { unit: "dB/100 m", values: lines.map((line) => 100 * line.attenuation) },
    difference: { unit: "%", values: lines.map((line) => 100 * line.difference) },
  },
});
