/** A line's value as texts. */
import type { LineEntry, LineModel, LineRatings, Quantity } from "@feedpath/engine";
import { ratingNames } from "../building/ratings";
import { findLine } from "../catalogue/lines";
import type { DimensionName } from "../units/dimensions";
import { formatAmount, formatQuantity } from "../units/formatQuantity";
import { formatPrice } from "../units/price";
import { writeBuilt } from "./writeBuilt";
import { type Branch, type Leaf, present, type Writing } from "./writing";

/** A line of the file's own or of the catalogue by its name, any other by what it is made of. */
export function writeLine(writing: Writing, line: LineEntry, place: string): Leaf {
  if (writing.lines.some((own) => same(own, line))) return line.designation;
  if (line.like === undefined && findLine(line.designation)) return line.designation;
  return describeLine(writing, line, place);
}

const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** A line by what it is, with what is said of it. */
export function describeLine(writing: Writing, line: LineEntry, place: string): Branch {
  const known = line.like === undefined ? null : findLine(line.like);
  return present({
    ...(known ? { like: known.designation } : writeModel(writing, line.model, place)),
    ...writeRatings(line, known),
  });
}

const ratingDimensions: Readonly<Record<keyof typeof ratingNames, DimensionName>> = {
  voltage: "voltage",
  "greatest temperature": "temperature",
  weight: "weightPerLength",
  "bend radius": "length",
  capacitance: "capacitancePerLength",
  "loop resistance": "resistancePerLength",
};

/** What the file says of a line beyond what the catalogue says of the one it is like. */
function writeRatings(line: LineEntry, known: LineEntry | null): Branch {
  const keys = Object.keys(ratingNames) as (keyof typeof ratingNames)[];
  const rated = keys.map((key): readonly [string, Leaf] => {
    const name = ratingNames[key];
    const value = ratingOf(line.ratings, name);
    const own = value !== undefined && !same(value, ratingOf(known?.ratings, name));
    return [key, own ? formatQuantity(value, ratingDimensions[key]) : undefined];
  });
  const jacket = line.jacketDiameter === known?.jacketDiameter ? undefined : line.jacketDiameter;
  return {
    ...Object.fromEntries(rated),
    jacket: jacket === undefined ? undefined : formatAmount(jacket, "length"),
    price: line.price ? formatPrice(line.price) : undefined,
    note: line.about === known?.about ? undefined : line.about,
  };
}

const ratingOf = (
  ratings: LineRatings | undefined,
  name: (typeof ratingNames)[keyof typeof ratingNames],
): Quantity | undefined => ratings?.[name];

function writeModel(writing: Writing, model: LineModel, place: string): Branch {
  if (model.kind !== "data sheet") return writeBuilt(writing, model, place);
  const loss = model.loss.map(({ frequency, decibelsPerMetre }) => [
    formatAmount(frequency, "frequency"),
    formatQuantity(decibelsPerMetre, "lossPerLength"),
  ]);
  return {
    impedance: formatQuantity(model.impedance, "impedance"),
    velocity: formatQuantity(model.velocityFactor, "ratio"),
    loss: Object.fromEntries(loss),
    side: writing.given(`${place}.model.side`, model.side),
  };
}
