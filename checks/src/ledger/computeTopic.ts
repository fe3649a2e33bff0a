/** A topic with all its rows computed. */
import type { LedgerEntry } from "./ledgerEntry";
import { numbersOf } from "./publishedRow";
import { coveredRows, type Topic, uncoveredRows } from "./topic";

export interface ComputedTopic {
  readonly topic: Topic;
  readonly entries: readonly LedgerEntry[];
  /** Further numbers in the computed rows that have no computed counterpart: estimates, inputs, other forms of the same. */
  readonly leftOut: number;
  /** Rows with numbers that nothing computes yet, and rows that only state something. */
  readonly numbers: number;
  readonly statements: number;
  /** Ids of the former, cut after the second dot, with their counts. */
  readonly uncoveredKinds: ReadonlyMap<string, number>;
}

export function computeTopic(topic: Topic): ComputedTopic {
  const { numbers, statements } = uncoveredRows(topic);
  const kinds = new Map<string, number>();
  for (const { id } of numbers) {
    const kind = id.split(".").slice(0, 2).join(".");
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
  const covered = coveredRows(topic);
  const entries = covered.flatMap((row) => row.entries());
  const published = covered.reduce((sum, { row }) => sum + numbersOf(row).size, 0);
  return {
    topic,
    entries,
    leftOut: published - entries.length,
    numbers: numbers.length,
    statements: statements.length,
    uncoveredKinds: kinds,
  };
}
