/** A topic: a file of published values and the ways to compute their counterparts through the public interface. */
import { type Computed, entriesOf, type LedgerEntry } from "./ledgerEntry";
import { numbersOf, type PublishedRow, publishedRows } from "./publishedRow";

export interface Evaluator {
  /** Ids of the rows it computes. */
  readonly rows: RegExp;
  readonly compute: (row: PublishedRow) => Computed;
}

export interface Topic {
  /** Name of the file in checks/values. */
  readonly name: string;
  readonly title: string;
  readonly evaluators: readonly Evaluator[];
}

export interface CoveredRow {
  readonly row: PublishedRow;
  readonly entries: () => readonly LedgerEntry[];
}

const evaluatorOf = (topic: Topic, row: PublishedRow): Evaluator | undefined =>
  topic.evaluators.find((evaluator) => evaluator.rows.test(row.id));

/** Rows this version can compute, in the order of the file. */
export const coveredRows = (topic: Topic): readonly CoveredRow[] =>
  publishedRows(topic.name).flatMap((row) => {
    const evaluator = evaluatorOf(topic, row);
    return evaluator ? [{ row, entries: () => entriesOf(row, evaluator.compute(row)) }] : [];
  });

/** Rows nothing computes yet: those with numbers, and those that only state something. */
export function uncoveredRows(topic: Topic): { readonly numbers: PublishedRow[]; readonly statements: PublishedRow[] } {
  const rows = publishedRows(topic.name).filter((row) => evaluatorOf(topic, row) === undefined);
  return {
    numbers: rows.filter((row) => numbersOf(row).size > 0),
    statements: rows.filter((row) => numbersOf(row).size === 0),
  };
}
