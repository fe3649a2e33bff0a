/** What is studied: the parameters, else the station's own line, else usual values that are listed as assumptions. */
import type { Answer } from "../../answer/answer";
import { cableMetals } from "../../lines/cableMaterials";
import type { CoaxialLine, LineEntry, Metal } from "../../lines/lineModel";
import type { StudyInput, Stuff } from "../../lines/study/studyPoint";
import type { Path } from "../../station/path";
import type { Station } from "../../station/station";
import type { Parameters } from "../common/question";
import { assumedAmounts, densitiesOf, heldOf } from "./held";
import { assumedInsulation, insulationOf } from "./insulation";
import { studyMetals } from "./materials";
import type { NoInput } from "./noInput";
import { sizeRange } from "./parameters";

export interface WhyInput {
  readonly study: StudyInput;
  /** The line whose build was taken; null when the file has none, or a pair is asked about. */
  readonly line: { readonly designation: string; readonly build: CoaxialLine } | null;
  readonly assumed: Answer["assumptions"];
  /** Null where the permittivity is that of the insulation. */
  readonly askedPermittivity: number | null;
  readonly dielectricSource: string;
  readonly breakdownSource: string;
  /** What a cubic metre weighs; null where a material's density is not known. */
  readonly densities: Stuff | null;
}

/** First line of the path, in reading order and through its branches, whose build as a coaxial line is known. */
function firstCoaxialBuild(path: Path): WhyInput["line"] {
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
export function whyInput(station: Station, parameters: Parameters, frequency: number): WhyInput | NoInput {
  const shape = parameters.shape === "pair" ? "pair" : "coaxial";
  const line = shape === "pair" ? null : firstCoaxialBuild(station.path);
  const insulation = insulationOf(parameters, shape, line?.build ?? null);
  if ("refused" in insulation) return insulation;
  const size = sizeOf(parameters, shape, line?.build ?? null);
  if (!(size >= sizeRange.least && size <= sizeRange.most)) {
    return { refused: `an outer size of ${size * 1e3} mm is outside what is studied`, mend: "0.5 mm to 300 mm" };
  }
  const inner = metalOf(parameters.inner, line?.build.inner.layers.at(-1)?.metal);
  const outer = metalOf(parameters.outer, line?.build.outer.metal);
  if (!Number.isFinite(inner.conductivity) || !Number.isFinite(outer.conductivity)) {
    return { refused: "a line of perfect conductors has no least loss", mend: "conductors of a real metal" };
  }
  const { breakdown, source, breakdownSource, material, ...dielectric } = insulation;
  const densities = densitiesOf(inner, outer, material, parameters);
  const held = heldOf(parameters, shape, size, dielectric.permittivity, densities);
  if ("refused" in held) return held;
  const { temperature } = parameters;
  return {
    study: {
      shape,
      dielectric,
      breakdown,
      inner,
      outer,
      held,
      frequency,
      ...(typeof temperature === "number" ? { temperature } : {}),
    },
    line,
    assumed: [
      ...(line ? [] : assumedLine(parameters, shape)),
      ...assumedInsulation(parameters, material),
      ...assumedAmounts(parameters, held),
    ],
    askedPermittivity: typeof parameters.permittivity === "number" ? parameters.permittivity : null,
    dielectricSource: source,
    breakdownSource,
    densities,
  };
}

const usualSize = { coaxial: 7.24e-3, pair: 0.15 };

function sizeOf({ outerSize }: Parameters, shape: StudyInput["shape"], build: CoaxialLine | null): number {
  if (typeof outerSize === "number") return outerSize;
  return build ? 2 * build.outer.innerRadius : usualSize[shape];
}

const metalOf = (asked: Parameters[string] | undefined, own: Metal | undefined): Metal =>
  studyMetals.find(({ name }) => name === asked) ?? own ?? cableMetals.copper;

function assumedLine(parameters: Parameters, shape: StudyInput["shape"]): Answer["assumptions"] {
  const reason = shape === "pair" ? "a pair is studied by itself" : "the file has no coaxial line whose build is known";
  const entries = [
    { name: "metal of the conductors", value: "copper", parameter: "inner" },
    { name: "insulation", value: shape === "pair" ? "air" : "polyethylene", parameter: "dielectric" },
    {
      name: shape === "pair" ? "spacing" : "outer size",
      value: `${usualSize[shape] * 1e3} mm`,
      parameter: "outerSize",
    },
  ];
  return entries.flatMap(({ parameter, ...entry }) =>
    parameters[parameter] === undefined ? [{ ...entry, reason, place: "path" }] : [],
  );
}
