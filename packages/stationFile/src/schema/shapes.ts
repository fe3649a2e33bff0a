/** Shapes of antennas, and wires given one by one. */
import * as z from "zod";
import { faulty, type Parsed, parsed } from "../units/fault";
import { shown } from "../units/nearest";
import { conductor, longConductor } from "./conductors";
import { entry } from "./entry";
import { direction, place, places } from "./places";
import { count, name, quantity, span, word } from "./values";
import { written } from "./written";

export const length = quantity("length", { above: 0, most: 5000 });
const height = quantity("length", { least: 0, most: 5000 });
export const q = quantity("number", { above: 0, most: 1e6 });
export const wire = conductor.optional();
const turned = direction.optional();

const spanKeys = {
  height,
  "ends height": height.optional(),
  sag: quantity("length", { least: 0 }).optional(),
  direction: turned,
  wire,
};

const dipole = entry("A dipole", { length, ...spanKeys });
const vee = entry("An inverted vee", { length, height, "ends height": height, direction: turned, wire });
const offCentre = entry("An off-centre dipole", {
  legs: z.tuple([length, length], { error: () => "two lengths in brackets, [first leg, second leg]" }),
  ...spanKeys,
});
const folded = entry("A folded dipole", { length, spacing: length, height, direction: turned, wire });
const endFed = entry("An end-fed wire", { points: places(2), wire });
const sections = z.array(entry("A section", { length, wire: conductor }), { error: () => "a list of sections" }).min(1);
const vertical = entry("A vertical", {
  length: length.optional(),
  base: height.optional(),
  wire,
  sections: sections.optional(),
});

/** "corner 2", "middle of side 1"; counted from 1. */
const fedAt = written<{ readonly corner: number } | { readonly side: number }>(
  z
    .string({ error: () => "corner N, or middle of side N" })
    .meta({ pattern: String.raw`^(corner|middle of side) \d+$` }),
  (text): Parsed<{ readonly corner: number } | { readonly side: number }> => {
    const match = /^(corner|middle of side) (\d{1,3})$/.exec(text.trim());
    if (match) return parsed(match[1] === "corner" ? { corner: Number(match[2]) } : { side: Number(match[2]) });
    return faulty(
      `"${shown(text)}" says no spot on the loop. Expected: corner N, or middle of side N.`,
      "corner N, or middle of side N",
    );
  },
);
const loop = entry("A loop", { corners: places(3), "fed at": fedAt, wire });
const smallLoop = entry("A small loop", {
  round: length,
  height,
  plane: turned,
  wire,
  capacitor: entry("The loop's capacitor", { range: span("capacitance"), Q: q.optional() }),
  "joints resistance": quantity("impedance", { least: 0 }).optional(),
});
const beam = entry("A beam", {
  elements: z
    .array(
      entry("An element", {
        length,
        along: quantity("length", { least: -1000, most: 1000 }),
        sections: sections.optional(),
      }),
      { error: () => "a list of elements" },
    )
    .min(1),
  driven: count(1, 1000),
  height,
  boom: turned,
  wire,
  "boom correction": word("insulated", "none").optional(),
});

export const wireEntry = entry("A wire", {
  name,
  from: place,
  to: place,
  wire,
  length: length.optional(),
  tension: quantity("force", { above: 0 }).optional(),
  diameter: longConductor.diameter.optional(),
  material: longConductor.material.optional(),
  form: longConductor.form,
  wall: longConductor.wall,
  insulation: longConductor.insulation,
});

export const shapes = {
  dipole,
  "inverted vee": vee,
  "off-centre dipole": offCentre,
  "folded dipole": folded,
  "end-fed wire": endFed,
  vertical,
  loop,
  "small loop": smallLoop,
  beam,
} as const;
