/** Values between the rows of a table, and tables as figures show them. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredColumn } from "../kit/answerValues";
import type { FigureTable } from "../kit/figure";

/** Value of a column at `at` on the table's axis, straight between rows; null outside the rows or beside a gap. */
export function valueAt(table: Table, column: string, at: number): number | null {
  const axis = numbersOf(table, table.axis);
  const values = requiredColumn(table, column).values;
  const next = axis.findIndex((value) => value >= at - 1e-9 * Math.abs(at));
  if (next < 0 || (next === 0 && axis[0]! - at > 1e-6 * Math.abs(at))) return null;
  const before = Math.max(0, next - 1);
  const [a, b] = [values[before] ?? null, values[next] ?? null];
  if (a === null || b === null || next === before || axis[next] === axis[before]) return b;
  return a + ((b - a) * (at - axis[before]!)) / (axis[next]! - axis[before]!);
}

/** Finite numbers of columns with their low and high ends: what a scale has to hold. */
export const allNumbers = (table: Table, columns: readonly string[]): number[] =>
  columns.flatMap((name) => {
    const { values, low = [], high = [] } = requiredColumn(table, name);
    return [...values, ...low, ...high].filter((value): value is number => value !== null);
  });

/** The columns named, in this order, under these words. */
export function figureTable(table: Table, caption: string, words: Readonly<Record<string, string>>): FigureTable {
  const names = Object.keys(words);
  const columns = names.map((name) => requiredColumn(table, name));
  return {
    caption,
    columns: names.map((name, i) => ({ name: words[name]!, unit: columns[i]!.unit === "1" ? "" : columns[i]!.unit })),
    rows: columns[0]!.values.map((_, row) => columns.map((column) => column.values[row] ?? null)),
  };
}

const inWords = (says: string, input: string): string => (/^[\d−]/.test(says) ? `${input} ${says}` : says);

/** What the bands of doubt stand for; "" where the table has none. */
export function bandsNote(answer: Answer, table: Table): string {
  const drawn = Object.values(table.columns).some((column) => column.low && column.high);
  if (!drawn) return "";
  const causes = answer.uncertainties.slice(0, 3).map(({ says, input }) => inWords(says, input));
  return causes.length > 0 ? `Bands: ${causes.join(", ")}.` : "Bands: inputs within the bounds of the file.";
}
