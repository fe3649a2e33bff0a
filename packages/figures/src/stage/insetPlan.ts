/** Where the view from above stands. */
import type { Box } from "../kit/box";
import type { Point } from "../kit/outline";
import type { StagePlan } from "./stagePlan";

export interface Inset {
  readonly cx: number;
  readonly cy: number;
  /** Of the pattern's circle, px. */
  readonly radius: number;
  /** px from the centre to the end of the longest line. */
  readonly reach: number;
  readonly s: number;
}

/** Null where there is no view from above: compact pictures and presentations. */
export function insetOf({ width, s, compact, maximumHeight }: StagePlan): Inset | null {
  if (compact || maximumHeight !== null) return null;
  return { cx: width - 124 * s, cy: 88 * s, radius: 58 * s, reach: 74 * s, s };
}

/** The box that the section leaves to it. */
export function insetBox(plan: StagePlan): Box | null {
  const inset = insetOf(plan);
  if (!inset) return null;
  const { cx, cy, reach, s } = inset;
  return { left: cx - reach - 44 * s, right: plan.width, top: 0, bottom: cy + reach + 28 * s };
}

/** px from the centre: clockwise from north, `distance` px. */
export const bearing = ({ cx, cy }: Inset, azimuth: number, distance: number): Point => {
  const angle = (azimuth * Math.PI) / 180;
  return [cx + distance * Math.sin(angle), cy - distance * Math.cos(angle)];
};
