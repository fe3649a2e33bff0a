/** Schemas of single values: quantities, spans, places, directions, conductors, names and words. */
import type { ChokePart, Conductor, Place, Quantity } from "@feedpath/engine";
import * as z from "zod";
import { limits } from "../reading/limits";
import { expectedAmount } from "../units/amount";
import { conductorOf, diameterRule, insulationNames, insulationOf, parseConductor, wallRule } from "../units/conductor";
import { type DimensionName, dimensions } from "../units/dimensions";
import { faulty, type Parsed, parsed } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";
import { parsePair, parseQuantity, parseSpan, type QuantityRule } from "../units/parseQuantity";
import { parseDirection, parseOffset, parsePlace } from "../units/place";
import { entry, textOr, written } from "./entry";
import { quantityPattern, spanPattern } from "./pattern";

/** A value by frequency, as a choke has it. */
type Spectrum = ChokePart["resistance"];

const text = (expected: string) => z.string({ error: () => expected });

/** Where a bare number is right, an editor sees a number. */
const numberToo = (name: DimensionName) => (dimensions[name].bare ? { type: ["string", "number"] as never } : {});

const bases = new Map<string, z.ZodString>();

/** One base schema per dimension and form, shared so that the JSON Schema names it once. */
function base(form: "quantity" | "span", name: DimensionName): z.ZodString {
  const id = form === "quantity" ? name : `${name}Span`;
  const known = bases.get(id);
  if (known) return known;
  const dimension = dimensions[name];
  const units = Object.keys(dimension.units);
  const description =
    form === "span"
      ? `Two values "A to B"; units: ${orList(units)}`
      : `${dimension.title}; ${units.length === 0 ? "no unit" : `units: ${orList(units)}`}. Uncertain: "A ± B", "between A and B"`;
  const type = form === "quantity" ? numberToo(name) : {};
  const pattern = form === "quantity" ? quantityPattern(name) : spanPattern(name);
  const made = text(
    form === "span" ? `two values, "A to B", each ${expectedAmount(dimension)}` : expectedAmount(dimension),
  ).meta({ id, description, pattern, ...type });
  bases.set(id, made);
  return made;
}

/** An exact or uncertain value. */
export const quantity = (name: DimensionName, rule: QuantityRule = {}) =>
  written<Quantity>(base("quantity", name), (value) => parseQuantity(value, name, rule));

/** A value, or `unknown` where the catalogue publishes the range `known`. */
export const quantityOrUnknown = (name: DimensionName, rule: QuantityRule, known: Quantity) =>
  written<Quantity>(
    text(`${dimensions[name].title} or unknown`).meta({
      description: `${dimensions[name].title}, uncertain or not; or unknown: the published range is taken and listed`,
      pattern: `${quantityPattern(name)}|^unknown$`,
      ...numberToo(name),
    }),
    (value) => (value.trim() === "unknown" ? parsed(known) : parseQuantity(value, name, rule)),
  );

export const span = (name: DimensionName, rule: QuantityRule = {}) =>
  written(base("span", name), (value) => parseSpan(value, name, rule));

/** Two values in the order written: transmitter side to antenna side. */
export const pair = (name: DimensionName, rule: QuantityRule = {}) =>
  written(base("span", name), (value) => parsePair(value, name, rule));

/** A whole number in words of people: elements, radials, connectors. */
export const count = (least: number, most: number) =>
  written<number>(
    text("a whole number").meta({ type: ["integer", "string"] as never, pattern: String.raw`^\d+$` }),
    (value): Parsed<number> => {
      const number = Number(value);
      if (/^\d{1,9}$/.test(value) && number >= least && number <= most) return parsed(number);
      return faulty(`"${shown(value)}" must be a whole number from ${least} to ${most}.`, `${least} to ${most}`);
    },
  );

/** One of fixed words; the fault names the nearest. */
export const word = <const Words extends readonly string[]>(...words: Words) =>
  written<Words[number]>(text(orList(words)).meta({ enum: [...words] }), (value): Parsed<Words[number]> => {
    const found = words.find((known) => known === value);
    if (found !== undefined) return parsed(found);
    const near = nearestWord(value, words);
    const hint = near === null ? `Expected: ${orList(words)}.` : `Nearest: ${near}.`;
    return faulty(`"${shown(value)}" is not a word for this. ${hint}`, orList(words), { nearest: near, mend: near });
  });

/** One of fixed words, or a value. */
export const wordOrQuantity = <const Words extends readonly string[]>(
  words: Words,
  dimension: DimensionName,
  rule: QuantityRule = {},
) =>
  written<Words[number] | Quantity>(
    text(`${orList(words)}, or ${dimensions[dimension].title.toLowerCase()}`).meta({
      pattern: `^(${words.join("|")})$|${quantityPattern(dimension)}`,
    }),
    (value): Parsed<Words[number] | Quantity> => {
      const found = words.find((known) => known === value.trim());
      if (found !== undefined) return parsed(found);
      const near = /\d/.test(value) ? null : nearestWord(value, words);
      if (near === null) return parseQuantity(value, dimension, rule);
      return faulty(`"${shown(value)}" is not a word for this. Nearest: ${near}.`, orList(words), {
        nearest: near,
        mend: near,
      });
    },
  );

/** A name of the owner's choosing. */
export const name = written<string>(
  text("a name").meta({ id: "name", description: "A name, unique in the file", minLength: 1, maxLength: limits.name }),
  (value) => (value.trim() === "" ? faulty("A name cannot be empty.", "a name") : parsed(value.trim())),
  limits.name,
);

