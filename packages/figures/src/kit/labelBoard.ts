/** Places labels so that none lies outside the figure or over another: the first of its places that is free is taken. */
import { type Box, inside, overlap } from "./box";
import type { Mark, Role } from "./figure";
import { textWidth } from "./textWidth";

export type TextMark = Extract<Mark, { kind: "text" }>;

export interface LabelStyle {
  readonly role: Role;
  readonly size: number;
  readonly weight?: 400 | 600 | 700;
  readonly italic?: boolean;
  readonly face?: "words" | "numbers";
  readonly halo?: { readonly role: Role; readonly width: number };
  readonly id?: string;
}

/** A possible place: lines of text (a shorter wording may be tried later), their anchor point and the first baseline. */
export interface LabelPlace {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly anchor?: "start" | "middle" | "end";
}

/** Box around a text mark by the estimated width; `y` is the baseline. */
export function textBox(mark: TextMark): Box {
  const width = textWidth(mark.text, mark.size, mark.weight);
  const left = mark.anchor === "end" ? mark.x - width : mark.anchor === "middle" ? mark.x - width / 2 : mark.x;
  return { left, right: left + width, top: mark.y - 0.78 * mark.size, bottom: mark.y + 0.2 * mark.size };
}

function textMarks(place: LabelPlace, styles: readonly LabelStyle[]): TextMark[] {
  let y = place.y;
  return place.lines.map((text, line) => {
    const { face, ...style } = styles[Math.min(line, styles.length - 1)]!;
    if (line > 0) y += 1.25 * style.size;
    return { kind: "text", text, x: place.x, y, anchor: place.anchor ?? "start", face: face ?? "numbers", ...style };
  });
}

export interface LabelBoard {
  /** Keeps labels off this box. */
  readonly reserve: (box: Box) => void;
  /** Keeps labels off this box while they have another place; meant for lines that a halo may interrupt. */
  readonly avoid: (box: Box) => void;
  /** As `avoid`, given up last: lines that tell more than an outline. */
  readonly avoidFirmly: (box: Box) => void;
  /**
   * Texts at the first free place, or none. `styles`: one a line (the last holds for the rest).
   * A place is free when its text lies inside the figure and touches no reserved box and no label; boxes to avoid
   * count in a first round only, those to avoid firmly in a second too.
   */
  readonly place: (styles: LabelStyle | readonly LabelStyle[], places: readonly LabelPlace[]) => TextMark[];
  /** As `place`, but none rather than one on a box that is to be avoided firmly. */
  readonly placeClear: (styles: LabelStyle | readonly LabelStyle[], places: readonly LabelPlace[]) => TextMark[];
}

/** A board of `width` x `height` px. */
export function createLabelBoard(width: number, height: number): LabelBoard {
  const taken: Box[] = [];
  const avoided: Box[] = [];
  const firmly: Box[] = [];
  const frame: Box = { left: 0, top: 0, right: width, bottom: height };
  const isFree = (box: Box, others: readonly Box[]): boolean =>
    inside(box, frame) && !others.some((other) => overlap(box, other));
  const firstFree = (styles: readonly LabelStyle[], places: readonly LabelPlace[], others: readonly Box[]) => {
    for (const place of places) {
      const marks = textMarks(place, styles);
      if (marks.every((one) => isFree(textBox(one), others))) return marks;
    }
    return null;
  };
  const choose = (
    styles: LabelStyle | readonly LabelStyle[],
    places: readonly LabelPlace[],
    rounds: readonly Box[][],
  ) => {
    const list = "role" in styles ? [styles] : styles;
    for (const others of rounds) {
      const marks = firstFree(list, places, others);
      if (!marks) continue;
      taken.push(...marks.map(textBox));
      return marks;
    }
    return [];
  };
  return {
    reserve: (box) => {
      taken.push(box);
    },
    avoid: (box) => {
      avoided.push(box);
    },
    avoidFirmly: (box) => {
      firmly.push(box);
    },
    place: (styles, places) =>
      choose(styles, places, [[...taken, ...firmly, ...avoided], [...taken, ...firmly], taken]),
    placeClear: (styles, places) =>
      choose(styles, places, [
        [...taken, ...firmly, ...avoided],
        [...taken, ...firmly],
      ]),
  };
}
