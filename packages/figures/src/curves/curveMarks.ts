/** Curves and their bands of doubt, cut at the panel's edges with a mark where they leave it. */
import { area, curveMonotoneX, line } from "d3-shape";
import { boxesAlong } from "../kit/box";
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import type { Point } from "../kit/outline";
import type { Curve } from "./chartTypes";
import type { PanelFrame } from "./panelFrame";

const within = (frame: PanelFrame, value: number): boolean => value >= frame.from && value <= frame.to;

export interface Piece {
  readonly points: readonly Point[];
}

interface Cut {
  readonly pieces: readonly Piece[];
  /** Where the curve leaves the panel, px; true: upwards. */
  readonly leaves: readonly { readonly at: Point; readonly up: boolean }[];
}

/** Runs of the curve inside the panel in px, with the crossing of the edge worked out between two points. */
export function insidePieces(frame: PanelFrame, xs: readonly number[], values: readonly (number | null)[]): Cut {
  const pieces: Point[][] = [];
  const leaves: { at: Point; up: boolean }[] = [];
  let run: Point[] = [];
  const end = () => {
    if (run.length > 1) pieces.push(run);
    run = [];
  };
  for (const [i, value] of values.entries()) {
    const before = i > 0 ? values[i - 1] : null;
    if (value === null) {
      end();
      continue;
    }
    const inside = within(frame, value);
    if (before !== null && before !== undefined && inside !== within(frame, before)) {
      const outer = inside ? before : value;
      const edge = outer > frame.to ? frame.to : frame.from;
      const share = (edge - before) / (value - before);
      const crossing: Point = [frame.x(xs[i - 1]! + share * (xs[i]! - xs[i - 1]!)), frame.y(edge)];
      leaves.push({ at: crossing, up: edge === frame.to });
      run.push(crossing);
    }
    if (inside) run.push([frame.x(xs[i]!), frame.y(value)]);
    else end();
  }
  end();
  return { pieces: pieces.map((points) => ({ points })), leaves };
}

function spreadMark(frame: PanelFrame, xs: readonly number[], curve: Curve): Mark[] {
  const { low, high } = curve;
  if (!low || !high) return [];
  const clamp = (value: number) => frame.y(Math.min(frame.to, Math.max(frame.from, value)));
  const shape = area<number>()
    .x((i) => frame.x(xs[i]!))
    .y0((i) => clamp(low[i]!))
    .y1((i) => clamp(high[i]!))
    .curve(curveMonotoneX)
    .digits(2);
  const d = shape(xs.map((_, i) => i));
  return d ? [{ kind: "path", d, fill: { role: curve.role, opacity: 0.15 } }] : [];
}

function leaveMark({ at: [x, y], up }: Cut["leaves"][number], curve: Curve, s: number): Mark {
  const tip = up ? y - 5 * s : y + 5 * s;
  const base = up ? y + 2 * s : y - 2 * s;
  return {
    kind: "path",
    d: `M${x - 4 * s},${base}L${x},${tip}L${x + 4 * s},${base}`,
    stroke: { role: curve.role, width: 1.4 * s },
  };
}

/** Bands first, so that no band hides a curve. */
export function curveMarks(frame: PanelFrame, xs: readonly number[], curves: readonly Curve[]): Mark[] {
  const { s } = frame;
  const path = line<Point>().curve(curveMonotoneX).digits(2);
  const drawn = curves.flatMap((curve): Mark[] => {
    const { pieces, leaves } = insidePieces(frame, xs, curve.values);
    const dash = curve.dashed ? { dash: `${6 * s} ${4 * s}` } : {};
    const lines = pieces.flatMap(({ points }): Mark[] => {
      const d = path([...points]);
      const stroke = { role: curve.role, width: 2.2 * s, ...dash };
      return d ? [{ kind: "path", id: curve.series, d, stroke }] : [];
    });
    return [...lines, ...leaves.map((leave) => leaveMark(leave, curve, s))];
  });
  return [...curves.flatMap((curve) => spreadMark(frame, xs, curve)), ...drawn];
}

/** Keeps labels off the curves. */
export function reserveCurves(
  frame: PanelFrame,
  xs: readonly number[],
  curves: readonly Curve[],
  board: LabelBoard,
): void {
  const pieces = curves.flatMap((curve) => insidePieces(frame, xs, curve.values).pieces);
  for (const { points } of pieces) boxesAlong(points, 2.5 * frame.s).forEach(board.reserve);
}
