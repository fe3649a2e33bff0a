/** A line at the ends of what is known of its loss, or of the spacing of its wires. */
import type { DataSheetLine, LineModel } from "../../lines/lineModel";
import type { Part } from "../../station/path";

/** A part with the loss or the spacing its line states at one end of what is known of it. */
export const atEnd = (part: Part, end: "low" | "high"): Part =>
  part.kind === "line" ? { ...part, line: { ...part.line, model: modelAtEnd(part.line.model, end) } } : part;

/** A data sheet's losses are fitted once for each object: the moved ones are kept beside it. */
const moved = new WeakMap<DataSheetLine, Readonly<Record<"low" | "high", DataSheetLine>>>();

function modelAtEnd(model: LineModel, end: "low" | "high"): LineModel {
  if (model.kind === "parallel-wire") return { ...model, spacing: { ...model.spacing, value: model.spacing[end] } };
  if (model.kind !== "data sheet") return model;
  const known = moved.get(model) ?? { low: lossMoved(model, "low"), high: lossMoved(model, "high") };
  moved.set(model, known);
  return known[end];
}

const lossMoved = (model: DataSheetLine, end: "low" | "high"): DataSheetLine => ({
  ...model,
  loss: model.loss.map((p) => ({ ...p, decibelsPerMetre: { ...p.decibelsPerMetre, value: p.decibelsPerMetre[end] } })),
});
