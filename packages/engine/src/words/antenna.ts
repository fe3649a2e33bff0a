/** An antenna and its soil in a few words. English. */
import { metres, significantNumber } from "../quantity/format";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { Ground, SoilConstant } from "../station/station";
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
    case "soil":
      return ground.permittivity.basis === "unknown"
        ? `soil not known, ${constantsSay(ground)} taken`
        : `soil ${constantsSay(ground)}`;
    case "layers": {
      if (ground.name !== undefined) return ground.name;
      const [top, next, more] = ground.layers;
      if (!top) return "soil";
      if (!next) return `soil ${constantsSay(top)}, by frequency`;
      const below = `below ${top.thickness ? metres(top.thickness.value) : "it"} ${constantsSay(next)}`;
      return `soil ${constantsSay(top)}, ${below}${more ? ", and more layers" : ""}`;
    }
  }
}

/** "13, 5 mS/m"; of values by frequency, "13 to 20, 5 mS/m". */
function constantsSay(soil: { readonly permittivity: SoilConstant; readonly conductivity: SoilConstant }): string {
  const span = (constant: SoilConstant, factor: number): string => {
    const values = "kind" in constant ? constant.points.map((p) => p.quantity.value) : [constant.value];
    const [low, high] = [Math.min(...values), Math.max(...values)].map((x) => significantNumber(x * factor, 3));
    return low === high ? low! : `${low} to ${high}`;
  };
  return `${span(soil.permittivity, 1)}, ${span(soil.conductivity, 1000)} mS/m`;
}