export const note = written<string>(text("free text").meta({ maxLength: limits.note }), parsed, limits.note);

/** A relative path of a file below the station's own folder. */
export const fileName = written<string>(
  text("the name of a file beside this one").meta({ description: "A file below the station's own folder" }),
  (value): Parsed<string> => {
    const segments = value.split("/");
    const below =
      !/^[A-Za-z]:|^\/|\\|\p{Cc}/u.test(value) &&
      segments.every((part) => part !== "" && part !== ".." && part !== ".");
    if (below) return parsed(value);
    return faulty(
      `"${shown(value)}" does not name a file below the station's own folder. Put it beside the station file and write its name.`,
      "a relative path with / and without ..",
    );
  },
);

/** A value by frequency: one value, or points. */
export function spectrum(dimension: DimensionName, rule: QuantityRule = {}) {
  return textOr(quantity(dimension, rule).transform(constant), points(dimension, rule));
}

const constant = (value: Quantity): Spectrum => ({ kind: "constant", quantity: value });

/** `{ 3.5 MHz: 1.2 kohm, 7 MHz: 3 kohm }`, sorted by frequency. */
export const points = (dimension: DimensionName, rule: QuantityRule = {}) =>
  z
    .record(z.string(), quantity(dimension, rule))
    .meta({ description: "Values by frequency: { 3.5 MHz: ..., 7 MHz: ... }" })
    .transform((byFrequency, context): Spectrum => {
      const found = Object.entries(byFrequency).map(([key, value]) => {
        const frequency = parseQuantity(key, "frequency", { above: 0 });
        if (!frequency.ok) {
          context.addIssue({
            code: "custom",
            path: [key],
            message: frequency.fault.message,
            params: { fault: frequency.fault, at: "key" },
          });
        }
        return { frequency: frequency.ok ? frequency.value.value : 0, quantity: value };
      });
      if (found.length === 0) context.addIssue({ code: "custom", message: "At least one frequency is needed here." });
      return { kind: "points", points: found.sort((a, b) => a.frequency - b.frequency) };
    });

/** A place, `[9 m east, 2 m north, 4 m up]`. */
export const place = z
  .array(text("an offset, 9 m east"), { error: () => "a place in brackets, [9 m east, 4 m up]" })
  .max(3, { error: () => "A place has at most three offsets: east or west, north or south, up or under." })
  .meta({ id: "place", description: "[9 m east, 2 m north, 4 m up], or three plain lengths x, y, z; left out is 0 m" })
  .transform((offsets, context): Place => {
    const read = parsePlace(offsets);
    if (read.ok) return read.value;
    const wrong = offsets.findIndex((offset) => !parseOffset(offset).ok);
    const plain = read.fault.message.includes("which way") ? wrong : -1;
    const path = wrong >= 0 && (plain >= 0 || offsets.length < 3) ? [wrong] : [];
    const { fault } = read;
    context.addIssue({ code: "custom", path, message: fault.message, params: { fault, at: "value" } });
    return z.NEVER;
  });

export const places = (least: number) =>
  z
    .array(place, { error: () => "a list of places" })
    .min(least, { error: () => `At least ${least} places are needed here.` });

export const direction = written<Quantity>(
  text("a compass word or an angle, 250 deg").meta({ id: "direction", description: "Clockwise from true north" }),
  parseDirection,
);

const sleeve = entry("Insulation", {
  wall: quantity("length", wallRule),
  material: word(...(insulationNames as [string, ...string[]])).optional(),
  permittivity: quantity("number", { least: 1, most: 100 }).optional(),
});

export const longConductor = {
  diameter: quantity("length", diameterRule),
  material: written<string>(text("a metal"), parsed),
  form: word("wire", "tube").optional(),
  insulation: sleeve.optional(),
};

interface LongConductor {
  readonly diameter: Quantity;
  readonly material: string;
  readonly form?: "wire" | "tube" | undefined;
  readonly insulation?: z.output<typeof sleeve> | undefined;
}

/** A conductor from its keys: `{ diameter, material, insulation: { wall, permittivity } }`. */
export function readLongConductor(long: LongConductor): Parsed<Conductor> {
  const { insulation } = long;
  const form = long.form ?? "wire";
  if (!insulation) return conductorOf(long.diameter, form, long.material, null);
  if (insulation.material === undefined && insulation.permittivity === undefined) {
    return faulty("Insulation needs its material or its permittivity.", "material or permittivity");
  }
  const read = insulationOf(insulation.material ?? "insulation", insulation.wall, insulation.permittivity ?? null);
  return read.ok ? conductorOf(long.diameter, form, long.material, read.value) : read;
}

const longForm = entry("A conductor", longConductor).transform((long, context): Conductor => {
  const read = readLongConductor(long);
  if (read.ok) return read.value;
  context.addIssue({ code: "custom", message: read.fault.message, params: { fault: read.fault, at: "value" } });
  return z.NEVER;
});

export const conductor = textOr(
  written<Conductor>(
    text("a conductor, 2 mm copper in 0.8 mm PVC").meta({
      id: "conductor",
      description: "2 mm copper in 0.8 mm PVC; 30 mm tube aluminium; 2 mm perfect",
      examples: ["2 mm copper", "30 mm tube aluminium", "1.5 mm copper in 0.7 mm PVC"],
    }),
    parseConductor,
  ),
  longForm,
);
