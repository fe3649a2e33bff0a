/** What an answer about heights says: as it is, the tempting choice, and the message. Heights in metres. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber } from "../kit/answerValues";
import { metresText, swrText, wattsText, wholeWattsText } from "../kit/numberText";
import { valueAt } from "./tableValues";

/** As it is, and the tempting choice; heights outside the table are left out. */
export interface Heights {
  readonly present: number | null;
  readonly lowestSwr: number | null;
}

export function heightsOf(answer: Answer, table: Table): Heights {
  const axis = numbersOf(table, "height");
  const inside = (name: string) => {
    const at = optionalNumber(answer, name);
    return at === null || at < Math.min(...axis) || at > Math.max(...axis) ? null : at;
  };
  return { present: inside("presentHeight"), lowestSwr: inside("lowestSwrHeight") };
}

/** Heights nearer than this are one, m. */
const sameHeight = 0.25;
export const isSame = ({ present, lowestSwr }: Heights): boolean =>
  present !== null && lowestSwr !== null && Math.abs(present - lowestSwr) < sameHeight;

export function titleOf(answer: Answer, table: Table, heights: Heights): string {
  const { present, lowestSwr } = heights;
  const now = present === null ? null : valueAt(table, "radiatedPower", present);
  const then = lowestSwr === null ? null : valueAt(table, "radiatedPower", lowestSwr);
  if (present === null || lowestSwr === null || now === null || then === null) return answer.headline;
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
  return `Four panels over the height above the soil: watts to the sky, SWR, gain, feed point.${at(heights.present, "As it hangs")}${at(heights.lowestSwr, "Where the SWR is lowest")}${splits}`;
}
