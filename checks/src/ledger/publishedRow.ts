/** Values from outside, as they stand in checks/values: one row a line, never edited to fit. */
import { readFileSync } from "node:fs";

export interface ComplexNumber {
  readonly re: number;
  readonly im: number;
}

/** How far a computed value may lie from the published one: what the source's own precision allows. */
export interface Tolerance {
  /** Share of the published magnitude, and an amount in its unit: the larger of the two counts. */
  readonly relative?: number;
  readonly absolute?: number;
  /** Impedances whose source bounds resistance and reactance apart, ohm. */
  readonly resistance?: number;
  readonly reactance?: number;
}

export type PublishedValue =
  | number
  | string
  | null
  | ComplexNumber
  | readonly PublishedValue[]
  | { readonly [name: string]: PublishedValue };

export interface PublishedRow {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, PublishedValue>>;
  readonly value: PublishedValue;
  readonly unit: string;
  /** For all values of the row, or by the name of a value; null where the source bounds nothing. */
  readonly tolerance: Tolerance | Readonly<Record<string, Tolerance>> | null;
  /** The tolerance as the source puts it. */
  readonly toleranceSays: string;
  readonly source: string;
  readonly status:
    | "standard"
    | "handbook"
    | "computed by an independent script"
    | "common practice, no source"
    | "from memory";
  /** Where the value was seen when that is not the source itself. */
  readonly evidence?: string;
}

const read = new Map<string, readonly PublishedRow[]>();

/** Rows of checks/values/NAME.json. */
export function publishedRows(name: string): readonly PublishedRow[] {
  const known = read.get(name);
  if (known) return known;
  const file = new URL(`../../values/${name}.json`, import.meta.url);
  const rows: readonly PublishedRow[] = JSON.parse(readFileSync(file, "utf8"));
  read.set(name, rows);
  return rows;
}

/** The row of that id in checks/values/NAME.json. */
export function publishedRow(name: string, id: string): PublishedRow {
  const row = publishedRows(name).find((r) => r.id === id);
  if (!row) throw new Error(`checks/values/${name}.json has no row "${id}"`);
  return row;
}

export const isComplex = (value: unknown): value is ComplexNumber =>
  typeof value === "object" && value !== null && "re" in value && "im" in value;

/** The numbers of a row by name, names of nested values joined by " / "; a row that is one number calls it "". */
export function numbersOf(row: PublishedRow): ReadonlyMap<string, number | ComplexNumber> {
  const found = new Map<string, number | ComplexNumber>();
  const walk = (value: PublishedValue, name: string): void => {
    if (typeof value === "number" || isComplex(value)) found.set(name, value);
    else if (typeof value === "object" && value !== null) {
      for (const [key, inner] of Object.entries(value)) walk(inner, name === "" ? key : `${name} / ${key}`);
    }
  };
  walk(row.value, "");
  return found;
}

const boundNames = ["relative", "absolute", "resistance"];

/** The tolerance of one value of a row (by its name, or the last part of it), or null when the source gives none. */
export function toleranceOf(row: PublishedRow, name: string): Tolerance | null {
  const { tolerance } = row;
  if (tolerance === null) return null;
  if (boundNames.some((bound) => typeof (tolerance as Record<string, unknown>)[bound] === "number")) return tolerance;
  const byName = tolerance as Readonly<Record<string, Tolerance>>;
  return byName[name] ?? byName[name.split(" / ").at(-1)!] ?? null;
}

/** A number among the inputs of a row. */
export function input(row: PublishedRow, name: string): number {
  const value = row.inputs[name];
  if (typeof value !== "number") throw new Error(`${row.id}: input "${name}" is no number`);
  return value;
}

/** A complex number among the inputs of a row. */
export function complexInput(row: PublishedRow, name: string): ComplexNumber {
  const value = row.inputs[name];
  if (!isComplex(value)) throw new Error(`${row.id}: input "${name}" is no complex number`);
  return value;
}
