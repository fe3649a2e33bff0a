/** What a line is: a name, its data sheet, or what it is built of. */
import * as z from "zod";
import { lineCatalogue } from "../catalogue/lines";
import { expectedPrice, type Price, parsePrice, pricePattern } from "../units/price";
import { kindEntry, textOr } from "./choice";
import { dielectricValue } from "./dielectric";
import { entry } from "./entry";
import { lineConductor } from "./lineConductor";
import { outerConductor } from "./outerConductor";
import { points } from "./spectrum";
import { note, quantity, text, word } from "./values";
import { written } from "./written";

const lineName = written<string>(
  z.string({ error: () => "a line of the catalogue or of the file's own, or { impedance, velocity, loss }" }).meta({
    id: "lineName",
    description: "A line: its name under lines, or its designation in the catalogue",
    examples: lineCatalogue.map((known) => known.designation),
  }),
  (value) => ({ ok: true, value: value.trim() }),
);

/** What may be said of any line beside its build. */
const ratingKeys = {
  capacitance: quantity("capacitancePerLength").optional(),
  "loop resistance": quantity("resistancePerLength", { above: 0 }).optional(),
  voltage: quantity("voltage", { above: 0 }).optional(),
  "greatest temperature": quantity("temperature").optional(),
  weight: quantity("weightPerLength").optional(),
  "bend radius": quantity("length", { above: 0, most: 100 }).optional(),
  jacket: quantity("length", { above: 0, most: 1 }).optional(),
  price: written<Price>(
    text(expectedPrice).meta({ pattern: pricePattern, examples: ["2.40 EUR per m"] }),
    parsePrice,
  ).optional(),
  note: note.optional(),
};

const spacing = quantity("length", { above: 0, most: 10 });

const like = entry("A line like another", { like: lineName, ...ratingKeys });

const dataSheet = entry("A line's data sheet", {
  impedance: quantity("impedance", { least: 1, most: 2000 }),
  velocity: quantity("ratio", { least: 0.05, most: 1 }),
  loss: points("lossPerLength", { above: 0 }),
  side: word("coaxial", "balanced").optional(),
  ...ratingKeys,
});

const web = entry("The web of a pair", {
  thickness: quantity("length", { above: 0, most: 0.1 }),
  filled: quantity("ratio", { above: 0 }).optional(),
});

const wirePair = entry("A pair line", {
  wire: lineConductor,
  spacing,
  web: web.optional(),
  dielectric: dielectricValue.optional(),
  ...ratingKeys,
});

const coaxial = entry("A coaxial build", {
  inner: lineConductor,
  outer: outerConductor,
  dielectric: dielectricValue,
  ...ratingKeys,
});

/** Geometries that go by the name of their kind, which holds their wire. */
const twistedPair = entry("A twisted pair", {
  "twisted pair": lineConductor,
  turn: quantity("length", { above: 0, most: 10 }),
  ...ratingKeys,
});

const wireOverPlane = entry("A wire over a plane", {
  "wire over plane": lineConductor,
  height: spacing,
  plane: text("a metal").optional(),
  dielectric: dielectricValue.optional(),
  ...ratingKeys,
});

const fourWires = entry("A four-wire line", {
  "four wires": lineConductor,
  square: spacing,
  joined: word("diagonals", "neighbours").optional(),
  dielectric: dielectricValue.optional(),
  ...ratingKeys,
});

const shieldedPair = entry("A shielded pair", {
  "shielded pair": lineConductor,
  spacing,
  outer: outerConductor,
  dielectric: dielectricValue,
  ...ratingKeys,
});

const described = kindEntry("A line's value", [
  dataSheet,
  wirePair,
  coaxial,
  twistedPair,
  wireOverPlane,
  fourWires,
  shieldedPair,
  like,
] as const);

export type FileOwnLine = z.output<typeof described>;
export type FileLine = string | FileOwnLine;

// Named types: spelt out wherever a line may stand, the type of the whole file would be too long to write down.
/** A line described, not named. */
export const ownLine: z.ZodType<FileOwnLine> = described;
/** A line by its name, or described. */
export const lineValue: z.ZodType<FileLine> = textOr(lineName, described);
