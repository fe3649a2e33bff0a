/** Lines beside each other: what is compared, as plain data that the command line, the page and a sheet write out. */
import { type LineEntry, type LineFacts, type LineRatings, lineFacts, lineSide, type Quantity } from "@feedpath/engine";

/** A line with the family it is listed under; `own`: described by the station's file. */
export interface ListedLine {
  readonly entry: LineEntry;
  readonly family: string;
  readonly own: boolean;
}

export interface LineRow {
  readonly designation: string;
  readonly about: string;
  readonly family: string;
  readonly own: boolean;
  readonly side: LineFacts["side"];
  /** At the frequency looked at; null where the entry is no line there. Ohm, a ratio, dB/m. */
  readonly impedance: Quantity | null;
  readonly velocityFactor: Quantity | null;
  readonly loss: Quantity | null;
  /** dB/m at the further frequencies; null where the entry is no line. */
  readonly losses: readonly (Quantity | null)[];
  /** m over the jacket; null where it is not known, or where there is none. */
  readonly jacket: number | null;
  readonly ratings: LineRatings;
  readonly price: NonNullable<LineEntry["price"]> | null;
  readonly sources: LineEntry["sources"];
  /** Where the numbers at the frequency looked at are weaker than they look. */
  readonly notes: readonly string[];
}

export interface LineComparison {
  /** Hz that is looked at. */
  readonly at: number;
  /** Hz of the table of losses; none for no table. */
  readonly frequencies: readonly number[];
  /** m of the run that is looked at; null for none. */
  readonly length: number | null;
  readonly rows: readonly LineRow[];
}

/** Own lines stand under this. */
export const ownFamily = "lines of this station";

export type LineConditions = Omit<LineComparison, "rows">;

const lossAt = (entry: LineEntry, frequency: number): Quantity | null => {
  const facts = lineFacts(entry, frequency);
  return "noLine" in facts ? null : facts.loss;
};

function rowOf({ entry, family, own }: ListedLine, { at, frequencies }: LineConditions): LineRow {
  const facts = lineFacts(entry, at);
  const electrical = "noLine" in facts ? { impedance: null, velocityFactor: null, loss: null } : facts;
  return {
    designation: entry.designation,
    about: entry.about ?? "",
    family,
    own,
    side: lineSide(entry.model),
    impedance: electrical.impedance,
    velocityFactor: electrical.velocityFactor,
    loss: electrical.loss,
    losses: frequencies.map((frequency) => lossAt(entry, frequency)),
    jacket: entry.jacketDiameter ?? null,
    ratings: entry.ratings ?? {},
    price: entry.price ?? null,
    sources: entry.sources,
    notes: "noLine" in facts ? [facts.noLine] : facts.notes,
  };
}

/** Matched loss of new lines at 20 degrees Celsius; frequencies in Hz above 0, length in m. */
export const compareLines = (lines: readonly ListedLine[], conditions: LineConditions): LineComparison => ({
  ...conditions,
  rows: lines.map((line) => rowOf(line, conditions)),
});

/** What is left of 100 W after `length` metres in a matched line of `loss` dB/m. */
export const arriving = (loss: number, length: number): number => 100 * 10 ** ((-loss * length) / 10);
