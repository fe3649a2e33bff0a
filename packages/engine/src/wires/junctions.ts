/** Which wire ends meet where, and in which groups a feed parts them. */
import { distanceBetween, wireEnd } from "./geometry";
import type { FeedGap, Point, Soil, Structure } from "./structure";

/** Ends closer than this (m) are one junction. */
export const sameplace = 1e-6;

export interface WireEnd {
  readonly wire: number;
  readonly end: 0 | 1;
}

export interface Junction {
  readonly at: Point;
  readonly ends: readonly WireEnd[];
  /** On a perfect plane, hence joined to its image. */
  readonly onGround: boolean;
  /** Index into the structure's feeds, or -1. */
  readonly feed: number;
}

/** All places where wire ends lie; a free end is a junction of one. */
export function findJunctions(structure: Structure, soil: Soil): readonly Junction[] {
  const found: { at: Point; ends: WireEnd[] }[] = [];
  structure.wires.forEach((wire, index) => {
    for (const end of [0, 1] as const) {
      const at = wireEnd(wire, end);
      const known = found.find((junction) => distanceBetween(junction.at, at) <= sameplace);
      if (known) known.ends.push({ wire: index, end });
      else found.push({ at, ends: [{ wire: index, end }] });
    }
  });
  return found.map(({ at, ends }) => ({
    at,
    ends,
    onGround: soil.kind === "perfect" && Math.abs(at[2]) <= sameplace,
    feed: structure.feeds.findIndex((feed) => distanceBetween(feed.at, at) <= sameplace),
  }));
}

/** One unknown current of a junction: it flows in through `into.from` (null: from the ground) and out through `to`. */
export interface JunctionCurrent {
  readonly from: WireEnd | null;
  readonly to: WireEnd;
  /** Index of the feed this current passes, or -1. */
  readonly feed: number;
}

const chain = (from: WireEnd | null, others: readonly WireEnd[]): JunctionCurrent[] =>
  others.map((to) => ({ from, to, feed: -1 }));

/** The n - 1 independent currents of n ends (n with the ground as another one); the feed current, if any, is last. */
export function junctionCurrents(junction: Junction, feeds: readonly FeedGap[]): readonly JunctionCurrent[] {
  const { ends, onGround, feed } = junction;
  if (feed < 0) return onGround ? chain(null, ends) : chain(ends[0]!, ends.slice(1));
  const fromWires = feeds[feed]!.from;
  const from = ends.filter((e) => fromWires.includes(e.wire));
  const into = ends.filter((e) => !fromWires.includes(e.wire));
  return [
    ...(from.length > 0 ? chain(from[0]!, from.slice(1)) : []),
    ...chain(into[0]!, into.slice(1)),
    { from: from[0] ?? null, to: into[0]!, feed },
  ];
}
