/** One thing moved away step by step, level and straight away from the feed point, up to one and a half waves. */
import { speedOfLight } from "../../numerics/vacuum";
import type { Point, Wire } from "../../wires/structure";
import type { Progress } from "../common/question";
import type { Worked } from "../common/worked";
import { type Bench, type Brief, briefCase, effectOf, isWorked } from "./cases";
import { distanceOf, type Thing, usedWires } from "./things";
import { withMoved } from "./variants";

const farthest = 1.5;
/** More steps near by, where most happens. */
const crowding = 1.5;

export interface DistancePoint extends Brief {
  /** m by which it was moved, and then between the nearest wires. */
  readonly moved: number;
  readonly distance: number;
}

export interface DistanceStudy {
  readonly points: readonly DistancePoint[];
  /** Azimuth of the move, degrees. */
  readonly towards: number;
  /** m between the nearest wires from which on nothing worth naming is left; null where it still matters at the last. */
  readonly clear: number | null;
  /** Why some distances are missing. */
  readonly refused: string | null;
}

export function* studyDistances(
  worked: Worked,
  bench: Bench,
  { thing, without, steps }: { readonly thing: Thing; readonly without: Brief; readonly steps: number },
): Generator<Progress, DistanceStudy> {
  const { structure } = worked.point.antenna.build;
  const wave = speedOfLight / worked.frequency;
  const used = usedWires(worked);
  const made = thing.wires.map((w) => structure.wires[w]!);
  const feed = feedPlace(worked);
  const [east, north] = awayFrom(feed, made, used);
  const points: DistancePoint[] = [];
  let refused: string | null = null;
  const moves = Array.from({ length: steps }, (_, i) => {
    const moved = farthest * wave * (i / (steps - 1)) ** crowding;
    const by: Level = [moved * east, moved * north];
    return { moved, by, station: moved === 0 ? worked.station : withMoved(worked.station, thing, by) };
  });
  const ahead = moves.map(({ station }) => bench.request(station));
  for (const [i, { moved, by, station }] of moves.entries()) {
    yield { done: i, of: steps, what: `distances of ${thing.name}`, ...(i === 0 ? { ahead } : {}) };
    const brief = briefCase(station, bench);
    if (isWorked(brief))
      points.push({
        ...brief,
        moved,
        distance: distanceOf(
          used,
          made.map((w) => shifted(w, by)),
        ),
      });
    else refused ??= brief.refused.why;
  }
  const towards = ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
  return { points, towards, clear: clearDistance(points, without), refused };
}

const shifted = (wire: Wire, [east, north]: readonly [number, number]): Wire => {
  const shift = (p: Point): Point => [p[0] + east, p[1] + north, p[2]];
  return { ...wire, from: shift(wire.from), to: shift(wire.to) };
};

function feedPlace(worked: Worked): Point {
  const { feeds } = worked.point.antenna.build.structure;
  return (feeds.find((f) => worked.point.resolved.feedsInUse.includes(f.name)) ?? feeds[0]!).at;
}

type Level = readonly [number, number];
const byLength = (a: Level, b: Level): number => Math.hypot(...a) - Math.hypot(...b);

/** Nearer than this (m) to the plumb line through the feed point there is no direction away from it. */
const plumb = 0.05;

/** Unit vector, level: from the feed point to the thing, or across the antenna where the thing stands right below or above it. */
function awayFrom(feed: Point, thing: readonly Wire[], antenna: readonly Wire[]): Level {
  const nearest = thing.map((w) => nearestLevel(feed, w)).sort(byLength)[0]!;
  const distance = Math.hypot(...nearest);
  if (distance > plumb) return [nearest[0] / distance, nearest[1] / distance];
  const spans = antenna.map((w): Level => [w.to[0] - w.from[0], w.to[1] - w.from[1]]);
  const longest = spans.sort(byLength).at(-1)!;
  const length = Math.hypot(...longest);
  return length > plumb ? [-longest[1] / length, longest[0] / length] : [1, 0];
}

/** Level vector from a place to the nearest point of a wire seen from above. */
function nearestLevel(feed: Point, { from, to }: Wire): Level {
  const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
  const squared = ux * ux + uy * uy;
  const along = squared > 0 ? ((feed[0] - from[0]) * ux + (feed[1] - from[1]) * uy) / squared : 0;
  const t = Math.min(1, Math.max(0, along));
  return [from[0] + t * ux - feed[0], from[1] + t * uy - feed[1]];
}

/** Straight between the last point that is worth naming and the next. */
function clearDistance(points: readonly DistancePoint[], without: Brief): number | null {
  const effects = points.map((p) => effectOf(p, without));
  const last = effects.findLastIndex((e) => e >= 1);
  if (last < 0) return points[0]?.distance ?? null;
  const [inner, outer] = [points[last]!, points[last + 1]];
  if (!outer) return null;
  const share = (effects[last]! - 1) / (effects[last]! - effects[last + 1]!);
  return inner.distance + share * (outer.distance - inner.distance);
}
