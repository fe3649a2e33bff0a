/** What a line is: a catalogue name, its data sheet, a pair of wires, or its coaxial build. */

import type { LineEntry } from "@feedpath/engine";
import * as z from "zod";
import { findLine, lineCatalogue } from "../catalogue/lines";
import { faulty, type Parsed, parsed } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";
import { kindEntry, textOr } from "./choice";
import { conductor } from "./conductors";
import { entry } from "./entry";
import { points } from "./spectrum";
import { name, quantity, word } from "./values";
import { written } from "./written";

const designations = lineCatalogue.map((known) => known.designation);

const fromCatalogue = written<LineEntry>(
  z
    .string({ error: () => "a line of the catalogue, or { impedance, velocity, loss }" })
    .meta({ id: "lineName", description: "Designation of a line in the catalogue", examples: [...designations] }),
  (text): Parsed<LineEntry> => {
    const found = findLine(text);
    if (found) return parsed(found);
    const near = nearestWord(text, designations);
    const own = "Or describe it: { impedance: 50 ohm, velocity: 0.66, loss: { 10 MHz: 4.6 dB/100 m } }.";
    const hint = near === null ? `Known: ${orList(designations)}.` : `Nearest: ${near}.`;
    return faulty(`The catalogue has no line "${shown(text)}". ${hint} ${own}`, "a line of the catalogue", {
      nearest: near,
      mend: near,
    });
  },
);

const dataSheet = entry("A line's data sheet", {
  impedance: quantity("impedance", { least: 1, most: 2000 }),
  velocity: quantity("ratio", { least: 0.05, most: 1 }),
  loss: points("lossPerLength", { above: 0 }),
  side: word("coaxial", "balanced").optional(),
});

const wirePair = entry("A pair line", {
  wire: conductor,
  spacing: quantity("length", { above: 0, most: 10 }),
});

const ownDielectric = entry("A dielectric", {
  permittivity: quantity("number", { least: 1, most: 100 }),
  "loss tangent": quantity("number", { least: 0, most: 1 }),
});

const build = entry("A coaxial build", {
  inner: conductor,
  outer: conductor,
  dielectric: textOr(name, ownDielectric),
});

export const lineValue = textOr(fromCatalogue, kindEntry("A line's value", [dataSheet, wirePair, build] as const));

export type FileLine = z.output<typeof lineValue>;
