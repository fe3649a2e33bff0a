/** Names on the curves. */
import type { Mark } from "../kit/figure";
import type { LabelBoard, LabelPlace, LabelStyle } from "../kit/labelBoard";
import type { Point } from "../kit/outline";
import { textWidth } from "../kit/textWidth";
import type { Curve } from "./chartTypes";
import { insidePieces } from "./curveMarks";
import type { PanelFrame } from "./panelFrame";

const shares = [0.78, 0.7, 0.86, 0.62, 0.54, 0.46, 0.38, 0.3, 0.22, 0.14, 0.08];

/** A curve with its pieces inside the panel, px. */
interface Drawn extends Curve {
  readonly pieces: readonly (readonly Point[])[];
}

/** Height of a curve at `x`, px; null where it is not drawn. */
function heightAt({ pieces }: Drawn, x: number): number | null {
  for (const points of pieces) {
    const i = points.findIndex((point) => point[0] >= x);
    if (i < 1) continue;
    const [a, b] = [points[i - 1]!, points[i]!];
    return b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
  }
  return null;
}

interface Candidate extends LabelPlace {
  readonly half: number;
}

/** A label belongs to the curve it is nearest to, at its middle and at both ends. */
function belongs(curve: Drawn, others: readonly Drawn[], place: Candidate, s: number): boolean {
  const middle = place.y - 4.5 * s;
  const distance = (one: Drawn, x: number) => {
    const y = heightAt(one, x);
    return y === null ? Number.POSITIVE_INFINITY : Math.abs(y - middle);
  };
  return [-0.9, 0, 0.9].every((side) => {
    const x = place.x + side * place.half;
    const own = distance(curve, x);
    return others.every((other) => other === curve || distance(other, x) > own + 3 * s);
  });
}

/** Places of one wording along a curve; the first curve prefers above, the next below. */
function candidates(frame: PanelFrame, curve: Drawn, label: string, above: boolean): Candidate[] {
  const { s, left, right } = frame;
  const half = textWidth(label, 13 * s, 600) / 2;
  const offsets = [7, 10, 14, 18, 26, 36].flatMap((by) => (above ? [-by, by + 9] : [by + 9, -by]));
  const points = shares.flatMap((share) => {
    const x = left + share * (right - left);
    const y = heightAt(curve, x);
    return y === null ? [] : [[x, y] as const];
  });
  return offsets.flatMap((dy) =>
    points.map(([x, y]) => {
      const middle = Math.min(Math.max(x, left + half + 2), right - half - 2);
      return { lines: [label], x: middle, y: y + dy * s, anchor: "middle" as const, half };
    }),
  );
}

function curveLabel(frame: PanelFrame, curves: readonly Drawn[], order: number, board: LabelBoard): Mark[] {
  const { s } = frame;
  const curve = curves[order]!;
  const size = 13 * s;
  const halo = { role: "paper", width: 4 * s } as const;
  const style: LabelStyle = { role: curve.labelRole, size, weight: 600, id: curve.series, halo };
  const all = curve.labels.map((label) => candidates(frame, curve, label, order === 0));
  const inPanel = all.map((places) =>
    places.filter(({ y }) => y - size > frame.top - 12 * s && y < frame.bottom - 3 * s),
  );
  const clear = inPanel.map((places) => places.filter((place) => belongs(curve, curves, place, s)));
  for (const choice of [...clear, ...inPanel, ...all]) {
    const marks = board.place(style, choice);
    if (marks.length > 0) return marks;
  }
  return [];
}

/** Label on each curve, at the first free place along it, in a shorter wording where the full one does not fit. */
export function curveLabels(
  frame: PanelFrame,
  xs: readonly number[],
  curves: readonly Curve[],
  board: LabelBoard,
): Mark[] {
  const drawn = curves.map((curve) => ({
    ...curve,
    pieces: insidePieces(frame, xs, curve.values).pieces.map(({ points }) => points),
  }));
  return drawn.flatMap((_, order) => curveLabel(frame, drawn, order, board));
}
