/** What the figures of `line` read from its answer. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredTable } from "../kit/answerValues";
import { fixedText, plainText, significantText, swrText, withUnit } from "../kit/numberText";

export interface LineRow {
  readonly name: string;
  readonly watts: number;
  readonly low: number;
  readonly high: number;
  readonly present: boolean;
  readonly proposed: boolean;
  /** 1 as it is, 2 of another impedance, 3 with something at its ends. */
  readonly standing: number;
  /** "0.6 dB", "SWR 1.7", "4.3 kg", "38 EUR"; "" where it is not known. */
  readonly loss: string;
  readonly swr: string;
  readonly weight: string;
  readonly price: string;
}

export interface BarGroup {
  readonly heading: string;
  readonly rows: readonly LineRow[];
}

export function lineRows(answer: Answer): LineRow[] {
  const table = requiredTable(answer, "shortList");
  const [watts, standing, present] = ["wattsIntoAntenna", "standing", "present"].map((name) => numbersOf(table, name));
  const { low, high } = requiredColumn(table, "wattsIntoAntenna");
  const text = (name: string, write: (value: number) => string) => {
    const { values } = requiredColumn(table, name);
    return (i: number): string => (values[i] === null || values[i] === undefined ? "" : write(values[i]));
  };
  const loss = text("lossAtLoad", (x) => withUnit(fixedText(x, x < 0.095 ? 2 : 1), "dB"));
  const swr = text("swrSeen", swrText);
  const weight = text("weight", (x) => withUnit(significantText(x, 2), "kg"));
  const price = text("price", (x) => withUnit(plainText(x, 0), requiredColumn(table, "price").unit));
  return watts!.map((w, i) => {
    const name = table.labels?.[i] ?? String(i + 1);
    return {
      name,
      watts: w,
      low: low?.[i] ?? w,
      high: high?.[i] ?? w,
      present: present![i] === 1,
      proposed: name === answer.parameters.proposal,
      standing: standing![i]!,
      loss: loss(i),
      swr: swr(i),
      weight: weight(i),
      price: price(i),
    };
  });
}

/** Headings by standing, for a line between coaxial joints and for a pair. */
const headings = {
  coaxial: ["coaxial, as it is", "coaxial, another impedance", "pairs, a transformer at each end"],
  balanced: ["pairs", "other pairs", "coaxial, a choke at the antenna"],
} as const;

export function barGroups(answer: Answer, rows: readonly LineRow[]): BarGroup[] {
  const side = answer.parameters.side === "balanced" ? "balanced" : "coaxial";
  return headings[side].flatMap((heading, i) => {
    const members = rows.filter((row) => row.standing === i + 1);
    return members.length > 0 ? [{ heading, rows: members }] : [];
  });
}
