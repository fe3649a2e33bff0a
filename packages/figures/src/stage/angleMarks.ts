/** The arc with its angles, the ray at the strongest elevation, and the words about the shape. */
import { boxesAlong } from "../kit/box";
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { fixedText } from "../kit/numberText";
import { arcTo, moveTo, type Point } from "../kit/outline";
import type { Lobe, Strongest } from "./lobe";
import type { StagePlan } from "./stagePlan";

const ticks = [15, 30, 45, 60, 75];

const polar = (plan: StagePlan, radius: number, elevation: number): Point => {
  const angle = (elevation * Math.PI) / 180;
  return [plan.xFeed + radius * Math.cos(angle), plan.surfaceY - radius * Math.sin(angle)];
};

/** A maximum wider than this (degrees within 0.1 dB) has no one direction. */
const broad = 20;

/** Within 0.1 dB over more than this: no direction is the strongest. */
const nearlyAll = 150;

const hasDirection = ({ from, to }: Strongest): boolean => to - from < nearlyAll;

export function strongestText({ elevation, from, to }: Strongest): string {
  if (to - from >= nearlyAll) return "the same at all angles";
  const up = elevation > 90 ? 180 - elevation : elevation;
  const about = to - from > broad ? "about " : "";
  return Math.abs(elevation - 90) < 3 ? `strongest ${about}straight up` : `strongest ${about}${fixedText(up, 0)}° up`;
}

function rayMarks(plan: StagePlan, strongest: Strongest): Mark[] {
  const { s, arcRadius } = plan;
  if (!hasDirection(strongest)) return [];
  const [x2, y2] = polar(plan, arcRadius, strongest.elevation);
  const dash = `${3 * s} ${3 * s}`;
  const stroke = { role: "fieldInk", width: 1.4 * s, dash } as const;
  const ray: Mark = { kind: "line", x1: plan.xFeed, y1: plan.surfaceY, x2, y2, stroke };
  if (strongest.to - strongest.from <= broad) return [ray];
  const d =
    moveTo(polar(plan, arcRadius, strongest.from)) + arcTo(arcRadius, polar(plan, arcRadius, strongest.to), false);
  return [ray, { kind: "path", d, stroke: { role: "fieldInk", width: 2 * s } }];
}

function arcMarks(plan: StagePlan): Mark[] {
  const { s, arcRadius } = plan;
  const d = moveTo(polar(plan, arcRadius, 90)) + arcTo(arcRadius, polar(plan, arcRadius, 0), true);
  const strokes = ticks.map((elevation): Mark => {
    const [x1, y1] = polar(plan, arcRadius - 1 * s, elevation);
    const [x2, y2] = polar(plan, arcRadius + 6 * s, elevation);
    return { kind: "line", x1, y1, x2, y2, stroke: { role: "line", width: 1 * s } };
  });
  return [{ kind: "path", d, stroke: { role: "hair", width: 1 * s } }, ...strokes];
}

function strongestLabel(plan: StagePlan, strongest: Strongest, board: LabelBoard): Mark[] {
  const { s, arcRadius } = plan;
  const text = strongestText(strongest);
  const left = hasDirection(strongest) && strongest.elevation > 97;
  const elevation = hasDirection(strongest) ? strongest.elevation : 67;
  const style = { role: "fieldInk", size: 13 * s, weight: 600 } as const;
  const places = [10, 20, 32, 46].map((out) => {
    const [x, y] = polar(plan, arcRadius + out * s, elevation);
    return { lines: [text], x, y: y + 3 * s, anchor: left ? ("end" as const) : ("start" as const) };
  });
  return board.place(style, places);
}

function tickLabels(plan: StagePlan, board: LabelBoard): Mark[] {
  const { s, compact, arcRadius } = plan;
  const shown = compact ? [30, 60] : ticks;
  const style = { role: "ink2", size: 13 * s } as const;
  return shown.flatMap((elevation) => {
    const places = [10, 16].map((out) => {
      const [x, y] = polar(plan, arcRadius + out * s, elevation);
      return { lines: [`${elevation}°`], x, y: y + 3 * s };
    });
    return board.placeClear(style, places);
  });
}

/** The words that keep the shape from being read as a distance; in the soil where there is no room beside it. */
function shapeLabel(plan: StagePlan, lobe: Lobe, board: LabelBoard): Mark[] {
  const { s, xFeed, surfaceY, compact } = plan;
  const style = { role: "ink2", size: 13 * s } as const;
  const inOneLine = "shape: field strength by angle, not distance";
  const inSoil = { lines: [inOneLine], x: plan.width - 6 * s, y: surfaceY + 30 * s, anchor: "end" as const };
  if (compact)
    return board.place({ ...style, size: 12 }, [inSoil, { ...inSoil, lines: ["shape: field by angle, not distance"] }]);
  const lines = ["shape: field strength", "by angle, not distance"];
  const toLeft = [0.62, 0.5, 0.74, 0.4, 0.86, 0.3].map((up) => {
    const y = surfaceY - up * plan.lobeRadius;
    const beside = lobe.outline.filter((point) => Math.abs(point[1] - y) < 24 * s);
    return { lines, x: Math.min(xFeed, ...beside.map(([x]) => x)) - 16 * s, y, anchor: "end" as const };
  });
  const toRight = [40, 25].map((at) => {
    const [px, py] = polar(plan, plan.arcRadius + 48 * s, at);
    return { lines, x: px, y: py };
  });
  return board.place(style, [...toLeft, ...toRight, inSoil]);
}

/** Keeps other labels off the ray, and off the outline of the lobe while they have another place. */
export function reserveLobe(plan: StagePlan, { strongest, outline }: Lobe, board: LabelBoard): void {
  boxesAlong(outline, 1.5 * plan.s).forEach(board.avoid);
  if (!hasDirection(strongest)) return;
  const foot: Point = [plan.xFeed, plan.surfaceY];
  const tip = polar(plan, plan.arcRadius, strongest.elevation);
  boxesAlong([foot, tip], 3 * plan.s).forEach(board.reserve);
  if (strongest.to - strongest.from <= broad) return;
  const arc = Array.from({ length: 20 }, (_, i) =>
    polar(plan, plan.arcRadius, strongest.from + ((strongest.to - strongest.from) * i) / 19),
  );
  boxesAlong(arc, 2 * plan.s).forEach(board.avoid);
}

export const arcAndRay = (plan: StagePlan, lobe: Lobe): Mark[] => [
  ...arcMarks(plan),
  ...rayMarks(plan, lobe.strongest),
];

/** Strongest first: an angle that would touch it goes. */
export const angleLabels = (plan: StagePlan, lobe: Lobe, board: LabelBoard): Mark[] => [
  ...(plan.compact ? [] : strongestLabel(plan, lobe.strongest, board)),
  ...tickLabels(plan, board),
  ...shapeLabel(plan, lobe, board),
];
