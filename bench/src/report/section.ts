/** What a part of the bench hands back: budgets, tables and figures. Types, and how a budget is judged. */
import type { Figure } from "@feedpath/figures";

export interface Budget {
  /** What is done, as a person would say it. */
  readonly what: string;
  readonly limit: number;
  /** Of limit and measured: "ms", "s", "MB", "times". */
  readonly unit: string;
  readonly measured: number;
  /** Most: at most the limit is reached; least: at least the limit. */
  readonly bound: "most" | "least";
  /** The same as a ratio to something timed by turns with it, "1.3 times zgesv of 100 unknowns"; "" where there is none. */
  readonly against: string;
}

export interface Table {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the reader must know besides; "" for nothing. */
  readonly note: string;
}

export interface Section {
  readonly title: string;
  readonly budgets: readonly Budget[];
  readonly tables: readonly Table[];
  readonly figures: readonly Figure[];
  /** What could not be measured, or was found wrong, as whole sentences. */
  readonly troubles: readonly string[];
  /** What the machine description must name besides, "Chromium 1.2." */
  readonly libraries?: readonly string[];
}

/** What is measured over what is allowed: 1 or less is reached. */
export const useOf = ({ bound, limit, measured }: Budget): number =>
  bound === "most" ? measured / limit : limit / measured;

export const isReached = (budget: Budget): boolean => useOf(budget) <= 1;

/** Three digits, without an exponent. */
export const threeDigits = (value: number): string => {
  if (!Number.isFinite(value)) return String(value);
  const digits = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value) || 1)));
  return value.toFixed(Math.min(digits, 6));
};
