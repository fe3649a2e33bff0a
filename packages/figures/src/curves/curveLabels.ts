/** Names on the curves and numbers on their rings. */
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import { textWidth } from "../kit/textWidth";
import type { Curve, Ring } from "./chartTypes";
import { insidePieces } from "./curveMarks";
import type { PanelFrame } from "./panelFrame";

const shares = [0.78, 0.7, 0.86, 0.62, 0.54, 0.46, 0.38, 0.3, 0.22, 0.14, 0.08];

/** Points of a curve at shares of its length from left to right. */
function pointsOn(frame: PanelFrame, xs: readonly number[], curve: Curve): readonly (readonly [number, number])[] {
  const all = insidePieces(frame, xs, curve.values).pieces.flatMap(({ points }) => points);
  return shares.flatMap((share) => {
    const x = frame.left + share * (frame.right - frame.left);
    const i = all.findIndex((point) => point[0] >= x);
    if (i < 1) return [];
    const [a, b] = [all[i - 1]!, all[i]!];
    const part = b[0] === a[0] ? 0 : (x - a[0]) / (b[0] - a[0]);
    return [[x, a[1] + part * (b[1] - a[1])] as const];
  });
}

/** Height of a curve at `x`, px; null where it is not drawn. */
function heightAt(frame: PanelFrame, xs: readonly number[], curve: Curve, x: number): number | null {
  for (const { points } of insidePieces(frame, xs, curve.values).pieces) {
    const i = points.findIndex((point) => point[0] >= x);
    if (i < 1) continue;
    const [a, b] = [points[i - 1]!, points[i]!];
    return b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
  }
  return null;
}

/** A label belongs to the curve it is nearest to, at its middle and at both ends. */
function belongs(
  frame: PanelFrame,
  xs: readonly number[],
  curve: Curve,
  others: readonly Curve[],
  place: LabelPlace & { readonly half: number },
): boolean {
  const middle = place.y - 4.5 * frame.s;
  const distance = (one: Curve, x: number) => {
    const y = heightAt(frame, xs, one, x);
    return y === null ? Number.POSITIVE_INFINITY : Math.abs(y - middle);
  };
  return [-0.9, 0, 0.9].every((side) => {
    const x = place.x + side * place.half;
    const own = distance(curve, x);
    return others.every((other) => other === curve || distance(other, x) > own + 3 * frame.s);
  });
}

interface Candidate extends LabelPlace {
  readonly half: number;
}

/** Places of one wording along a curve; the first curve prefers above, the next below. */
function candidates(
  frame: PanelFrame,
  xs: readonly number[],
  curve: Curve,
  label: string,
  above: boolean,
): Candidate[] {
  const { s } = frame;
  const half = textWidth(label, 13 * s, 600) / 2;
  const offsets = [7, 10, 14, 18, 26, 36].flatMap((by) => (above ? [-by, by + 9] : [by + 9, -by]));
  const points = pointsOn(frame, xs, curve);
  return offsets.flatMap((dy) =>
    points.map(([x, y]) => {
      const middle = Math.min(Math.max(x, frame.left + half + 2), frame.right - half - 2);
      return { lines: [label], x: middle, y: y + dy * s, anchor: "middle" as const, half };
    }),
  );
}

function curveLabel(
  frame: PanelFrame,
  xs: readonly number[],
  curves: readonly Curve[],
  order: number,
  board: LabelBoard,
): Mark[] {
  const { s } = frame;
  const curve = curves[order]!;
  const size = 13 * s;
  const halo = { role: "paper", width: 4 * s } as const;
  const style: LabelStyle = { role: curve.labelRole, size, weight: 600, id: curve.series, halo };
  const all = curve.labels.map((label) => candidates(frame, xs, curve, label, order === 0));
  const inPanel = all.map((places) =>
    places.filter(({ y }) => y - size > frame.top - 12 * s && y < frame.bottom - 3 * s),
  );
  const clear = inPanel.map((places) => places.filter((place) => belongs(frame, xs, curve, curves, place)));
  for (const choice of [...clear, ...inPanel, ...all]) {
    const marks = board.place(style, choice);
    if (marks.length > 0) return marks;
  }
  return [];
}

/** Label on each curve, at the first free place along it, in a shorter wording where the full one does not fit. */
export const curveLabels = (
  frame: PanelFrame,
  xs: readonly number[],
  curves: readonly Curve[],
  board: LabelBoard,
): Mark[] => curves.flatMap((_, order) => curveLabel(frame, xs, curves, order, board));

/** Rings with their numbers; the ring is drawn even where the number finds no place. */
export function ringMarks(frame: PanelFrame, rings: readonly Ring[], board: LabelBoard): Mark[] {
  const { s } = frame;
  const r = 4.2 * s;
  const inside = rings.filter(({ value }) => value >= frame.from && value <= frame.to);
  for (const { at, value } of inside) {
    const [x, y] = [frame.x(at), frame.y(value)];
    board.reserve({ left: x - r, right: x + r, top: y - r, bottom: y + r });
  }
  const halo = { role: "paper", width: 4 * s } as const;
  const style: LabelStyle = { role: "ink", size: 13 * s, weight: 600, halo };
  const texts = inside.flatMap(({ at, value, text }) => {
    const [x, y] = [frame.x(at), frame.y(value)];
    const offsets = [9, 16, 24].flatMap((by): LabelPlace[] => [
      { lines: [text], x: x - 8 * s, y: y - by * s, anchor: "end" },
      { lines: [text], x: x + 8 * s, y: y - by * s },
      { lines: [text], x: x + 8 * s, y: y + (by + 10) * s },
      { lines: [text], x: x - 8 * s, y: y + (by + 10) * s, anchor: "end" },
    ]);
    return board.place(style, offsets);
  });
  const circles = inside.map(({ at, value }): Mark => {
    const fill = { role: "paper" } as const;
    return { kind: "circle", cx: frame.x(at), cy: frame.y(value), r, fill, stroke: { role: "ink", width: 2 * s } };
  });
  return [...circles, ...texts];
}
