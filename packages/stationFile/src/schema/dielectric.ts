/** What lies between conductors: by its name, or by its constants. */
import type * as z from "zod";
import { kindEntry, textOr } from "./choice";
import { entry } from "./entry";
import { points } from "./spectrum";
import { name, quantity, word } from "./values";

const lossTangent = { least: 0, most: 1 };

const share = { above: 0, most: 0.99 };

/** Keys of every description of a dielectric. */
const every = {
  water: quantity("ratio", { above: 0, most: 0.5 }).optional(),
  "water conductivity": quantity("conductivity", { most: 5 }).optional(),
  "greatest temperature": quantity("temperature").optional(),
};

const own = entry("A dielectric", {
  permittivity: quantity("number", { least: 1, most: 100 }),
  "loss tangent": textOr(quantity("number", lossTangent), points("number", lossTangent)),
  at: quantity("frequency", { above: 0 }).optional(),
  ...every,
});

const named = entry("A dielectric", { material: name, ...every });

const foam = entry("A foam", {
  foam: name,
  gas: quantity("ratio", share).optional(),
  velocity: quantity("ratio", { least: 0.3, most: 1 }).optional(),
  ...every,
});

const spacers = entry("Air with spacers", {
  spacers: word("discs", "cord", "beads"),
  of: name,
  filled: quantity("ratio", share),
  ...every,
});

export const dielectricValue = textOr(name, kindEntry("A dielectric", [own, foam, spacers, named] as const));

export type FileDielectric = z.output<typeof dielectricValue>;
