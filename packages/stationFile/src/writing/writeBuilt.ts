/** Lines by their build as texts. */
import type { BuiltLine, Dielectric } from "@feedpath/engine";
import { formatAmount, formatQuantity } from "../units/formatQuantity";
import { writeDielectric } from "./writeDielectric";
import { writeOuter, writeRound } from "./writeLineConductor";
import { type Branch, type Leaf, present, type Writing } from "./writing";

/** What lies around wires; air is not written. */
const around = (dielectric: Dielectric): Leaf =>
  dielectric.name === "air" && dielectric.permittivity === 1 ? undefined : writeDielectric(dielectric);

/** `place` is that of the line in the station. */
export function writeBuilt(writing: Writing, model: BuiltLine, place: string): Branch {
  switch (model.kind) {
    case "coaxial":
      return {
        inner: writeRound(model.inner, null),
        outer: writeOuter(model.outer),
        dielectric: writeDielectric(model.dielectric),
      };
    case "parallel-wire":
      return writePair(model);
    case "twisted pair":
      return { "twisted pair": writeRound(model.wire, model.sleeve), turn: formatAmount(model.turn, "length") };
    case "wire over plane":
      return {
        "wire over plane": writeRound(model.wire, null),
        height: formatQuantity(model.height, "length"),
        plane: writing.given(`${place}.model.plane`, model.plane.name),
        dielectric: around(model.dielectric),
      };
    case "four-wire":
      return {
        "four wires": writeRound(model.wire, null),
        square: formatQuantity(model.side, "length"),
        joined: writing.given(`${place}.model.joined`, model.joined),
        dielectric: around(model.dielectric),
      };
    case "shielded pair":
      return {
        "shielded pair": writeRound(model.wire, null),
        spacing: formatQuantity(model.spacing, "length"),
        outer: writeOuter(model.outer),
        dielectric: writeDielectric(model.dielectric),
      };
  }
}

function writePair({ wire, spacing, insulation, dielectric }: Extract<BuiltLine, { kind: "parallel-wire" }>): Branch {
  const web = insulation?.form === "web" ? insulation : null;
  const filled = web && web.filled !== 1 ? formatAmount(web.filled, "ratio") : undefined;
  return {
    wire: writeRound(wire, insulation ?? null),
    spacing: formatQuantity(spacing, "length"),
    web: web ? present({ thickness: formatAmount(web.thickness, "length"), filled }) : undefined,
    dielectric: around(dielectric),
  };
}
