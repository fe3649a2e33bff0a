/** Lengths and conductors as texts. */
import type { Conductor, Quantity } from "@feedpath/engine";
import { formatConductor, formatQuantity } from "../units/formatQuantity";
import { type Leaf, present } from "./writing";

export const length = (quantity: Quantity): string => formatQuantity(quantity, "length");

/** A conductor in one text where that says it all, else its long form. */
export function writeConductor(conductor: Conductor): Leaf {
  const text = formatConductor(conductor);
  if (text !== null) return text;
  const { diameter, material, form, wall, insulation } = conductor;
  const sleeve = insulation && {
    wall: length(insulation.wall),
    permittivity: formatQuantity(insulation.permittivity, "number"),
    "loss tangent": insulation.lossTangent && formatQuantity(insulation.lossTangent, "number"),
    material: insulation.material === "insulation" ? undefined : insulation.material,
  };
  return present({
    diameter: length(diameter),
    material,
    form,
    wall: wall && length(wall),
    insulation: sleeve ? present(sleeve) : undefined,
  });
}
