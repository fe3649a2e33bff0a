/** Tells a pair of wires from a coaxial line. */
import type { LineModel } from "../lines/lineModel";
import type { Part } from "./path";

const pairs: readonly LineModel["kind"][] = ["parallel-wire", "twisted pair", "four-wire", "shielded pair"];

/** True for a line of two equal sides, which wants a balanced joint. */
export const isPair = (part: Part): boolean =>
  part.kind === "line" &&
  (pairs.includes(part.line.model.kind) ||
    (part.line.model.kind === "data sheet" && part.line.model.side === "balanced"));
