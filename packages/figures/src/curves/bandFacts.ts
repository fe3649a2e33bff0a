/** What an answer about a band says: the wanted span, where antenna and meter differ, the message. Frequencies in MHz. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, numericParameter, optionalNumber, requiredColumn, requiredNumber } from "../kit/answerValues";
import { fixedText, plainText, swrText, withUnit } from "../kit/numberText";
import { valueAt } from "./tableValues";

export const atAntenna = "swrAtFeedPoint";
export const onMeter = "swrAtTransmitter";

export interface Wanted {
  readonly from: number;
  readonly to: number;
}

export function wantedOf(answer: Answer): Wanted | null {
  const [from, to] = [numericParameter(answer, "sweepFrom"), numericParameter(answer, "sweepTo")];
  return from === null || to === null ? null : { from, to };
}

/** Decimals that keep neighbouring frequencies of the span apart. */
export const frequencyDecimals = (table: Table): number => {
  const axis = numbersOf(table, "frequency");
  const span = axis.at(-1)! - axis[0]!;
  return span < 0.02 ? 4 : span < 0.1 ? 3 : span < 5 ? 2 : 1;
};

export interface Difference {
  readonly at: number;
  readonly antenna: number;
  readonly meter: number;
}

/** Where the two differ most: the answer's own frequency; null where the path transforms and the two do not compare. */
export function differenceOf(answer: Answer, table: Table): Difference | null {
  const at = optionalNumber(answer, "swrDifferenceFrequency");
  if (at === null) return null;
  const [antenna, meter] = [valueAt(table, atAntenna, at), valueAt(table, onMeter, at)];
  return antenna === null || meter === null ? null : { at, antenna, meter };
}

const tellingDifference = 0.1;
export const isTelling = (one: Difference | null): one is Difference =>
  one !== null && Math.abs(one.antenna - one.meter) >= tellingDifference;

/** Values of a column in the wanted band; of the whole table where none is wanted. */
function insideWanted(table: Table, name: string, wanted: Wanted | null): number[] {
  const axis = numbersOf(table, "frequency");
  const near = 1e-6;
  return requiredColumn(table, name).values.filter(
    (value, i): value is number =>
      value !== null && (wanted === null || (axis[i]! >= wanted.from - near && axis[i]! <= wanted.to + near)),
  );
}

export function titleOf(table: Table, difference: Difference | null, wanted: Wanted | null): string {
  if (isTelling(difference)) {
    const [antenna, meter] = [swrText(difference.antenna), swrText(difference.meter)];
    return difference.antenna > difference.meter
      ? `The line flatters: the antenna is at ${antenna} where the meter shows ${meter}`
      : `The line adds: the antenna is at ${antenna} where the meter shows ${meter}`;
  }
  const numbers = insideWanted(table, onMeter, wanted);
  const [least, most] = [swrText(Math.min(...numbers)), swrText(Math.max(...numbers))];
  const span = `SWR ${least === most ? least : `${least} to ${most}`}`;
  return difference === null ? `The meter in the shack shows ${span}` : `Antenna and meter agree: ${span}`;
}

/** Above this the scale stops, unless the wanted band needs more: small values are what is read off the curve. */
const usualTop = 5;

/** Enough for the meter in the wanted band, or for three times its least value there, and for 10 at most otherwise. */
export function topOf(table: Table, wanted: Wanted | null): number {
  const inside = insideWanted(table, onMeter, wanted);
  const [least, most] = [Math.min(...inside), Math.max(...inside)];
  return Math.min(Math.max(10, 3 * least), Math.max(usualTop, 1.1 * most));
}

export function describe(answer: Answer, difference: Difference | null, decimals: number): string {
  const lowest = requiredNumber(answer, "lowestSwrFrequency");
  const resonant = optionalNumber(answer, "resonantFrequency");
  const megahertz = (value: number) => withUnit(fixedText(value, decimals), "MHz");
  const differ = difference
    ? ` At ${megahertz(difference.at)} the antenna is at SWR ${swrText(difference.antenna)} and the meter shows ${swrText(difference.meter)}.`
    : "";
  const resonance =
    resonant === null ? "It is not resonant in this span." : `It is resonant (X = 0) at ${megahertz(resonant)}.`;
  return `SWR over frequency, at the antenna and on the meter in the shack. The meter reads lowest at ${megahertz(lowest)}. ${resonance}${differ}`;
}

export function panelName(answer: Answer): string {
  const reference = answer.joints[0]?.swr.reference;
  return reference === undefined ? "SWR" : `SWR on ${withUnit(plainText(reference, 1), "Ω")}`;
}
