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
  /** At the first of the frequencies; null where further modes can travel there. Ohm, and as a ratio. */
  readonly impedance: Quantity | null;
  readonly velocityFactor: Quantity | null;
  /** dB/m by frequency; null where further modes can travel. */
  readonly losses: readonly (Quantity | null)[];
  /** m over the jacket; null where it is not known, or where there is none. */
  readonly jacket: number | null;
  readonly ratings: LineRatings;
  readonly price: NonNullable<LineEntry["price"]> | null;
  readonly sources: LineEntry["sources"];
  /** Where the numbers at the first frequency are weaker than they look. */
  readonly notes: readonly string[];
}

export interface LineComparison {
  /** Hz, one at least. */
  readonly frequencies: readonly number[];
  /** m of the run that is looked at; null for none. */
  readonly length: number | null;
  readonly rows: readonly LineRow[];
}

/** Own lines stand under this. */
export const ownFamily = "lines of this station";

function rowOf({ entry, family, own }: ListedLine, frequencies: readonly number[]): LineRow {
  const facts = frequencies.map((frequency) => lineFacts(entry, frequency));
  const [first = null] = facts;
  return {
    designation: entry.designation,
    about: entry.about ?? "",
    family,
    own,
    side: lineSide(entry.model),
    impedance: first?.impedance ?? null,
    velocityFactor: first?.velocityFactor ?? null,
    losses: facts.map((one) => one?.loss ?? null),
    jacket: entry.jacketDiameter ?? null,
    ratings: entry.ratings ?? {},
    price: entry.price ?? null,
    sources: entry.sources,
    notes: first ? first.notes : ["Further modes can travel at this frequency: the line is no longer a line there."],
  };
}

/** Frequencies in Hz (above 0, one at least), length in m or null. Matched loss of new lines at 20 degrees Celsius. */
export const compareLines = (
  lines: readonly ListedLine[],
  frequencies: readonly number[],
  length: number | null,
): LineComparison => ({ frequencies, length, rows: lines.map((line) => rowOf(line, frequencies)) });

/** What is left of 100 W behind `length` metres in a matched line of `loss` dB/m. */
export const arriving = (loss: number, length: number): number => 100 * 10 ** ((-loss * length) / 10);
