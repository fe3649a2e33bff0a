/** Outline of a strip of heat: under the band, a quarter turn, and down. */
import type { Mark } from "../kit/figure";
import { arcTo, lineTo, moveTo, type Point } from "../kit/outline";
import { innerRadius, type PlacedStrip } from "./stripPlaces";

export interface StripFrame {
  /** y of the band's level upper edge. */
  readonly top: number;
  readonly k: number;
  readonly s: number;
  /** y where the drop ends. */
  readonly bottom: number;
  readonly drop: number;
}

/** px; thinner strips are drawn as thin as this and solid. */
const thinnest = 1.5;

export function stripMark(strip: PlacedStrip, frame: StripFrame): Mark {
  const { top, k, s, bottom } = frame;
  const inner = innerRadius(s);
  const low = top + k * strip.before;
  const thin = k * strip.watts < thinnest;
  const high = thin ? low - strip.thickness : top + k * strip.after;
  const start = strip.edge[0]![0];
  const upper = thin ? [] : strip.edge.map(([x, power]): Point => [x, top + k * power]);
  const right = strip.turn + inner + strip.thickness;
  const d =
    moveTo([start, low]) +
    (upper.length > 0 ? upper : [[start, high] as Point]).map(lineTo).join("") +
    lineTo([strip.turn, high]) +
    arcTo(inner + strip.thickness, [right, low + inner], true) +
    lineTo([right, bottom]) +
    lineTo([strip.turn + inner, bottom]) +
    lineTo([strip.turn + inner, low + inner]) +
    arcTo(inner, [strip.turn, low], false) +
    "Z";
  const fade = { to: "none", direction: "down", start: bottom - 0.55 * frame.drop, end: bottom } as const;
  return thin
    ? { kind: "path", id: strip.id, d, fill: { role: "heat", fade } }
    : {
        kind: "path",
        id: strip.id,
        d,
        fill: { role: "heat", pattern: "hatch", fade },
        stroke: { role: "heat", width: 0.9 * s },
      };
}
