/** What is compared between lines: constants and matched loss at a frequency, each with the spread of the entry's values. */
import { isQuantity, type Quantity } from "../quantity/quantity";
import { decibelsPerNeper, type LineConstants, lineConstants } from "./lineConstants";
import type { LineEntry, LineModel } from "./lineModel";
import { greatestFrequency } from "./te11";

export interface LineFacts {
  readonly side: "coaxial" | "balanced";
  /** Ohm, real part of the characteristic impedance. */
  readonly impedance: Quantity;
  readonly velocityFactor: Quantity;
  /** Matched loss of a new line at 20 degrees Celsius, dB/m. */
  readonly loss: Quantity;
  /** Sentences on where the numbers are weaker than they look. */
  readonly notes: readonly string[];
}

/** Coaxial lines have one side at the shield's potential; a wire over a plane counts with them. */
export const lineSide = (model: LineModel): LineFacts["side"] => {
  if (model.kind === "data sheet") return model.side;
  return model.kind === "coaxial" || model.kind === "wire over plane" ? "coaxial" : "balanced";
};

/** The same thing with every quantity in it at one end of its range. */
function moved<T>(thing: T, end: "low" | "high"): T {
  if (typeof thing !== "object" || thing === null) return thing;
  if (isQuantity(thing)) return { ...thing, value: thing[end] };
  if (Array.isArray(thing)) return thing.map((one) => moved(one, end)) as T;
  return Object.fromEntries(Object.entries(thing).map(([key, value]) => [key, moved(value, end)])) as T;
}

/** Null where the line may carry further modes: nothing is computed there. `frequency` in Hz, above 0. */
export function lineFacts(entry: LineEntry, frequency: number): LineFacts | null {
  const { model, build } = entry;
  const ends = [model, ...(build ? [build] : [])].map(greatestFrequency);
  if (ends.some((end) => end !== null && frequency > end)) return null;
  const nominal = lineConstants(model, frequency);
  const extremes = (["low", "high"] as const).map((end) => lineConstants(moved(model, end), frequency));
  const spread = (of: (constants: LineConstants) => number): Quantity => {
    const found = [nominal, ...extremes].map(of);
    return { value: found[0]!, low: Math.min(...found), high: Math.max(...found), basis: "catalogue" };
  };
  return {
    side: lineSide(model),
    impedance: spread(({ z0 }) => z0.re),
    velocityFactor: spread((constants) => constants.velocityFactor),
    loss: spread(({ gamma }) => gamma.re * decibelsPerNeper),
    notes: nominal.notes,
  };
}
