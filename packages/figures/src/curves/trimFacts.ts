/** What an answer about lengths says: as it is, the lengths that matter, and the message. Lengths in metres. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredNumber } from "../kit/answerValues";
import { fixedText, plainText, swrText, withUnit } from "../kit/numberText";
import { valueAt } from "./tableValues";

export interface TrimLengths {
  readonly present: number;
  readonly target: number | null;
  readonly targetAtFeedPoint: number | null;
  readonly resonance: number | null;
}

export function trimLengthsOf(answer: Answer): TrimLengths {
  return {
    present: requiredNumber(answer, "presentLength"),
    target: optionalNumber(answer, "lengthForLowestSwr"),
    targetAtFeedPoint: optionalNumber(answer, "lengthForLowestSwrAtFeedPoint"),
    resonance: optionalNumber(answer, "lengthForResonance"),
  };
}

/** Centimetres from one metre up, millimetres below. */
export const lengthText = (metres: number): string => withUnit(fixedText(metres, metres < 1 ? 3 : 2), "m");

export const megahertzText = (hertz: number): string => withUnit(plainText(hertz / 1e6, 3), "MHz");

const swrNear = (table: Table, length: number): string => swrText(valueAt(table, "swrAtTransmitter", length));

export function lengthsTitle(answer: Answer, table: Table, { present, target }: TrimLengths): string {
  const at = `at ${megahertzText(answer.frequency)}`;
  if (target === null) return `No length near ${lengthText(present)} gives a lowest SWR ${at}`;
  const [now, best] = [swrNear(table, present), swrNear(table, target)];
  if (now === best) return `${lengthText(present)} is right ${at}: SWR ${now}`;
  return `${lengthText(target)} gives the lowest SWR ${at}: ${best}, where ${lengthText(present)} give ${now}`;
}

export function describeLengths(answer: Answer, table: Table, lengths: TrimLengths): string {
  const axis = numbersOf(table, "length");
  const { present, target, targetAtFeedPoint, resonance } = lengths;
  const span = `SWR over the length from ${lengthText(axis[0]!)} to ${lengthText(axis.at(-1)!)} at ${megahertzText(answer.frequency)}, at the antenna and on the meter.`;
  const now = ` As it is, with ${lengthText(present)}, the meter shows ${swrNear(table, present)}.`;
  const best = target === null ? "" : ` The meter shows least with ${lengthText(target)}: ${swrNear(table, target)}.`;
  const wire = targetAtFeedPoint === null ? "" : ` At the antenna it is least with ${lengthText(targetAtFeedPoint)}.`;
  const zero = resonance === null ? "" : ` X = 0 at the feed point with ${lengthText(resonance)}.`;
  return `${span}${now}${best}${wire}${zero}`;
}
