/** Tells a pair of wires from a coaxial line. */
import type { Part } from "./path";

/** True for a line of two equal conductors, which wants a balanced joint. */
export const isPair = (part: Part): boolean =>
  part.kind === "line" &&
  (part.line.model.kind === "parallel-wire" ||
    (part.line.model.kind === "data sheet" && part.line.model.side === "balanced"));
