/** Schemas of single values: quantities, spans, counts, names and words. */
import type { Quantity } from "@feedpath/engine";
import * as z from "zod";
import { limits } from "../reading/limits";
import { expectedAmount } from "../units/amount";
import { type DimensionName, dimensions } from "../units/dimensions";
import { faulty, type Parsed, parsed } from "../units/fault";
import { nearestWord, orList, shown } from "../units/nearest";
import { parsePair, parseQuantity, parseSpan, type QuantityRule } from "../units/parseQuantity";
import { quantityPattern, spanPattern } from "./pattern";
import { written } from "./written";

/** A text; where something else stands, the problem says what was expected. */
export const text = (expected: string) => z.string({ error: () => expected });

/** Where a bare number is right, an editor sees a number. */
const numberToo = (name: DimensionName) => (dimensions[name].bare ? { type: ["string", "number"] } : {});

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
    text("a whole number").meta({ type: ["integer", "string"], pattern: String.raw`^\d+$` }),
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

/** Characters that no text of a person holds: controls and halves of characters. */
const foreign = /[\p{Cc}\p{Cs}]/u;

function readName(value: string): Parsed<string> {
  if (value.trim() === "") return faulty("A name cannot be empty.", "a name");
  if (!foreign.test(value)) return parsed(value.trim());
  return faulty(`The name "${shown(value)}" holds a control character. Take it out.`, "letters, figures, signs");
}

/** A name of the owner's choosing. */
export const name = written<string>(
  text("a name").meta({ id: "name", description: "A name, unique in the file", minLength: 1, maxLength: limits.name }),
  readName,
  limits.name,
);

/** The title of the station, one line. */
export const title = written<string>(text("a title").meta({ maxLength: limits.value }), readName, limits.value);

export const note = written<string>(
  text("free text").meta({ maxLength: limits.note }),
  (value) =>
    foreign.test(value.replace(/[\n\t]/g, ""))
      ? faulty("The note holds a control character. Take it out.", "free text")
      : parsed(value),
  limits.note,
);

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
