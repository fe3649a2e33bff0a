/** What lies between conductors: by its name, or by its constants. */
import type * as z from "zod";
import { kindEntry, textOr } from "./choice";
import { entry } from "./entry";
import { points } from "./spectrum";
import { name, quantity } from "./values";

const lossTangent = { least: 0, most: 1 };

/** Keys of every description of a dielectric. */
const every = { "greatest temperature": quantity("temperature").optional() };

const own = entry("A dielectric", {
  permittivity: quantity("number", { least: 1, most: 100 }),
  "loss tangent": textOr(quantity("number", lossTangent), points("number", lossTangent)),
  at: quantity("frequency", { above: 0 }).optional(),
  ...every,
});

const named = entry("A dielectric", { material: name, ...every });

export const dielectricValue = textOr(name, kindEntry("A dielectric", [own, named] as const));

export type FileDielectric = z.output<typeof dielectricValue>;
