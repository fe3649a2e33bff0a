/** The station itself in the section: transmitter, line with what sits on it, wires, feed point. */
import type { Answer, Drawing } from "@feedpath/engine";
import { boxesAlong } from "../kit/box";
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { type Point, roundedPolyline } from "../kit/outline";
import { projection } from "./cut";
import { partsInUse } from "./partsInUse";
import { linePoints, partsOnLine, sleeve, toPicture } from "./partsOnLine";
import type { StagePlan } from "./stagePlan";

/** px; wires that project narrower than this are seen from their end. */
const shortest = 12;

export function feedPlace(drawing: Drawing, plan: StagePlan): Point {
  return [plan.xFeed, plan.surfaceY - (drawing.feedPoint[2] ?? 0) * plan.ppm];
}

const wireEnds = (drawing: Drawing, plan: StagePlan): (readonly [Point, Point])[] => {
  const project = projection(drawing);
  const place = toPicture(plan);
  return drawing.wires.map((wire) => [place(project(wire.from)), place(project(wire.to))]);
};

/** Wires that show less than two fifths of what they run level, and that is narrower than a ring. */
export function seenFromEnd(drawing: Drawing, plan: StagePlan): boolean {
  const ends = drawing.wires.flatMap((wire) => [wire.from, wire.to]);
  const shown = wireEnds(drawing, plan).flatMap(([a, b]) => [a[0], b[0]]);
  const spread = (of: (place: readonly number[]) => number) => Math.max(...ends.map(of)) - Math.min(...ends.map(of));
  const level = Math.hypot(
    spread(([x = 0]) => x),
    spread(([, y = 0]) => y),
  );
  const width = Math.max(...shown) - Math.min(...shown);
  return ends.length > 0 && width < Math.min(shortest, 0.4 * level * plan.ppm);
}

/** y of the highest wire, px. */
export const highestWire = (drawing: Drawing, plan: StagePlan): number =>
  Math.min(feedPlace(drawing, plan)[1], ...wireEnds(drawing, plan).flatMap(([a, b]) => [a[1], b[1]]));

/** Keeps labels off the wires, and off the line while they have another place. */
export function reserveStation(answer: Answer, drawing: Drawing, plan: StagePlan, board: LabelBoard): void {
  const { s } = plan;
  for (const ends of wireEnds(drawing, plan)) boxesAlong(ends, 2 * s).forEach(board.reserve);
  const points = linePoints(answer, drawing, plan);
  boxesAlong(points, 2 * s).forEach(board.avoidFirmly);
  const { x, bottom } = transmitterBox(points, plan);
  board.reserve({ left: x - 14 * s, right: x + 14 * s, top: bottom - 19 * s, bottom });
  for (const { at } of partsOnLine(answer, drawing, plan)) {
    board.reserve({ left: at[0] - 8 * s, right: at[0] + 8 * s, top: at[1] - 8 * s, bottom: at[1] + 8 * s });
  }
  board.reserve({ left: 0, right: plan.width, top: plan.surfaceY - 2, bottom: plan.surfaceY + 2 });
}

/** Middle and lower edge of the transmitter, px; left of the feed point where it stands at it. */
export function transmitterBox(
  points: readonly Point[],
  plan: StagePlan,
): { readonly x: number; readonly bottom: number } {
  const { s, xFeed, surfaceY } = plan;
  const [x = xFeed, y = surfaceY] = points[0] ?? [];
  const last = points.at(-1) ?? [x, y];
  const atFeed = Math.hypot(last[0] - x, last[1] - y) < 12 * s;
  const bottom = atFeed ? Math.min(y + 9 * s, surfaceY) : Math.min(y + 3 * s, surfaceY);
  return { x: atFeed ? x - 19 * s : x, bottom };
}

function wireMarks(drawing: Drawing, plan: StagePlan): Mark[] {
  const { s } = plan;
  return wireEnds(drawing, plan).map((ends, i): Mark => {
    const [[x1, y1], [x2, y2]] = ends;
    const id = drawing.antennaName;
    const datum = { series: "wires", index: i };
    const bare = Math.hypot(x2 - x1, y2 - y1) < 4 * s;
    if (bare) return { kind: "circle", id, datum, cx: x1, cy: y1, r: 2 * s, fill: { role: "ink" } };
    return { kind: "line", id, datum, x1, y1, x2, y2, stroke: { role: "ink", width: 2.6 * s } };
  });
}

/** Everything that can be touched, without words. */
export function stationMarks(answer: Answer, drawing: Drawing, plan: StagePlan): Mark[] {
  const { s } = plan;
  const points = linePoints(answer, drawing, plan);
  const { x: tx, bottom } = transmitterBox(points, plan);
  const stroke = { role: "ink", width: 1.7 * s } as const;
  const lineIds = partsInUse(answer)
    .filter((part) => part.kind === "line")
    .map((part) => part.name);
  const [fx, fy] = feedPlace(drawing, plan);
  const box = { x: tx - 13 * s, y: bottom - 18 * s, width: 26 * s, height: 18 * s };
  return [
    ...wireMarks(drawing, plan),
    {
      kind: "path",
      id: lineIds.join(", ") || "line",
      d: roundedPolyline(points, 7 * s),
      stroke: { role: "power", width: 3 * s },
    },
    ...partsOnLine(answer, drawing, plan).map((one) => sleeve(one, s)),
    { kind: "rect", id: "transmitter", ...box, fill: { role: "paper" }, stroke },
    { kind: "circle", id: "feed point", cx: fx, cy: fy, r: 6 * s, fill: { role: "paper" }, stroke },
    { kind: "circle", id: "feed point", cx: fx, cy: fy, r: 2 * s, fill: { role: "ink" } },
  ];
}
