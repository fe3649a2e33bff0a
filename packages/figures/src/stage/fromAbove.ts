/** The small plan at the right: north up, where the cut runs, the pattern by azimuth. */
import type { Answer, Drawing } from "@feedpath/engine";
import { numbersOf, requiredTable } from "../kit/answerValues";
import { boxesAlong } from "../kit/box";
import type { Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelPlace } from "../kit/labelBoard";
import { type Point, polyline } from "../kit/outline";
import type { StagePlan } from "./stagePlan";

interface Inset {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly reach: number;
  readonly s: number;
}

const insetOf = ({ width, s }: StagePlan): Inset => ({
  cx: width - 124 * s,
  cy: 88 * s,
  radius: 58 * s,
  reach: 74 * s,
  s,
});

/** px from the centre: clockwise from north, `distance` px. */
const bearing = ({ cx, cy }: Inset, azimuth: number, distance: number): Point => {
  const angle = (azimuth * Math.PI) / 180;
  return [cx + distance * Math.sin(angle), cy - distance * Math.cos(angle)];
};

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

function planMarks(drawing: Drawing, inset: Inset): { marks: Mark[]; transmitter: Point } {
  const { cx, cy, radius, reach, s } = inset;
  const [fx = 0, fy = 0] = drawing.feedPoint;
  const offset = ([x = 0, y = 0]: readonly number[]) => [x - fx, y - fy] as const;
  const route = drawing.lineRoute.map(offset);
  const wires = drawing.wires.map((wire) => [offset(wire.from), offset(wire.to)] as const);
  const far = (points: readonly (readonly [number, number])[]) => Math.max(0.1, ...points.map((p) => Math.hypot(...p)));
  const ppm = Math.min((0.9 * radius) / far(wires.flat()), (reach + 6 * s) / far(route));
  const place = ([x, y]: readonly [number, number]): Point => [cx + x * ppm, cy - y * ppm];
  const wireStroke: Stroke = { role: "ink", width: 2.4 * s };
  const drawn = wires.map(([a, b]): Mark => {
    const [x1, y1] = place(a);
    const [x2, y2] = place(b);
    return { kind: "line", id: drawing.antennaName, x1, y1, x2, y2, stroke: wireStroke };
  });
  const transmitter = route[0] ? place(route[0]) : ([cx, cy] as Point);
  const line: Mark = { kind: "path", d: polyline(route.map(place)), stroke: { role: "power", width: 2.4 * s } };
  const [tx, ty] = transmitter;
  const side = 9 * s;
  const box: Mark = {
    kind: "rect",
    id: "transmitter",
    x: tx - side / 2,
    y: ty - side / 2,
    width: side,
    height: side,
    fill: { role: "paper" },
    stroke: { role: "ink", width: 1.4 * s },
  };
  const feed: Mark = { kind: "circle", cx, cy, r: 2.8 * s, fill: { role: "ink" } };
  return { marks: [...(route.length > 1 ? [line] : []), ...drawn, ...(route[0] ? [box] : []), feed], transmitter };
}

function insetLabels(plan: StagePlan, inset: Inset, azimuth: number, transmitter: Point, board: LabelBoard): Mark[] {
  const { s, cx, cy, radius, reach } = inset;
  const soft = { role: "ink2", size: 13 * s } as const;
  const title = board.place({ role: "ink", size: 13 * s, weight: 600 }, [
    ...[14, 32, 50].map((off) => ({ lines: ["from above"], x: cx - off * s, y: 14 * s, anchor: "end" as const })),
  ]);
  const overCut = { ...soft, halo: { role: "paper", width: 4 * s } } as const;
  const north = board.place(
    overCut,
    [7, 24].map((off) => ({ lines: ["north"], x: cx + off * s, y: 14 * s })),
  );
  const east = board.place(overCut, [{ lines: ["east"], x: cx + radius + 8 * s, y: cy + 4 * s }]);
  const core = 0.75 * radius;
  board.reserve({ left: cx - core, right: cx + core, top: cy - radius, bottom: cy + radius });
  const [tx, ty] = transmitter;
  const atCentre = Math.hypot(tx - cx, ty - cy) < 12 * s;
  const around = (text: string, [x, y]: Point, side: 1 | -1): LabelPlace[] => [
    { lines: [text], x: x + side * 9 * s, y: y + 4.5 * s, anchor: side < 0 ? "end" : "start" },
    { lines: [text], x: x - side * 9 * s, y: y + 4.5 * s, anchor: side < 0 ? "start" : "end" },
    { lines: [text], x, y: y + 18 * s, anchor: "middle" },
    { lines: [text], x, y: y - 9 * s, anchor: "middle" },
    { lines: [text], x: plan.width - 2 * s, y: y - 9 * s, anchor: "end" },
    { lines: [text], x: plan.width - 2 * s, y: y + 18 * s, anchor: "end" },
  ];
  const transmitterText = atCentre ? [] : board.place(soft, around("transmitter", transmitter, -1));
  const ends = [azimuth + 180, azimuth].map((at) => bearing(inset, at, reach + 12 * s));
  const lower = ends.toSorted((a, b) => b[1] - a[1]);
  const across = (azimuth * Math.PI) / 180;
  const off = Math.abs((tx - cx) * Math.cos(across) + (ty - cy) * Math.sin(across));
  if (!atCentre && off < 8 * s && ty > cy) lower.unshift(transmitter);
  const cut = lower.flatMap((end) => around("line of the cut", end, 1));
  const cutText = board.place(
    soft,
    cut.filter(({ y }) => y < plan.surfaceY - 12 * s),
  );
  return [...title, ...north, ...east, ...transmitterText, ...cutText];
}

/** Nothing in compact pictures. */
export function fromAbove(answer: Answer, plan: StagePlan, board: LabelBoard): Mark[] {
  const { drawing } = answer;
  if (plan.compact || !drawing || plan.maximumHeight !== null) return [];
  const inset = insetOf(plan);
  const { s, reach } = inset;
  const azimuth = drawing.cutAzimuth;
  const [x1, y1] = bearing(inset, azimuth, reach + 12 * s);
  const [x2, y2] = bearing(inset, azimuth + 180, reach + 26 * s);
  const cut: Mark = {
    kind: "line",
    x1,
    y1,
    x2,
    y2,
    stroke: { role: "ink2", width: 1 * s, dash: `${8 * s} ${3 * s} ${2 * s} ${3 * s}` },
  };
  boxesAlong(
    [
      [x1, y1],
      [x2, y2],
    ],
    1.5 * s,
  ).forEach(board.avoid);
  const { marks, transmitter } = planMarks(drawing, inset);
  const [tx, ty] = transmitter;
  board.reserve({ left: tx - 7 * s, right: tx + 7 * s, top: ty - 7 * s, bottom: ty + 7 * s });
  return [...patternMarks(answer, inset), cut, ...marks, ...insetLabels(plan, inset, azimuth, transmitter, board)];
}
