/** What a line without a name is called: what it is made of. */
import type { BuiltLine, LineModel } from "@feedpath/engine";
import { formatAmount, formatQuantity } from "../units/formatQuantity";
import { overallDiameter } from "./lineConductors";

const across = (diameter: number): string => formatAmount(Number(diameter.toPrecision(6)), "length");

export function designationOf(model: LineModel): string {
  if (model.kind === "data sheet") return `${formatQuantity(model.impedance, "impedance")} line`;
  if (model.kind === "coaxial")
    return `coaxial line ${across(overallDiameter(model.inner))} in ${across(2 * model.outer.innerRadius)}`;
  return ofWires(model);
}

function ofWires(model: Exclude<BuiltLine, { kind: "coaxial" }>): string {
  const metal = model.wire.layers.at(-1)?.metal.name ?? "";
  const wire = `${across(overallDiameter(model.wire))} ${metal}`;
  switch (model.kind) {
    case "parallel-wire":
      return `pair of ${wire} ${formatQuantity(model.spacing, "length")} apart`;
    case "twisted pair":
      return `twisted pair of ${wire}`;
    case "wire over plane":
      return `${wire} ${formatQuantity(model.height, "length")} over a plane`;
    case "four-wire":
      return `four wires of ${wire} in a square of ${formatQuantity(model.side, "length")}`;
    case "shielded pair":
      return `shielded pair of ${wire} ${formatQuantity(model.spacing, "length")} apart`;
  }
}

/** What the file says of it, for its sources. */
export function whatOf({ kind }: LineModel): string {
  if (kind === "data sheet") return "impedance, velocity factor, loss";
  if (kind === "coaxial" || kind === "shielded pair") return "dimensions and dielectric";
  return kind === "parallel-wire" ? "wire and spacing" : "wires and their places";
}
