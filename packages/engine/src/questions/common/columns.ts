/** Columns of tables. */
import type { Column } from "../../answer/answer";

/** A column of values; what is infinite or no number has no value. */
export const column = (unit: string, values: readonly (number | null)[]): Column => ({
  unit,
  values: values.map((v) => (v !== null && Number.isFinite(v) ? v : null)),
});

/** One value a row. */
export const columnOver = <T>(rows: readonly T[], unit: string, of: (row: T, index: number) => number | null): Column =>
  column(unit, rows.map(of));

/** 1, 2, ... for rows that are told apart by their labels. */
export const counted = (count: number): Column =>
  column(
    "1",
    Array.from({ length: count }, (_, i) => i + 1),
  );
