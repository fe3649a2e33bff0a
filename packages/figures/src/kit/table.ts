/** A figure's numbers as rows of text, for HTML, and as CSV. */
import type { Figure } from "./figure";
import { significantText } from "./numberText";

export interface TextTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const cellText = (cell: string | number | null): string =>
  cell === null ? "none" : typeof cell === "number" ? significantText(cell, 4) : cell;

/** Head with units ("power, W") and rows of text, numbers to four figures; a missing value reads "none". */
export const toTable = (figure: Figure): TextTable => ({
  caption: figure.table.caption,
  head: figure.table.columns.map((column) => (column.unit ? `${column.name}, ${column.unit}` : column.name)),
  rows: figure.table.rows.map((row) => row.map(cellText)),
});

/** A text that begins like a formula gets a space before it, so that no spreadsheet runs a stranger's file. */
function csvCell(cell: string | number | null): string {
  if (cell === null) return "";
  if (typeof cell === "number") return String(cell);
  const harmless = /^[=+\-@\t\r]/.test(cell) ? ` ${cell}` : cell;
  return /[",\n\r]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/** CSV after RFC 4180: head with units, full precision, empty for a missing value, lines end with CR LF. */
export function toCsv(figure: Figure): string {
  const head = figure.table.columns.map((column) => (column.unit ? `${column.name} (${column.unit})` : column.name));
  return [head, ...figure.table.rows].map((row) => `${row.map(csvCell).join(",")}\r\n`).join("");
}
