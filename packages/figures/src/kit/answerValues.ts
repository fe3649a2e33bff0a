/** Reading an answer's values and tables, with errors that name what is missing. */
import type { Answer, Column, ScalarValue, Table } from "@feedpath/engine";

/** A scalar of the answer; undefined when the answer has none of that name, or a complex one. */
export function scalar(answer: Answer, name: string): ScalarValue | undefined {
  const value = answer.values[name];
  return value && "value" in value ? value : undefined;
}

/** A number the picture cannot do without. */
export function requiredNumber(answer: Answer, name: string): number {
  const value = scalar(answer, name)?.value;
  if (value === undefined || value === null) {
    throw new Error(
      `The answer to "${answer.question}" has no number "${name}", which its figure draws: expected values.${name}.`,
    );
  }
  return value;
}

/** A number or null: does not apply, is infinite, or is not in the answer. */
export const optionalNumber = (answer: Answer, name: string): number | null => scalar(answer, name)?.value ?? null;

export const numericParameter = (answer: Answer, name: string): number | null => {
  const value = answer.parameters[name];
  return typeof value === "number" ? value : null;
};

export function requiredTable(answer: Answer, name: string): Table {
  const table = answer.tables.find((one) => one.name === name);
  if (!table) {
    const found = answer.tables.map((one) => one.name).join(", ") || "none";
    throw new Error(
      `The answer to "${answer.question}" has no table "${name}", which its figure draws: found ${found}.`,
    );
  }
  return table;
}

export function requiredColumn(table: Table, name: string): Column {
  const column = table.columns[name];
  if (!column) {
    throw new Error(
      `The table "${table.name}" has no column "${name}", which its figure draws: found ${Object.keys(table.columns).join(", ")}.`,
    );
  }
  return column;
}

/** Numbers of a column without gaps (axes, patterns). */
export const numbersOf = (table: Table, name: string): number[] =>
  requiredColumn(table, name).values.map((value, row) => {
    if (value === null) throw new Error(`The table "${table.name}" has no value of "${name}" in row ${row + 1}.`);
    return value;
  });
