/** One bar of watts. */
import type { Mark } from "../kit/figure";
import type { LineRow } from "./lineFacts";

/** px at scale 1. */
export const bar = 16;

/** The present line solid, any other dashed, with its doubt as a thin line through the end. */
export function barMarks(row: LineRow, x: number, y: number, scale: number, s: number): Mark[] {
  const end = x + row.watts * scale;
  const height = bar * s;
  const datum = { series: row.name, index: 0 };
  const body: Mark = row.present
    ? { kind: "rect", x, y, width: end - x, height, fill: { role: "power" }, datum }
    : {
        kind: "rect",
        x,
        y,
        width: end - x,
        height,
        fill: { role: "powerTint" },
        stroke: { role: "power", width: 1.4 * s, dash: `${5 * s} ${3 * s}` },
        datum,
      };
  const [low, high] = [x + row.low * scale, x + row.high * scale];
  if (high - low < 3 * s) return [body];
  const middle = y + height / 2;
  const stroke = { role: "ink", width: 1.2 * s } as const;
  return [body, { kind: "line", x1: low, y1: middle, x2: high, y2: middle, stroke }];
}
