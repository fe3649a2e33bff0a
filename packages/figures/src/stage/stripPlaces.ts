/** Where the strips of heat turn down, and what stands beside each. */
import { wattsText } from "../kit/numberText";
import { textWidth } from "../kit/textWidth";
import { type HeatStrip, joinPathStrips } from "./strips";

export interface StripLabel {
  readonly watts: string;
  /** "warms the soil", "soil"; null where there is no room for words. */
  readonly words: string | null;
  /** The words stand by themselves under the watts, in one of two rows. */
  readonly apart: boolean;
  readonly x: number;
  readonly anchor: "start" | "middle" | "end";
}

export interface PlacedStrip extends HeatStrip {
  /** Where the turn begins, px. */
  readonly turn: number;
  /** px, 1.5 at least. */
  readonly thickness: number;
  readonly label: StripLabel;
}

export interface StripLayout {
  readonly k: number;
  readonly s: number;
  readonly compact: boolean;
  readonly width: number;
}

export const innerRadius = (s: number): number => 9 * s;
type Style = Pick<StripLayout, "compact" | "s">;
export const wattsSize = ({ compact, s }: Style): number => (compact ? 13 : 17 * s);
export const wordsSize = ({ s }: Style): number => 13 * s;

const clearance = 12;

interface Wording {
  readonly words: (strip: HeatStrip) => string | null;
  readonly apart: boolean;
}

const shortWords = (strip: HeatStrip): string => strip.says.replace(/^the /, "");
const compactWords = (strip: HeatStrip): string => shortWords(strip).replace(/ together$/, "");

const wordings = (compact: boolean): Wording[] => {
  const bare: Wording = { words: () => null, apart: false };
  const short: Wording = { words: compact ? compactWords : shortWords, apart: false };
  const full: Wording = { words: (strip) => `warms ${strip.says}`, apart: false };
  return compact ? [short, { ...short, apart: true }, bare] : [full, short, bare];
};

function labelWidth({ watts, words, apart }: Omit<StripLabel, "x" | "anchor">, layout: StripLayout): number {
  const number = textWidth(watts, wattsSize(layout), 600);
  return words === null || apart ? number : Math.max(number, textWidth(words, wordsSize(layout)));
}

/** One strip after the other, each moved right until it is clear of the strip and label before it. */
function placeWith(
  strips: readonly HeatStrip[],
  layout: StripLayout,
  wording: Wording,
  squeeze: number,
): PlacedStrip[] {
  const { s, k, compact } = layout;
  const inner = innerRadius(s);
  let clearX = compact ? 2 : 4;
  return strips.map((strip) => {
    const text = { watts: wattsText(strip.watts), words: wording.words(strip), apart: wording.apart };
    const width = labelWidth(text, layout);
    const thickness = Math.max(strip.watts * k, 1.5);
    const start = strip.edge[0]![0];
    const wanted = strip.inPath ? strip.wanted : start + (strip.wanted - start) * squeeze;
    if (compact) {
      const half = Math.max(thickness, width) / 2;
      const middle = Math.max(wanted + inner + thickness / 2, clearX + clearance / 2 + half);
      clearX = middle + half;
      return {
        ...strip,
        thickness,
        turn: middle - inner - thickness / 2,
        label: { ...text, x: middle, anchor: "middle" },
      };
    }
    const leftOfStrip = wanted + inner - 10 * s;
    if (strip.inPath && leftOfStrip - width >= clearX + clearance) {
      clearX = wanted + inner + thickness;
      return { ...strip, thickness, turn: wanted, label: { ...text, x: leftOfStrip, anchor: "end" } };
    }
    const turn = Math.max(wanted, clearX + clearance - inner);
    const x = turn + inner + thickness + 10 * s;
    clearX = x + width;
    return { ...strip, thickness, turn, label: { ...text, x, anchor: "start" } };
  });
}

const rightEnd = (strip: PlacedStrip, layout: StripLayout): number => {
  const { x, anchor } = strip.label;
  const width = labelWidth(strip.label, layout);
  const edge = anchor === "start" ? x + width : anchor === "middle" ? x + width / 2 : x;
  return Math.max(edge, strip.turn + innerRadius(layout.s) + strip.thickness);
};

/**
 * Places the strips inside the width: first the antenna's move closer, then words go, then the parts of the path stand
 * together; never the watts.
 */
export function placeStrips(strips: readonly HeatStrip[], layout: StripLayout): PlacedStrip[] {
  const joined = joinPathStrips(strips);
  const tries = [strips, joined].flatMap((some) =>
    wordings(layout.compact).flatMap((wording) =>
      [1, 0.6, 0.2].map((squeeze) => () => placeWith(some, layout, wording, squeeze)),
    ),
  );
  let placed: PlacedStrip[] = [];
  for (const attempt of tries) {
    placed = attempt();
    const last = placed.at(-1);
    if (!last || rightEnd(last, layout) <= layout.width - 2) return placed;
  }
  return placed;
}
