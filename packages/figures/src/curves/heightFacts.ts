/** What an answer about heights says: as it is, the tempting choice, and the message. Heights in metres. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn } from "../kit/answerValues";
import { metresText, swrText, wattsText, wholeWattsText } from "../kit/numberText";
import { valueAt } from "./tableValues";

/** As it is, and the tempting choice; heights outside the table are left out, and a lowest SWR that reads no lower. */
export interface Heights {
  readonly present: number | null;
  readonly lowestSwr: number | null;
}

/** Heights nearer than this are one, m. */
const sameHeight = 0.25;
const near = (a: number | null, b: number | null): boolean => a !== null && b !== null && Math.abs(a - b) < sameHeight;

export function heightsOf(answer: Answer, table: Table): Heights {
  const axis = numbersOf(table, "height");
  const inside = (name: string) => {
    const at = optionalNumber(answer, name);
    return at === null || at < Math.min(...axis) || at > Math.max(...axis) ? null : at;
  };
  const [present, lowestSwr] = [inside("presentHeight"), inside("lowestSwrHeight")];
  const shown = (height: number | null) => (height === null ? "" : swrText(valueAt(table, "swrAtTransmitter", height)));
  const tempting = lowestSwr !== null && (near(present, lowestSwr) || shown(lowestSwr) !== shown(present));
  return { present, lowestSwr: tempting ? lowestSwr : null };
}

export const isSame = ({ present, lowestSwr }: Heights): boolean => near(present, lowestSwr);

/** The message where the SWR does not tell heights apart. */
function mostWatts(table: Table, present: number, now: number): string {
  const watts = requiredColumn(table, "radiatedPower").values.map((value) => value ?? 0);
  const most = Math.max(...watts);
  const best = numbersOf(table, "height")[watts.indexOf(most)]!;
  const here = `${wholeWattsText(now)} leave at ${metresText(present)}`;
  return most - now < 0.5
    ? `${here}, and no height sends more`
    : `${here}, and ${wholeWattsText(most)} at ${metresText(best)}`;
}

export function titleOf(answer: Answer, table: Table, heights: Heights): string {
  const { present, lowestSwr } = heights;
  const now = present === null ? null : valueAt(table, "radiatedPower", present);
  const then = lowestSwr === null ? null : valueAt(table, "radiatedPower", lowestSwr);
  if (present === null || now === null) return answer.headline;
  if (lowestSwr === null || then === null) return mostWatts(table, present, now);
  if (isSame(heights))
    return `At ${metresText(present)}, as it hangs, the SWR is lowest, and ${wholeWattsText(now)} leave`;
  const change = then - now;
  const where = `At ${metresText(lowestSwr)} the SWR is lowest`;
  if (Math.abs(change) < 0.5) return `${where}, and no more and no fewer watts leave than at ${metresText(present)}`;
  const direction = change < 0 ? "fewer" : "more";
  return `${where}, and ${wholeWattsText(Math.abs(change))} ${direction} leave than at ${metresText(present)}`;
}

export function describe(answer: Answer, table: Table, heights: Heights): string {
  const at = (height: number | null, words: string) => {
    const [sky, swr] = ["radiatedPower", "swrAtTransmitter"].map((name) =>
      height === null ? null : valueAt(table, name, height),
    );
    return height === null || sky === null || sky === undefined
      ? ""
      : ` ${words}, at ${metresText(height)}, ${wattsText(sky)} leave for the sky and the SWR at the transmitter is ${swrText(swr ?? null)}.`;
  };
  const split = optionalNumber(answer, "splitHeight");
  const splits = split === null ? "" : ` Above ${metresText(split)} the pattern splits.`;
  const lobes = answer.tables.some((one) => one.name === "lobesByHeight") ? ", where the lobes stand" : "";
  return `Panels over the height above the soil: watts to the sky, SWR, gain${lobes}, feed point.${at(heights.present, "As it hangs")}${at(heights.lowestSwr, "Where the SWR is lowest")}${splits}`;
}
