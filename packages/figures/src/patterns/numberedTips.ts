/** Lobes told by number where their words have no room at their tips: the number at the tip, the words below the picture. */
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace } from "../kit/labelBoard";
import { wrapText } from "../kit/textWidth";
import type { PolarFrame } from "./polarFrame";

export interface Tip {
  /** On the picture, degrees from the right hand. */
  readonly angle: number;
  /** dBi. */
  readonly gain: number;
}

/** Pictures narrower than this (px at scale 1) have no room beside the outermost ring. */
const narrow = 480;
/** More lobes than this crowd their words at any width. */
const crowded = 6;

export const tellsByNumber = (width: number, s: number, lobes: number): boolean =>
  width < narrow * s || lobes > crowded;

/** "1", "2", ... just outside the tips. */
export function tipNumbers(frame: PolarFrame, tips: readonly Tip[], board: LabelBoard): Mark[] {
  const { s } = frame;
  const style = { role: "fieldInk", size: 13 * s, weight: 700, halo: { role: "paper", width: 3 * s } } as const;
  return tips.flatMap(({ angle, gain }, i) => {
    const places = [13, 24, 36].flatMap((out) =>
      [0, 5, -5, 10, -10].map((turn): LabelPlace => {
        const [x, y] = frame.at(angle + turn, frame.radiusOf(gain) + out * s);
        return { lines: [String(i + 1)], x, y: y + 4 * s, anchor: "middle" };
      }),
    );
    return board.place(style, places);
  });
}

/** The words of each number, wrapped to the picture's width. */
export const numberedLines = (words: readonly string[], width: number, s: number): string[] =>
  words.flatMap((one, i) => wrapText(`${i + 1}: ${one}`, 12 * s, width - 8 * s));
