/** A line's value as texts. */
import type { LineEntry, LineModel } from "@feedpath/engine";
import { findLine } from "../catalogue/lines";
import { formatAmount, formatQuantity } from "../units/formatQuantity";
import { type Branch, type Leaf, present, type Writing } from "./writing";

/** A catalogue line by its name, an own line by what it is made of. */
export function writeLine(writing: Writing, line: LineEntry, place: string): Leaf {
  if (findLine(line.designation)) return line.designation;
  return writeModel(writing, line.model, place);
}

function writeModel(writing: Writing, model: LineModel, place: string): Branch {
  if (model.kind === "data sheet") {
    const loss = model.loss.map(({ frequency, decibelsPerMetre }) => [
      formatAmount(frequency, "frequency"),
      formatQuantity(decibelsPerMetre, "lossPerLength"),
    ]);
    return present({
      impedance: formatQuantity(model.impedance, "impedance"),
      velocity: formatQuantity(model.velocityFactor, "ratio"),
      loss: Object.fromEntries(loss),
      side: writing.given(`${place}.model.side`, model.side),
    });
  }
  if (model.kind === "parallel-wire") {
    const [layer] = model.wire.layers;
    return {
      wire: `${formatAmount((layer?.outerRadius ?? 0) * 2, "length")} ${layer?.metal.name ?? ""}`,
      spacing: formatQuantity(model.spacing, "length"),
    };
  }
  const { inner, outer, dielectric } = model;
  const [layer] = inner.layers;
  const own = { permittivity: String(dielectric.permittivity), "loss tangent": String(dielectric.lossTangent) };
  return {
    inner: `${formatAmount((layer?.outerRadius ?? 0) * 2, "length")} ${layer?.metal.name ?? ""}`,
    outer: `${formatAmount(outer.innerRadius * 2, "length")} ${outer.metal.name}`,
    dielectric: dielectric.name === "own" ? own : dielectric.name,
  };
}
