/** One line of the ledger: a published number, the computed one, and whether they agree within the source's tolerance. */
import {
  type ComplexNumber,
  isComplex,
  numbersOf,
  type PublishedRow,
  type Tolerance,
  toleranceOf,
} from "./publishedRow";

export interface LedgerEntry {
  readonly row: PublishedRow;
  /** Row id, with the name of the value where a row has several. */
  readonly id: string;
  readonly published: number | ComplexNumber;
  readonly computed: number | ComplexNumber;
  /** Magnitude of the difference. */
  readonly difference: number;
  /** Null where the source bounds nothing: both numbers are shown, and nothing is judged. */
  readonly tolerance: Tolerance | null;
  readonly agrees: boolean | null;
}

/** Computed counterparts of a row's values by their names; values without one are left out. */
export type Computed = Readonly<Record<string, number | ComplexNumber>>;

const complex = (x: number | ComplexNumber): ComplexNumber => (isComplex(x) ? x : { re: x, im: 0 });

/** Whether two numbers agree. A NaN never does. */
export function agreement(published: number | ComplexNumber, computed: number | ComplexNumber, tolerance: Tolerance) {
  const [p, c] = [complex(published), complex(computed)];
  const [re, im] = [c.re - p.re, c.im - p.im];
  const difference = Math.hypot(re, im);
  if (tolerance.resistance !== undefined) {
    const agrees = Math.abs(re) <= tolerance.resistance && Math.abs(im) <= (tolerance.reactance ?? 0);
    return { difference, agrees };
  }
  const allowed = Math.max((tolerance.relative ?? 0) * Math.hypot(p.re, p.im), tolerance.absolute ?? 0);
  return { difference, agrees: difference <= allowed };
}

export const entryId = (row: PublishedRow, name: string): string => (name === "" ? row.id : `${row.id} / ${name}`);

/** What stands beside a value that its source does not bound. */
function shownOnly(published: number | ComplexNumber, computed: number | ComplexNumber) {
  const { difference } = agreement(published, computed, { absolute: 0 });
  return { difference, agrees: null };
}

/** Entries of one row. A computed value without a published one is a mistake of the topic and throws. */
export function entriesOf(row: PublishedRow, computed: Computed): readonly LedgerEntry[] {
  const published = numbersOf(row);
  return Object.entries(computed).map(([name, value]) => {
    const expected = published.get(name);
    const tolerance = toleranceOf(row, name);
    if (expected === undefined) throw new Error(`${row.id}: "${name}" has no published number in checks/values`);
    return {
      row,
      id: entryId(row, name),
      published: expected,
      computed: value,
      tolerance,
      ...(tolerance === null ? shownOnly(expected, value) : agreement(expected, value, tolerance)),
    };
  });
}
