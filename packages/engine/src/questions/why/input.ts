/** What is studied: the parameters, else the station's own line, else usual values that are listed as assumptions. */
import type { Answer } from "../../answer/answer";
import { type CableDielectric, cableDielectric, cableDielectrics, cableMetals } from "../../lines/cableMaterials";
import type { CoaxialLine, Dielectric, LineEntry, Metal } from "../../lines/lineModel";
import { ratioOfImpedance } from "../../lines/study/coaxialRatios";
import { amountOf, type Held, type StudyInput, type Stuff } from "../../lines/study/studyPoint";
import type { Path } from "../../station/path";
import type { Station } from "../../station/station";
import type { Parameters } from "../common/question";
import { densityOfMetal, studyMetals } from "./materials";
import { sizeRange, usualPriceRatio, usualWall } from "./parameters";

export interface WhyInput {
  readonly study: StudyInput;
  /** The line whose build was taken; null when the file has none, or a pair is asked about. */
  readonly line: { readonly designation: string; readonly build: CoaxialLine } | null;
  readonly assumed: Answer["assumptions"];
  readonly dielectricSource: string;
  readonly breakdownSource: string;
  /** What a cubic metre weighs; null where a material's density is not known. */
  readonly densities: Stuff | null;
}

/** Insulation of a study, with where its numbers come from. */
type Studied = Dielectric & Pick<CableDielectric, "breakdown" | "source" | "breakdownSource">;

export interface NoInput {
  readonly refused: string;
  readonly mend: string;
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
export function whyInput(station: Station, parameters: Parameters, frequency: number): WhyInput | NoInput {
  const shape = parameters.shape === "pair" ? "pair" : "coaxial";
  const line = shape === "pair" ? null : firstCoaxialBuild(station.path);
  const material = dielectricOf(parameters, shape, line?.build ?? null);
  if ("refused" in material) return material;
  const size = sizeOf(parameters, shape, line?.build ?? null);
  if (!(size >= sizeRange.least && size <= sizeRange.most)) {
    return { refused: `an outer size of ${size * 1e3} mm is outside what is studied`, mend: "0.5 mm to 300 mm" };
  }
  const inner = metalOf(parameters.inner, line?.build.inner.layers.at(-1)?.metal);
  const outer = metalOf(parameters.outer, line?.build.outer.metal);
  if (!Number.isFinite(inner.conductivity) || !Number.isFinite(outer.conductivity)) {
    return { refused: "a line of perfect conductors has no least loss", mend: "conductors of a real metal" };
  }
  const { breakdown, source, breakdownSource, ...dielectric } = material;
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
      ...assumedInsulation(parameters, material.name),
      ...assumedAmounts(parameters, held),
    ],
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

/** A dielectric this program has no breakdown field for is taken to fail like air, which is the least of all. */
function dielectricOf(
  parameters: Parameters,
  shape: StudyInput["shape"],
  build: CoaxialLine | null,
): Studied | NoInput {
  const asked = parameters.dielectric;
  const usual = shape === "pair" ? "air" : "polyethylene";
  const known = cableDielectric(String(asked ?? build?.dielectric.name ?? usual));
  if (asked !== undefined && known === null) {
    return {
      refused: `"${String(asked)}" is no insulation this question knows`,
      mend: `one of: ${cableDielectrics.map((d) => d.name).join(", ")}`,
    };
  }
  const air = cableDielectric("air")!;
  const taken: Studied =
    asked !== undefined || build === null
      ? known!
      : {
          ...build.dielectric,
          breakdown: known?.breakdown ?? air.breakdown,
          source: "the line of the station",
          breakdownSource: known?.breakdownSource ?? `not known for ${build.dielectric.name}: that of air is taken`,
        };
  const { permittivity } = parameters;
  return typeof permittivity === "number"
    ? { ...taken, name: `${taken.name} of permittivity ${permittivity}`, permittivity, source: "as asked" }
    : taken;
}

function densitiesOf(inner: Metal, outer: Metal, dielectric: Dielectric, parameters: Parameters): Stuff | null {
  const plain = dielectric.name.replace(/ of permittivity .*$/, "");
  const [a, b, c] = [densityOfMetal(inner.name), densityOfMetal(outer.name), cableDielectric(plain)?.density];
  if (a === null || b === null || c === undefined) return null;
  return { inner: a, outer: b, dielectric: c, wall: typeof parameters.wall === "number" ? parameters.wall : usualWall };
}

/** Weight and cost are held at those of the 50-ohm line of the size asked. */
function heldOf(
  { held, priceRatio }: Parameters,
  shape: StudyInput["shape"],
  size: number,
  permittivity: number,
  densities: Stuff | null,
): Held | NoInput {
  if (held !== "weight" && held !== "cost") return { by: "size", size };
  if (shape === "pair") {
    return {
      refused:
        "a pair of one weight keeps its wires, and then wider is better in loss, voltage and power alike; what ends that is radiation, wind and room",
      mend: "the study with the spacing held: leave `held` out",
    };
  }
  if (densities === null) {
    return {
      refused: "the density of this insulation or metal is not known here",
      mend: "another insulation or metal",
    };
  }
  const price = typeof priceRatio === "number" ? priceRatio : usualPriceRatio;
  const stuff =
    held === "weight" ? densities : { ...densities, inner: price * densities.inner, outer: price * densities.outer };
  const inner = size / ratioOfImpedance(50, permittivity);
  return { by: held, perMetre: amountOf(shape, stuff, inner, size), stuff };
}

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

/** A permittivity by itself says nothing of loss, breakdown and weight: they stay those of the material. */
function assumedInsulation({ permittivity }: Parameters, name: string): Answer["assumptions"] {
  if (typeof permittivity !== "number") return [];
  const material = name.replace(/ of permittivity .*$/, "");
  const own = cableDielectric(material)?.permittivity ?? permittivity;
  const foam = permittivity < own ? "; a foam fails at a far lower voltage" : "";
  return [
    {
      name: "loss, breakdown field and weight of the insulation",
      value: `as ${material}`,
      reason: `only the permittivity was asked otherwise${foam}`,
      place: "",
    },
  ];
}

function assumedAmounts(parameters: Parameters, held: Held): Answer["assumptions"] {
  if (held.by === "size") return [];
  const wall = parameters.wall === undefined;
  return [
    ...(wall
      ? [{ name: "wall of the outer conductor", value: "0.2 mm", reason: "about what a braid weighs", place: "" }]
      : []),
    ...(held.by === "cost" && parameters.priceRatio === undefined
      ? [
          {
            name: "price of a kilogram of metal over one of insulation",
            value: `${usualPriceRatio}`,
            reason: "prices change; common practice, no source",
            place: "",
          },
        ]
      : []),
  ];
}
