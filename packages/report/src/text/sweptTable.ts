import type { Table } from "@feedpath/engine";
import type { DocumentTable } from "../document/document";
import { wordsOf } from "../words/names";
import { frequencyText, numberText, unitSign, wattsText } from "../words/numbers";
import { visibleLine } from "../words/visible";

const mostRows = 9;
const mostColumns = 6;

/** Share of the largest value of a column below which a value is what rounding left. */
const rounding = 1e-10;

function rounded(values: readonly (number | null)[], row: number): number | null {
  const value = values[row] ?? null;
  const largest = Math.max(...values.map((v) => Math.abs(v ?? 0)));
  return value !== null && Math.abs(value) < rounding * largest ? 0 : value;
}

const usualDigits = 3;
const mostDigits = 6;

/** Digits with which no two neighbours on the axis read the same. */
function tellingApart(values: readonly (number | null)[]): number {
  for (let digits = usualDigits; digits < mostDigits; digits++) {
    const texts = values.map((value) => (value === null ? "" : numberText(value, digits)));
    if (texts.every((text, i) => i === 0 || text !== texts[i - 1] || values[i] === values[i - 1])) return digits;
  }
  return mostDigits;
}

/** Large volts and watts go into thousands or millions, so that no digit is shown that nobody knows. */
function scaleOf(values: readonly (number | null)[], unit: string): { readonly factor: number; readonly unit: string } {
  const largest = Math.max(...values.map((value) => Math.abs(value ?? 0)));
  if ((unit !== "V" && unit !== "W") || largest < 1e5) return { factor: 1, unit };
  return largest < 1e8 ? { factor: 1e3, unit: `k${unit}` } : { factor: 1e6, unit: `M${unit}` };
}

const isWhole = (value: number | null): boolean => value === null || Number.isInteger(value);

/** The cells of one column; watts have a decimal so that parts add up, except where all are stated whole. */
function cellTexts(values: readonly (number | null)[], unit: string, digits: number): readonly string[] {
  const { factor } = scaleOf(values, unit);
  const inWatts = unit === "W" && factor === 1 && !values.every(isWhole);
  return values.map((value) => {
    if (value === null) return "–";
    if (unit === "Hz") return frequencyText(value);
    return inWatts ? wattsText(value) : numberText(value / factor, digits);
  });
}

/** Indices of at most `most` rows at equal steps, both ends among them. */
function picked(count: number, most: number): readonly number[] {
  if (count <= most) return Array.from({ length: count }, (_, k) => k);
  return Array.from({ length: most }, (_, k) => Math.round((k * (count - 1)) / (most - 1)));
}

/** A swept table cut to what a terminal shows: the axis (or what its rows are) first, at most 6 columns and 9 rows, and how much was left out. */
export function sweptRows(table: Table): { readonly table: DocumentTable; readonly leftOut: string | null } {
  const { labels } = table;
  const names = [table.axis, ...Object.keys(table.columns).filter((name) => name !== table.axis)];
  const columns = names.slice(0, mostColumns).map((name) => ({ name, ...table.columns[name]! }));
  const count = columns[0]?.values.length ?? 0;
  const rows = picked(count, mostRows);
  const shown = columns.map(({ values }) => rows.map((row) => rounded(values, row)));
  const digits = tellingApart(shown[0] ?? []);
  const cells = columns.map(({ unit }, i) => cellTexts(shown[i]!, unit, i === 0 ? digits : usualDigits));
  const cut = rows.length < count || columns.length < names.length;
  return {
    table: {
      caption: wordsOf(table.name),
      columns: columns.map(({ name, unit }, i) => ({
        name: wordsOf(name),
        unit: unit === "Hz" ? "" : unitSign(scaleOf(shown[i]!, unit).unit),
        numeric: i > 0 || labels === undefined,
      })),
      rows: rows.map((row, k) =>
        columns.map((_, i) => (i === 0 && labels ? visibleLine(labels[row] ?? "") : (cells[i]?.[k] ?? ""))),
      ),
    },
    leftOut: cut
      ? `${rows.length} of ${count} rows and ${columns.length} of ${names.length} columns; --json prints all.`
      : null,
  };
}
