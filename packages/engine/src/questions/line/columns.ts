/** Columns of the tables of `line`. */
import type { Column } from "../../answer/answer";

export const column = (unit: string, values: readonly (number | null)[]): Column => ({
  unit,
  values: values.map((v) => (v !== null && Number.isFinite(v) ? v : null)),
});

export const counted = (count: number): Column =>
  column(
    "1",
    Array.from({ length: count }, (_, i) => i + 1),
  );

export const bandName = (name: string, frequency: number): string =>
  name === "" ? `${Number((frequency / 1e6).toPrecision(6))} MHz` : name;
