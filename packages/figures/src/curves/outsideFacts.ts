/** What the pictures of the outside of the line share: where chokes, earths and ends lie, and how shares are written. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber, requiredNumber } from "../kit/answerValues";
import { metresText, plainText, significantText, withUnit } from "../kit/numberText";
import type { Curve, Vertical } from "./chartTypes";

/** "72 mA", "1.2 A". */
export const amperesText = (amperes: number): string =>
  amperes < 0.0995 ? withUnit(significantText(1000 * amperes, 2), "mA") : withUnit(significantText(amperes, 2), "A");

/** Percent as numbers, whole from ten up. */
export const percentText = (percent: number): string =>
  withUnit(percent >= 9.95 ? plainText(percent, 0) : significantText(percent, 2), "%");

export const ohmsText = (ohms: number): string =>
  Math.abs(ohms) >= 999.5 ? withUnit(significantText(ohms / 1000, 2), "kΩ") : withUnit(significantText(ohms, 2), "Ω");

export interface PlaceAlong {
  readonly name: string;
  /** m from the transmitter's end. */
  readonly at: number;
}

/** From a parameter "NAME at METRES; NAME at METRES". */
function placesIn(answer: Answer, parameter: string): PlaceAlong[] {
  const text = answer.parameters[parameter];
  if (typeof text !== "string" || text === "") return [];
  return text.split("; ").map((entry) => {
    const cut = entry.lastIndexOf(" at ");
    return { name: entry.slice(0, cut), at: Number(entry.slice(cut + 4)) };
  });
}

export interface Along {
  readonly length: number;
  readonly chokes: readonly PlaceAlong[];
  readonly bonds: readonly PlaceAlong[];
  /** Earth at the transmitter's end; null: floating. */
  readonly earthed: string | null;
  readonly largestAt: number;
}

export function alongOf(answer: Answer): Along {
  const { earthed } = answer.parameters;
  return {
    length: requiredNumber(answer, "lengthOfOutside"),
    chokes: placesIn(answer, "places"),
    bonds: placesIn(answer, "bonds"),
    earthed: typeof earthed === "string" ? earthed : null,
    largestAt: requiredNumber(answer, "outsideCurrentAt"),
  };
}

export function verticalsAlong({ chokes, bonds }: Along): Vertical[] {
  return [
    ...chokes.map(({ name, at }) => ({ at, text: name, main: true })),
    ...bonds.map(({ name, at }) => ({ at, text: `tied to ${name}`, main: false })),
  ];
}

/** Where the place lies, in words. */
export const placeWords = ({ length }: Along, at: number): string =>
  at > length - 0.02
    ? "at the feed point"
    : at < 0.02
      ? "at the transmitter"
      : `${metresText(at)} from the transmitter`;

/** Top of a scale of shares (percent): all of it, but no more than `most`. */
export function shareTop(values: readonly number[], most: number): number {
  const highest = Math.min(Math.max(6, ...values), most);
  const step = highest <= 12 ? 2 : highest <= 30 ? 5 : highest <= 60 ? 10 : highest <= 120 ? 20 : 50;
  return step * Math.ceil(highest / step);
}

/** The mark of a quiet line as a curve: 5 percent everywhere. */
export const quietMark = (count: number): Curve => ({
  series: "quiet",
  values: Array.from({ length: count }, () => 5),
  role: "line",
  labelRole: "ink2",
  dashed: true,
  labels: ["quiet below 5 %", "5 %"],
});

export const noChokes = (answer: Answer): boolean => optionalNumber(answer, "chokeHeatOnAir") === null;
