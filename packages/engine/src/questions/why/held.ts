/** What stays the same while the impedance changes: size, weight or cost; and what was taken for them. */
import type { Answer } from "../../answer/answer";
import { cableDielectric } from "../../lines/cableMaterials";
import type { Metal } from "../../lines/lineModel";
import { ratioOfImpedance } from "../../lines/study/coaxialRatios";
import { amountOf, type Held, type StudyInput, type Stuff } from "../../lines/study/studyPoint";
import { withPrefix } from "../../quantity/format";
import type { Parameters } from "../common/question";
import { densityOfMetal } from "./materials";
import type { NoInput } from "./noInput";
import { usualPriceRatio, usualWall } from "./parameters";

/** Null where the density of a material is not known. */
export function densitiesOf(inner: Metal, outer: Metal, material: string, { wall }: Parameters): Stuff | null {
  const [a, b, c] = [densityOfMetal(inner.name), densityOfMetal(outer.name), cableDielectric(material)?.density];
  if (a === null || b === null || c === undefined) return null;
  return { inner: a, outer: b, dielectric: c, wall: typeof wall === "number" ? wall : usualWall };
}

/** Weight and cost are held at those of the 50-ohm line of the size asked. */
export function heldOf(
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

export function assumedAmounts(parameters: Parameters, held: Held): Answer["assumptions"] {
  if (held.by === "size") return [];
  const wall = parameters.wall === undefined;
  return [
    ...(wall
      ? [
          {
            name: "wall of the outer conductor",
            value: withPrefix(usualWall, "m"),
            reason: "about what a braid weighs",
            place: "",
          },
        ]
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
