/** Lines through all panels, each with its words above in a row of its own where they would run into others. */
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelStyle } from "../kit/labelBoard";
import { textWidth } from "../kit/textWidth";
import type { Chart, Vertical } from "./chartTypes";

/** px of a row of words at scale 1. */
export const rowHeight = 20;

export interface ArrangedVertical extends Vertical {
  /** px */
  readonly x: number;
  /** 0 is the row next to the panels; the line begins beside its words, or under them (middle). */
  readonly row: number;
  readonly anchor: "start" | "end" | "middle";
}

interface Spot {
  readonly row: number;
  readonly anchor: "start" | "end" | "middle";
  readonly left: number;
  readonly right: number;
}

type Placed = ArrangedVertical & Spot;

interface Candidate {
  readonly vertical: Vertical;
  readonly x: number;
  readonly spots: readonly Spot[];
}

const gap = 6;

/** The uppermost row that the line runs through. */
const topOf = ({ row, anchor }: Spot): number => (anchor === "middle" ? row - 1 : row);

/** Free when the words touch no words of their row, and no line runs through any words. */
function isFree(spot: Placed, placed: readonly Placed[]): boolean {
  const holds = (one: Spot, at: number) => at > one.left && at < one.right;
  return placed.every((other) => {
    if (other.row === spot.row && other.right + 2 * gap >= spot.left && spot.right + 2 * gap >= other.left)
      return false;
    const crossed = spot.row <= topOf(other) && holds(spot, other.x);
    return !crossed && !(other.row <= topOf(spot) && holds(other, spot.x));
  });
}

/** All of `rest` placed in the given number of rows, lowest row first; null where they do not fit. */
function search(rest: readonly Candidate[], rows: number, placed: readonly Placed[]): readonly Placed[] | null {
  const [first, ...others] = rest;
  if (!first) return placed;
  for (const spot of first.spots) {
    if (spot.row >= rows || !isFree({ ...first.vertical, ...spot, x: first.x }, placed)) continue;
    const found = search(others, rows, [...placed, { ...first.vertical, ...spot, x: first.x }]);
    if (found) return found;
  }
  return null;
}

/** Rows and sides for the words of all lines between `left` and `right` px, in as few rows as they fit in. */
export function arrangeVerticals(chart: Chart, left: number, right: number): readonly ArrangedVertical[] {
  const { verticals, axis, width, scale: s = 1 } = chart;
  const [from, to] = [Math.min(...axis.values), Math.max(...axis.values)];
  const inside = verticals.filter(({ at }) => at >= from && at <= to).toSorted((a, b) => b.at - a.at);
  const candidates = inside.map((vertical): Candidate => {
    const x = left + ((vertical.at - from) / (to - from)) * (right - left);
    const words = textWidth(vertical.text, 13 * s, 600);
    const [after, before] = [x + gap * s, x - gap * s];
    const spots = inside.flatMap((_, row): Spot[] => [
      { row, anchor: "start", left: after, right: after + words },
      { row, anchor: "end", left: before - words, right: before },
      { row, anchor: "middle", left: x - words / 2, right: x + words / 2 },
    ]);
    return { vertical, x, spots: spots.filter((spot) => spot.left >= 0 && spot.right <= width) };
  });
  for (let rows = 1; rows <= inside.length; rows++) {
    const found = search(candidates, rows, []);
    if (found) return found;
  }
  return candidates.map(({ vertical, x }, row) => ({ ...vertical, x, row, anchor: "start" }));
}

function strokeOf({ main, quiet }: Vertical, s: number): Stroke {
  if (quiet) return { role: "line", width: 1 * s };
  return main ? { role: "ink2", width: 1.6 * s } : { role: "ink", width: 1.4 * s, dash: `${2 * s} ${3 * s}` };
}

interface VerticalFrame {
  readonly s: number;
  readonly rows: number;
  /** y where the lines end, px. */
  readonly bottom: number;
}

export function verticalMarks(
  arranged: readonly ArrangedVertical[],
  { s, rows, bottom }: VerticalFrame,
  board: LabelBoard,
): Mark[] {
  return arranged.flatMap((vertical): Mark[] => {
    const { x, row, anchor, text, main } = vertical;
    const baseline = (rows - row) * rowHeight * s - 6 * s;
    const style: LabelStyle = { role: main ? "ink" : "ink2", size: 13 * s, weight: main ? 600 : 400 };
    const side = { start: gap * s, end: -gap * s, middle: 0 }[anchor];
    const texts = board.place(style, [{ lines: [text], x: x + side, y: baseline, anchor }]);
    const y1 = anchor === "middle" ? baseline + 5 * s : baseline - 9 * s;
    const line = { kind: "line", x1: x, y1, x2: x, y2: bottom } as const;
    return [{ ...line, stroke: strokeOf(vertical, s) }, ...texts];
  });
}
