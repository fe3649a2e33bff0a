/** An antenna and its soil in a few words. English. */
import { metres, plainNumber, significantNumber } from "../quantity/format";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { Ground } from "../station/station";
import { quantityText } from "./parts";

export function saysOfAntenna(antenna: Antenna): string {
  return antenna.shapes.map(({ shape }) => saysOfShape(shape)).join(" and ");
}

function saysOfShape(shape: Shape): string {
  switch (shape.kind) {
    case "dipole":
    case "folded dipole":
    case "inverted vee":
      return `${shape.kind}, ${quantityText(shape.length, "m")}`;
    case "off-centre dipole":
      return `off-centre dipole, ${quantityText(shape.legs[0], "m")} and ${quantityText(shape.legs[1], "m")}`;
    case "vertical":
      return `vertical, ${metres(shape.sections.reduce((sum, s) => sum + s.length.value, 0))}`;
    case "beam":
      return `beam of ${shape.elements.length} elements`;
    case "loop":
      return `loop of ${shape.corners.length} corners`;
    case "wires":
      return shape.wires.length === 1 ? "one wire" : `${shape.wires.length} wires`;
    default:
      return shape.kind;
  }
}

export function saysOfSoil(ground: Ground): string {
  switch (ground.kind) {
    case "free space":
      return "no ground near by";
    case "perfect":
      return "a perfect conductor";
    case "soil": {
      const constants = `${significantNumber(ground.permittivity.value, 3)}, ${significantNumber(ground.conductivity.value * 1000, 3)} mS/m`;
      return ground.permittivity.basis === "unknown" ? `soil not known, ${constants} taken` : `soil ${constants}`;
    }
    case "layers":
      return `${plainNumber(ground.layers.length, 0)} layers of soil`;
  }
}
