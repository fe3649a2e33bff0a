/** Heights of the feed point: now, and the span worth looking at. */
import { speedOfLight } from "../../numerics/vacuum";
import type { Worked } from "./worked";

/** Height of the feed point in use, m. */
export function presentHeight(worked: Worked): number {
  const { feeds } = worked.point.antenna.build.structure;
  const feed = feeds.find((f) => worked.point.resolved.feedsInUse.includes(f.name)) ?? feeds[0]!;
  return feed.at[2];
}

/** From about 0.07 of a wave, or as low as the lowest wire allows, to 0.6 of a wave and at least a quarter above the present. */
export function usualHeights(worked: Worked): { from: number; to: number } {
  const wave = speedOfLight / worked.frequency;
  const now = presentHeight(worked);
  const { build } = worked.point.antenna;
  const own = build.structure.wires.filter((_, i) => !build.surroundingWires.has(i));
  const lowest = Math.min(...own.flatMap((w) => [w.from[2], w.to[2]]));
  const from = Math.min(now, Math.max(0.07 * wave, now - lowest + 0.02 * wave));
  return { from, to: Math.max(0.6 * wave, 1.25 * now) };
}
