/** Where things stand on a stage, in px: what section and ribbon share. */
import type { Answer, Drawing } from "@feedpath/engine";
import { type CutPoint, projection, unrolledLine } from "./cut";
import type { StageStyle } from "./stageOptions";

export interface StagePlan extends StageStyle {
  readonly xFeed: number;
  /** px for one metre, horizontally and vertically. */
  readonly ppm: number;
  readonly xTransmitter: number;
  readonly lobeRadius: number;
  /** Of the arc that carries the angles. */
  readonly arcRadius: number;
  readonly surfaceY: number;
  readonly soilDepth: number;
  readonly sectionHeight: number;
  /** px from the section's lower edge to the ribbon's band. */
  readonly gap: number;
  readonly bandHeight: number;
  /** px that the heat falls below the band. */
  readonly drop: number;
  /** px below the drop for labels. */
  readonly below: number;
}

interface Extent {
  readonly run: number;
  readonly highest: number;
  readonly left: number;
  readonly right: number;
}

function extentOf(answer: Answer, drawing: Drawing): Extent {
  const project = projection(drawing);
  const line = unrolledLine(answer, drawing);
  const wires = drawing.wires.flatMap((wire) => [project(wire.from), project(wire.to)]);
  const all: CutPoint[] = [...line, ...wires];
  return {
    run: Math.max(0, ...line.map(([x]) => -x)),
    highest: Math.max(0.1, ...all.map(([, z]) => z)),
    left: Math.max(0, ...wires.map(([x]) => -x)),
    right: Math.max(0, ...wires.map(([x]) => x)),
  };
}

function bandHeight(style: StageStyle): number {
  const { width, s, compact } = style;
  if (compact) return Math.min(Math.max(72 + 0.17 * (width - 320), 60), 96);
  return Math.min(96 * s, Math.max(62, 0.0863 * width));
}

/** Scale of the section by the rules of docs/look.md; `shrink` makes room where the height is limited. */
function pixelsPerMetre(style: StageStyle, extent: Extent, xFeed: number, shrink: number): number {
  const { width, compact } = style;
  const [runShare, heightShare] = compact ? [0.33, 0.25] : [0.258, 0.194];
  const limits = [
    (runShare * width) / extent.run,
    (shrink * heightShare * width) / extent.highest,
    (xFeed - 12) / extent.left,
    (width - xFeed - 12) / extent.right,
  ];
  return Math.min(...limits.filter((limit) => Number.isFinite(limit)));
}

function planWith(answer: Answer, style: StageStyle, shrink: number): StagePlan {
  const { width, s, compact } = style;
  const xFeed = (compact ? 0.41 : 0.388) * width;
  const extent = answer.drawing ? extentOf(answer, answer.drawing) : { run: 1, highest: 1, left: 0, right: 0 };
  const ppm = pixelsPerMetre(style, extent, xFeed, shrink);
  const height = extent.highest * ppm;
  const lobeRadius = compact ? 1.06 * Math.min(0.25 * width, Math.max(height, 0.2 * width)) : shrink * 0.2 * width;
  const arcRadius = lobeRadius + (compact ? 10 : 12) * s;
  const surfaceY = (compact ? 16 : 20) * s + Math.max(arcRadius, height + 14 * s);
  const depth = answer.drawing?.soil.penetrationDepth ?? 0;
  const lossless = answer.drawing !== null && answer.drawing.soil.penetrationDepth === null;
  const limited = style.maximumHeight === null ? 1 : 0.68;
  const soilDepth = compact
    ? 46
    : Math.min(Math.max(lossless ? 56 : 80, depth * ppm), 110) * Math.max(s, 0.75) * limited;
  return {
    ...style,
    xFeed,
    ppm,
    xTransmitter: xFeed - extent.run * ppm,
    lobeRadius,
    arcRadius,
    surfaceY,
    soilDepth,
    sectionHeight: surfaceY + soilDepth,
    gap: compact ? 32 : 52 * s,
    bandHeight: bandHeight(style),
    drop: 58 * s,
    below: compact ? 38 : 10 * s,
  };
}

export const stageHeight = (plan: StagePlan): number =>
  plan.sectionHeight + plan.gap + plan.bandHeight + plan.drop + plan.below;

/** The plan of a stage for an answer; without a drawing the section is a plain place holder of the same proportions. */
export function stagePlan(answer: Answer, style: StageStyle): StagePlan {
  const free = planWith(answer, style, 1);
  const excess = style.maximumHeight === null ? 0 : stageHeight(free) - style.maximumHeight;
  return excess > 0 ? planWith(answer, style, Math.max(0.3, 1 - excess / free.arcRadius)) : free;
}
