/** The outer conductor of a coaxial line: a smooth tube in one text, or how its shield is made. */
import type { Conductor } from "@feedpath/engine";
import type * as z from "zod";
import { parseConductor } from "../units/conductor";
import { textOr } from "./choice";
import { entry } from "./entry";
import { count, quantity, text, word } from "./values";
import { written } from "./written";

const thin = { least: 1e-7, most: 0.1 };
const metal = written<string>(text("a metal"), (value) => ({ ok: true, value }));

const braid = entry("A braid", {
  coverage: quantity("ratio", { above: 0 }).optional(),
  carriers: count(2, 1000).optional(),
  ends: count(1, 1000).optional(),
  wire: quantity("length", thin).optional(),
  angle: quantity("angle", { above: 0, most: (89 * Math.PI) / 180 }).optional(),
  lay: quantity("length", { above: 0, most: 10 }).optional(),
  layers: count(1, 2).optional(),
});

const foil = entry("A foil", { material: metal, thickness: quantity("length", thin) });

const corrugated = entry("A corrugation", {
  depth: quantity("length", thin),
  pitch: quantity("length", thin),
});

const shielded = entry("An outer conductor", {
  diameter: quantity("length", { above: 0, most: 3 }),
  material: metal.optional(),
  form: word("wire", "tube").optional(),
  wall: quantity("length", thin).optional(),
  braid: braid.optional(),
  foil: foil.optional(),
  corrugated: corrugated.optional(),
});

export const outerConductor = textOr(
  written<Conductor>(
    text("an outer conductor, 7.24 mm copper").meta({
      id: "outerConductor",
      description: "Its inner diameter and metal: 7.24 mm copper",
      examples: ["7.24 mm copper"],
    }),
    parseConductor,
  ),
  shielded,
);

export type FileOuter = z.output<typeof outerConductor>;
export type FileBraid = z.output<typeof braid>;
