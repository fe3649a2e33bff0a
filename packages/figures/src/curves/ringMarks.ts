/** Numbers on the curves: rings that always stand, dots whose number stands where it finds room. */
import type { Mark } from "../kit/figure";
import { type LabelBoard, type LabelPlace, type LabelStyle, textBox } from "../kit/labelBoard";
import { textWidth } from "../kit/textWidth";
import type { Ring } from "./chartTypes";
import type { PanelFrame } from "./panelFrame";

const inPanel = (frame: PanelFrame, rings: readonly Ring[], quiet: boolean): Ring[] =>
  rings.filter((ring) => ring.value >= frame.from && ring.value <= frame.to && (ring.quiet ?? false) === quiet);

const radius = (ring: Ring): number => (ring.quiet ? 2.8 : 4.2);

/** Keeps labels off all rings and dots. */
export function reserveRings(frame: PanelFrame, rings: readonly Ring[], board: LabelBoard): void {
  for (const ring of [...inPanel(frame, rings, false), ...inPanel(frame, rings, true)]) {
    const [x, y, r] = [frame.x(ring.at), frame.y(ring.value), radius(ring) * frame.s];
    board.reserve({ left: x - r, right: x + r, top: y - r, bottom: y + r });
  }
}

/** Around the point, nearest first, none over the numbers of the axis or above the panel's name. */
function placesAround(frame: PanelFrame, ring: Ring, text: string, size: number): LabelPlace[] {
  const { s, left, right, top } = frame;
  const [x, y] = [frame.x(ring.at), frame.y(ring.value)];
  const width = textWidth(text, size, 600);
  const sides = [
    { x: x - 8 * s, anchor: "end" as const, fits: x - 8 * s - width > left },
    { x: x + 8 * s, anchor: "start" as const, fits: x + 8 * s + width < right },
  ].filter(({ fits }) => fits);
  const above = [9, 16].flatMap((by) => sides.map((side) => ({ ...side, lines: [text], y: y - by * s })));
  const below = [19, 26].flatMap((by) => sides.map((side) => ({ ...side, lines: [text], y: y + by * s })));
  const centred = [-10, 20, 28, 36, 44, 54].map((by) => {
    const middle = Math.min(Math.max(x, left + width / 2 + 2), right - width / 2);
    return { lines: [text], x: middle, y: y + by * s, anchor: "middle" as const };
  });
  const far = sides.flatMap((side) => [
    { ...side, lines: [text], y: y + 36 * s },
    { ...side, lines: [text], y: y - 24 * s },
  ]);
  return [...above, ...below, ...centred, ...far].filter((place) => place.y > top - 14 * s);
}

const halo = { role: "paper", width: 4 } as const;

/** Rings with their numbers, in their own panel where they find room, and the dots without. */
export function ringMarks(frame: PanelFrame, rings: readonly Ring[], board: LabelBoard): Mark[] {
  const { s } = frame;
  const style: LabelStyle = { role: "ink", size: 13 * s, weight: 600, halo: { ...halo, width: halo.width * s } };
  const loud = inPanel(frame, rings, false);
  const texts = loud.flatMap((ring) => {
    const places = placesAround(frame, ring, ring.text, style.size);
    const inside = board.place(
      style,
      places.filter(({ y }) => y < frame.bottom - 3 * s),
    );
    const placed = inside.length > 0 ? inside : board.place(style, places);
    for (const box of placed.map(textBox)) board.reserve({ ...box, left: box.left - 6 * s, right: box.right + 6 * s });
    return placed;
  });
  const circle = (ring: Ring): Mark => ({
    kind: "circle",
    cx: frame.x(ring.at),
    cy: frame.y(ring.value),
    r: radius(ring) * s,
    ...(ring.quiet
      ? { fill: { role: "ink2" } as const }
      : { fill: { role: "paper" } as const, stroke: { role: "ink", width: 2 * s } as const }),
  });
  return [...inPanel(frame, rings, true).map(circle), ...loud.map(circle), ...texts];
}

/** Numbers of the dots, after every other word of the panel has its place. */
export function quietTexts(frame: PanelFrame, rings: readonly Ring[], board: LabelBoard): Mark[] {
  const { s } = frame;
  const style: LabelStyle = { role: "ink2", size: 13 * s, halo: { ...halo, width: halo.width * s } };
  return inPanel(frame, rings, true).flatMap((ring) => {
    const near = (text: string, px: number) =>
      placesAround(frame, ring, text, style.size).filter(
        ({ y }) =>
          y > frame.top + 4 * s && y < frame.bottom - 3 * s && Math.abs(y - 5 * s - frame.y(ring.value)) < px * s,
      );
    return board.place(style, [...near(ring.text, 18), ...near(ring.short ?? ring.text, 26)]);
  });
}
