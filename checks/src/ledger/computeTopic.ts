/** A topic with all its rows computed. */
import type { LedgerEntry } from "./ledgerEntry";
import { coveredRows, type Topic, uncoveredRows } from "./topic";

export interface ComputedTopic {
  readonly topic: Topic;
  readonly entries: readonly LedgerEntry[];
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
  return {
    topic,
    entries: coveredRows(topic).flatMap((row) => row.entries()),
    numbers: numbers.length,
    statements: statements.length,
    uncoveredKinds: kinds,
  };
}
