/** The line in the picture, and the parts that are seen on it. */
import type { Answer, Drawing, PartResult } from "@feedpath/engine";
import type { Mark } from "../kit/figure";
import type { Point } from "../kit/outline";
import { lineLength, unrolledLine } from "./cut";
import { partsInUse } from "./partsInUse";
import type { StagePlan } from "./stagePlan";

/** From [distance along the cut, height] in metres to px. */
export const toPicture =
  (plan: StagePlan) =>
  ([x, z]: readonly [number, number]): Point => [plan.xFeed + x * plan.ppm, plan.surfaceY - z * plan.ppm];

/** The line in px, from the transmitter; it lies a little above the soil so that both are seen. */
export function linePoints(answer: Answer, drawing: Drawing, plan: StagePlan): Point[] {
  const place = toPicture(plan);
  const lift = 3 * plan.s;
  return unrolledLine(answer, drawing).map((point) => {
    const [x, y] = place(point);
    return [x, point[1] >= 0 ? Math.min(y, plan.surfaceY - lift) : y];
  });
}

function alongLine(points: readonly Point[], distance: number): { at: Point; vertical: boolean } {
  let rest = distance;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const vertical = Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0]);
    if (rest <= length && length > 0) {
      const share = rest / length;
      return { at: [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share], vertical };
    }
    rest -= length;
  }
  return { at: points.at(-1) ?? [0, 0], vertical: false };
}

export interface OnLine {
  readonly part: PartResult;
  readonly at: Point;
  readonly vertical: boolean;
}

const drawnKinds = new Set(["choke", "balun", "transformer", "tuner"]);

/** Parts without length that are seen on the line, each where the file has it; neighbours 24 px apart. */
export function partsOnLine(answer: Answer, drawing: Drawing, plan: StagePlan): OnLine[] {
  const points = linePoints(answer, drawing, plan);
  const whole = points.slice(1).reduce((sum, b, i) => sum + Math.hypot(b[0] - points[i]![0], b[1] - points[i]![1]), 0);
  const total = lineLength(answer);
  const drawn = partsInUse(answer).filter((part) => drawnKinds.has(part.kind));
  if (whole < (40 + 22 * drawn.length) * plan.s) return [];
  const step = 22 * plan.s;
  const margin = 18 * plan.s;
  const first = 30 * plan.s;
  let passed = 0;
  const out: { part: PartResult; distance: number }[] = [];
  for (const part of partsInUse(answer)) {
    if (part.kind === "line") passed += part.length;
    if (!drawnKinds.has(part.kind)) continue;
    const wanted = total > 0 ? (passed / total) * whole : whole / 2;
    const before = out.at(-1)?.distance ?? first - step;
    out.push({ part, distance: Math.max(wanted, before + step) });
  }
  let limit = whole - margin;
  for (const one of out.toReversed()) {
    one.distance = Math.min(one.distance, limit);
    limit = one.distance - step;
  }
  return out.map(({ part, distance }) => ({ part, ...alongLine(points, distance) }));
}

/** A part on the line, without words. */
export function sleeve({ part, at, vertical }: OnLine, s: number): Mark {
  const [width, height] = vertical ? [10 * s, 15 * s] : [15 * s, 10 * s];
  const radius = part.kind === "tuner" ? 0 : 4 * s;
  const stroke = { role: "ink", width: 1.7 * s } as const;
  const [x, y] = [at[0] - width / 2, at[1] - height / 2];
  return { kind: "rect", id: part.name, x, y, width, height, radius, fill: { role: "paper" }, stroke };
}
