/** Words of the view from above. */
import type { Mark } from "../kit/figure";
import { type LabelBoard, type LabelPlace, type LabelStyle, textBox } from "../kit/labelBoard";
import type { Point } from "../kit/outline";
import type { Inset } from "./insetPlan";
import type { StagePlan } from "./stagePlan";

export interface InsetThings {
  readonly azimuth: number;
  /** Of the line of the cut, px: towards its azimuth, and behind. */
  readonly ends: readonly [Point, Point];
  readonly transmitter: Point | null;
}

const beside = (text: string, [x, y]: Point, s: number): LabelPlace[] => [
  { lines: [text], x: x - 9 * s, y: y + 4.5 * s, anchor: "end" },
  { lines: [text], x: x + 9 * s, y: y + 4.5 * s },
  { lines: [text], x, y: y + 18 * s, anchor: "middle" },
  { lines: [text], x, y: y - 9 * s, anchor: "middle" },
];

/** Beside the transmitter, else left of the circle with a line to it. */
function transmitterLabel([x, y]: Point, inset: Inset, board: LabelBoard): Mark[] {
  const { s, cx, cy, radius } = inset;
  if (Math.hypot(x - cx, y - cy) < 12 * s) return [];
  const style: LabelStyle = { role: "ink2", size: 13 * s };
  const near = beside("transmitter", [x, y], s);
  const away = [0, 20, -20, 36].map((by): LabelPlace => {
    return { lines: ["transmitter"], x: cx - radius - 10 * s, y: y + (by + 4.5) * s, anchor: "end" };
  });
  const [text] = board.place(style, [...near, ...away]);
  if (!text) return [];
  const box = textBox(text);
  if (!away.some((place) => place.x === text.x)) return [text];
  const [x1, y1] = [box.right + 3 * s, text.y - 4.5 * s];
  const leader: Mark = { kind: "line", x1, y1, x2: x - 5.5 * s, y2: y, stroke: { role: "line", width: 1 * s } };
  return [leader, text];
}

/** At either end of the line of the cut: beside a steep end, over or under a level one. */
function cutLabel(plan: StagePlan, inset: Inset, things: InsetThings, board: LabelBoard): Mark[] {
  const { s } = inset;
  const text = "line of the cut";
  const ends = things.ends.toSorted((a, b) => b[1] - a[1]);
  const places = ends.flatMap(([x, y]): LabelPlace[] => {
    const heights = [y + 2 * s, y - 6 * s, y - 14 * s, y + 16 * s];
    return [
      ...heights.map((at): LabelPlace => ({ lines: [text], x: x + 7 * s, y: at })),
      ...heights.map((at): LabelPlace => ({ lines: [text], x: x - 7 * s, y: at, anchor: "end" })),
      ...[y - 7 * s, y + 17 * s].flatMap((at): LabelPlace[] => [
        { lines: [text], x: x + 2 * s, y: at, anchor: "end" },
        { lines: [text], x: x - 2 * s, y: at },
        { lines: [text], x: plan.width - 2 * s, y: at, anchor: "end" },
      ]),
    ];
  });
  return board.place(
    { role: "ink2", size: 13 * s },
    places.filter(({ y }) => y < plan.surfaceY - 12 * s),
  );
}

/** All words. Conductors and people are named in the section. */
export function insetLabels(plan: StagePlan, inset: Inset, things: InsetThings, board: LabelBoard): Mark[] {
  const { s, cx, cy, radius } = inset;
  const overCut: LabelStyle = { role: "ink2", size: 13 * s, halo: { role: "paper", width: 4 * s } };
  const title = board.place(
    { role: "ink", size: 13 * s, weight: 600 },
    [14, 32, 50, 68, 86].map((off) => ({ lines: ["from above"], x: cx - off * s, y: 14 * s, anchor: "end" as const })),
  );
  const north = board.place(
    overCut,
    [7, 24, 42].map((off) => ({ lines: ["north"], x: cx + off * s, y: 14 * s })),
  );
  const east = board.place(
    overCut,
    [4, -11, 19].map((down) => ({ lines: ["east"], x: cx + radius + 8 * s, y: cy + down * s })),
  );
  const transmitter = things.transmitter ? transmitterLabel(things.transmitter, inset, board) : [];
  const cut = cutLabel(plan, inset, things, board);
  return [...title, ...north, ...east, ...transmitter, ...cut];
}
