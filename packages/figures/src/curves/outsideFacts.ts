/** What the pictures of the outside of the line share: where chokes, earths and ends lie, and how shares are written. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber, requiredNumber } from "../kit/answerValues";
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { metresText, plainText, significantText, withUnit } from "../kit/numberText";
import type { Vertical } from "./chartTypes";
import type { PanelFrame } from "./panelFrame";

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

/** A thin line at 5 percent: below it the line counts as quiet. */
export function quietLine({ s, left, right, top, y }: PanelFrame, board: LabelBoard): Mark[] {
  const at = y(5);
  if (at < top) return [];
  board.avoid({ left, right, top: at - 2, bottom: at + 2 });
  const style = { role: "ink2", size: 13 * s, halo: { role: "paper", width: 3 * s } } as const;
  const places = [right - 4 * s, left + 0.5 * (right - left)].flatMap((x) =>
    [-6 * s, 15 * s].map((by) => ({ lines: ["quiet below 5 %"], x, y: at + by, anchor: "end" as const })),
  );
  const line: Mark = { kind: "line", x1: left, y1: at, x2: right, y2: at, stroke: { role: "ink2", width: 1 * s } };
  return [line, ...board.placeClear(style, places)];
}

export const noChokes = (answer: Answer): boolean => optionalNumber(answer, "chokeHeatOnAir") === null;
