/** The small plan at the right: north up, where the cut runs, the pattern by azimuth. */
import type { Answer, Drawing } from "@feedpath/engine";
import { numbersOf, requiredTable } from "../kit/answerValues";
import { boxesAlong, clipped } from "../kit/box";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { type Point, polyline } from "../kit/outline";
import { insetLabels } from "./insetLabels";
import { bearing, type Inset, insetOf } from "./insetPlan";
import type { StagePlan } from "./stagePlan";

function patternMarks(answer: Answer, inset: Inset): Mark[] {
  const table = requiredTable(answer, "azimuthCut");
  const azimuths = numbersOf(table, "azimuth");
  const gains = numbersOf(table, "gain");
  const most = Math.max(...gains);
  const outline = gains.map((gain, i) => bearing(inset, azimuths[i]!, inset.radius * 10 ** ((gain - most) / 20)));
  const circle: Mark = {
    kind: "circle",
    cx: inset.cx,
    cy: inset.cy,
    r: inset.radius,
    stroke: { role: "hair", width: 1 * inset.s },
  };
  const fill = { role: "field", opacity: 0.2 } as const;
  return [
    circle,
    { kind: "path", id: "sky", d: polyline(outline, true), fill, stroke: { role: "field", width: 1.3 * inset.s } },
  ];
}

interface PlanView {
  readonly marks: readonly Mark[];
  /** px; null where the file has no route and the transmitter stands at the feed point. */
  readonly transmitter: Point | null;
  readonly route: readonly Point[];
  readonly wires: readonly (readonly [Point, Point])[];
  readonly conductors: readonly (readonly [Point, Point])[];
  readonly people: readonly Point[];
}

function planView(drawing: Drawing, inset: Inset): PlanView {
  const { cx, cy, radius, reach, s } = inset;
  const [fx = 0, fy = 0] = drawing.feedPoint;
  const offset = ([x = 0, y = 0]: readonly number[]) => [x - fx, y - fy] as const;
  const route = drawing.lineRoute.map(offset);
  const wires = drawing.wires.map((wire) => [offset(wire.from), offset(wire.to)] as const);
  const far = (points: readonly (readonly [number, number])[]) => Math.max(0.1, ...points.map((p) => Math.hypot(...p)));
  const ppm = Math.min((0.9 * radius) / far(wires.flat()), (reach + 6 * s) / far(route));
  const place = ([x, y]: readonly [number, number]): Point => [cx + x * ppm, cy - y * ppm];
  const around = surroundingsFromAbove(drawing, inset, (at) => place(offset(at)));
  const drawn = wires.map(([from, to]) => [place(from), place(to)] as const);
  const points = route.map(place);
  const marks = [
    ...around.marks,
    ...(points.length > 1
      ? [{ kind: "path", d: polyline(points), stroke: { role: "power", width: 2.4 * s } } as const]
      : []),
    ...drawn.map(([from, to]) => straight(from, to, { role: "ink", width: 2.4 * s }, drawing.antennaName)),
    ...(points[0] ? [transmitterMark(points[0], s)] : []),
    { kind: "circle", cx, cy, r: 2.8 * s, fill: { role: "ink" } } as const,
  ];
  return { ...around, marks, transmitter: points[0] ?? null, route: points, wires: drawn };
}

const straight = ([x1, y1]: Point, [x2, y2]: Point, stroke: Stroke, id: string): Mark => ({
  kind: "line",
  id,
  x1,
  y1,
  x2,
  y2,
  stroke,
});

function transmitterMark([x, y]: Point, s: number): Mark {
  const side = 9 * s;
  const box = { x: x - side / 2, y: y - side / 2, width: side, height: side };
  return { kind: "rect", id: "transmitter", ...box, fill: { role: "paper" }, stroke: { role: "ink", width: 1.4 * s } };
}

/** Conductors as far as the view reaches, and rings for the people in it. */
function surroundingsFromAbove(drawing: Drawing, { cx, cy, reach, s }: Inset, place: (at: readonly number[]) => Point) {
  const far = reach + 10 * s;
  const frame = { left: cx - far, right: cx + far, top: Math.max(1, cy - far), bottom: cy + far };
  const stroke: Stroke = { role: "line", width: 3.2 * s };
  const pieces = drawing.surroundings.flatMap(({ name, points }) =>
    points.slice(1).flatMap((end, i) => {
      const ends = clipped(place(points[i]!), place(end), frame);
      return ends ? [{ name, ends }] : [];
    }),
  );
  const near = drawing.people
    .map(({ name, at }) => ({ name, at: place(at) }))
    .filter(({ at: [x, y] }) => Math.hypot(x - cx, y - cy) < far);
  const rings = near.map(({ name, at: [x, y] }): Mark => {
    const ring = { role: "field", width: 1.6 * s } as const;
    return { kind: "circle", id: name, cx: x, cy: y, r: 3 * s, fill: { role: "paper" }, stroke: ring };
  });
  return {
    marks: [...pieces.map(({ name, ends: [from, to] }) => straight(from, to, stroke, name)), ...rings],
    conductors: pieces.map(({ ends }) => ends),
    people: near.map(({ at }) => at),
  };
}

/** Nothing in compact pictures and presentations. */
export function fromAbove(answer: Answer, plan: StagePlan, board: LabelBoard): Mark[] {
  const { drawing } = answer;
  const inset = insetOf(plan);
  if (!drawing || !inset) return [];
  const { s, reach, radius, cx, cy } = inset;
  const azimuth = drawing.cutAzimuth;
  const [from, to] = [bearing(inset, azimuth, reach + 12 * s), bearing(inset, azimuth + 180, reach + 26 * s)];
  const cut: Mark = {
    kind: "line",
    x1: from[0],
    y1: from[1],
    x2: to[0],
    y2: to[1],
    stroke: { role: "ink2", width: 1 * s, dash: `${8 * s} ${3 * s} ${2 * s} ${3 * s}` },
  };
  const view = planView(drawing, inset);
  const circle = Array.from({ length: 37 }, (_, i) => bearing(inset, 10 * i, radius));
  boxesAlong(circle, 1.5 * s).forEach(board.avoid);
  boxesAlong([from, to], 2 * s).forEach(board.avoidFirmly);
  boxesAlong(view.route, 2 * s).forEach(board.avoidFirmly);
  for (const ends of view.conductors) boxesAlong(ends, 2.5 * s).forEach(board.avoidFirmly);
  for (const ends of view.wires) boxesAlong(ends, 2 * s).forEach(board.reserve);
  const squares = [[cx, cy] as Point, ...(view.transmitter ? [view.transmitter] : []), ...view.people];
  for (const [x, y] of squares) board.reserve({ left: x - 6 * s, right: x + 6 * s, top: y - 6 * s, bottom: y + 6 * s });
  const core = 0.6 * radius;
  board.reserve({ left: cx - core, right: cx + core, top: cy - core, bottom: cy + core });
  const labels = insetLabels(plan, inset, { azimuth, ends: [from, to], ...view }, board);
  return [...patternMarks(answer, inset), cut, ...view.marks, ...labels];
}
