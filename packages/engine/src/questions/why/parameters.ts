/** What `why` is asked with, and what it takes from the station when something is not said. */
import { type CableDielectric, cableDielectric, cableDielectrics, cableMetals } from "../../lines/cableMaterials";
import type { StudyInput } from "../../lines/impedanceStudy";
import type { CoaxialLine, LineEntry } from "../../lines/lineModel";
import type { Path } from "../../station/path";
import type { Station } from "../../station/station";
import type { ParameterDefinition, Parameters } from "../common/question";

const sizeRange = { least: 0.5e-3, most: 0.3 };

export const whyParameters: readonly ParameterDefinition[] = [
  {
    name: "dielectric",
    title: "insulation",
    dimension: "word",
    words: cableDielectrics.map((d) => d.name),
    least: 0,
    most: 0,
    otherwise: "that of the first coaxial line in the path, else solid polyethylene",
  },
  {
    name: "outerSize",
    title: "inner diameter of the outer conductor",
    dimension: "length",
    words: [],
    ...sizeRange,
    otherwise: "that of the first coaxial line in the path, else 7.24 mm",
  },
];

export interface WhyInput {
  readonly study: StudyInput;
  /** The line whose build was taken; null when the file has none. */
  readonly line: { readonly designation: string; readonly build: CoaxialLine } | null;
  readonly assumed: readonly {
    readonly name: string;
    readonly value: string;
    readonly reason: string;
    readonly place: string;
  }[];
  readonly dielectricSource: string;
  readonly breakdownSource: string;
}

/** First line of the path, in reading order and through its branches, whose build as a coaxial line is known. */
export function firstCoaxialBuild(path: Path): WhyInput["line"] {
  for (const part of path.parts) {
    if (part.kind !== "line") continue;
    const build = buildOf(part.line);
    if (build) return { designation: part.line.designation, build };
  }
  const { end } = path;
  const branches = end.kind === "switch" ? end.positions : "branches" in end ? end.branches : {};
  for (const branch of Object.values(branches)) {
    const found = firstCoaxialBuild(branch);
    if (found) return found;
  }
  return null;
}

function buildOf(line: LineEntry): CoaxialLine | null {
  if (line.build?.kind === "coaxial") return line.build;
  return line.model.kind === "coaxial" ? line.model : null;
}

/** The study, or why there is none. `frequency` in Hz. */
export function whyInput(
  station: Station,
  parameters: Parameters,
  frequency: number,
): WhyInput | { readonly refused: string; readonly mend: string } {
  const line = firstCoaxialBuild(station.path);
  const asked = parameters.dielectric;
  if (asked !== undefined && cableDielectric(String(asked)) === null) {
    const words = cableDielectrics.map((d) => d.name).join(", ");
    return { refused: `"${String(asked)}" is no insulation this question knows`, mend: `one of: ${words}` };
  }
  const dielectric = chosenDielectric(asked === undefined ? null : String(asked), line?.build ?? null);
  const size = sizeOf(parameters.outerSize, line?.build ?? null);
  if (!(size >= sizeRange.least && size <= sizeRange.most)) {
    return { refused: `an outer size of ${size * 1e3} mm is outside what is studied`, mend: "0.5 mm to 300 mm" };
  }
  const inner = line?.build.inner.layers.at(-1)?.metal ?? cableMetals.copper;
  const outer = line?.build.outer.metal ?? cableMetals.copper;
  if (!Number.isFinite(inner.conductivity) || !Number.isFinite(outer.conductivity)) {
    return { refused: "a line of perfect conductors has no least loss", mend: "conductors of a real metal" };
  }
  const { breakdown, source, breakdownSource, ...material } = dielectric;
  return {
    study: { dielectric: material, breakdown, inner, outer, outerSize: size, frequency },
    line,
    assumed: line ? [] : assumedLine(parameters),
    dielectricSource: source,
    breakdownSource,
  };
}

const sizeOf = (asked: Parameters[string] | undefined, build: CoaxialLine | null): number =>
  typeof asked === "number" ? asked : build ? 2 * build.outer.innerRadius : 7.24e-3;

/** A dielectric this program has no breakdown field for is taken to fail like air, which is the least of all. */
function chosenDielectric(asked: string | null, build: CoaxialLine | null): CableDielectric {
  const known = cableDielectric(asked ?? build?.dielectric.name ?? "polyethylene");
  if (asked !== null || build === null) return known as CableDielectric;
  const air = cableDielectric("air") as CableDielectric;
  return {
    ...build.dielectric,
    breakdown: known?.breakdown ?? air.breakdown,
    source: "the line of the station",
    breakdownSource: known?.breakdownSource ?? `not known for ${build.dielectric.name}: that of air is taken`,
  };
}

function assumedLine(parameters: Parameters): WhyInput["assumed"] {
  const reason = "the file has no coaxial line whose build is known";
  const place = "path";
  const entries = [
    { name: "metal of the conductors", value: "copper", reason, place },
    { name: "insulation", value: "polyethylene", reason, place, parameter: "dielectric" },
    { name: "outer size", value: "7.24 mm", reason, place, parameter: "outerSize" },
  ];
  return entries.flatMap(({ parameter, ...entry }) =>
    parameter !== undefined && parameters[parameter] !== undefined ? [] : [entry],
  );
}
