/** What is compared between lines: constants and matched loss at a frequency, each with the spread of the entry's values. */
import { speedOfLight } from "../numerics/vacuum";
import { significantNumber, withPrefix } from "../quantity/format";
import { isQuantity, type Quantity } from "../quantity/quantity";
import { decibelsPerNeper, type LineConstants, lineConstants } from "./lineConstants";
import type { LineEntry, LineModel } from "./lineModel";
import { radiationLoss } from "./radiationLoss";
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

/** Shares of its power that a pair may radiate and still be taken for a line, and that are worth a word: our rule. */
const mostRadiated = 0.1;
const toldRadiated = 0.01;

/** Share a pair radiates over half a wave or more; null for other lines. */
const radiatedShare = (model: LineModel, frequency: number): number | null =>
  model.kind === "parallel-wire" ? radiationLoss(model, frequency, speedOfLight / frequency / 2).share : null;

/** Why an entry is no line at `frequency` (Hz), as a sentence; null where it is one. */
function noLine({ model, build }: LineEntry, frequency: number): string | null {
  const models = build ? [model, build] : [model];
  const cutOff = Math.min(...models.flatMap((one) => greatestFrequency(one) ?? []));
  if (frequency > cutOff)
    return `Above ${withPrefix(cutOff, "Hz", 3)} further modes can travel in it: it is no longer a line.`;
  const share = Math.max(...models.map((one) => radiatedShare(one, frequency) ?? 0));
  return share > mostRadiated
    ? `At ${withPrefix(frequency, "Hz", 3)} the pair is so wide that it would radiate over a tenth of its power: it is no longer a line.`
    : null;
}

function radiationNotes(model: LineModel, frequency: number): string[] {
  const share = radiatedShare(model, frequency) ?? 0;
  if (share < toldRadiated) return [];
  return [
    `The pair radiates about ${significantNumber(100 * share, 2)} % of its power at ${withPrefix(frequency, "Hz", 3)}, from its ends: not in the loss.`,
  ];
}

/** Or why there are none: nothing is computed where the entry is no line. `frequency` in Hz, above 0. */
export function lineFacts(entry: LineEntry, frequency: number): LineFacts | { readonly noLine: string } {
  const why = noLine(entry, frequency);
  if (why !== null) return { noLine: why };
  const { model } = entry;
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
    notes: [...nominal.notes, ...radiationNotes(model, frequency)],
  };
}
