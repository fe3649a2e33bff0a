/** Which wire ends meet where, and in which groups a feed parts them. */

import type { ElectrodeArms } from "./electrodes";
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
  /** Joined to the ground: to the image in a perfect plane, or through the arms (wire indices) of an electrode on soil. */
  readonly ground: { readonly arms: readonly number[] } | null;
  /** Index into the structure's contacts, or -1. */
  readonly contact: number;
  /** Index into the structure's feeds, or -1. */
  readonly feed: number;
}

/** All places where wire ends lie; a free end is a junction of one. Arms of electrodes are no ends. */
export function findJunctions(structure: Structure, soil: Soil, electrodes: ElectrodeArms = []): readonly Junction[] {
  const found: { at: Point; ends: WireEnd[] }[] = [];
  const isArm = new Set(electrodes.flat());
  structure.wires.forEach((wire, index) => {
    if (isArm.has(index)) return;
    for (const end of [0, 1] as const) {
      const at = wireEnd(wire, end);
      const known = found.find((junction) => distanceBetween(junction.at, at) <= sameplace);
      if (known) known.ends.push({ wire: index, end });
      else found.push({ at, ends: [{ wire: index, end }] });
    }
  });
  const here = (places: readonly { readonly at: Point }[], at: Point): number =>
    places.findIndex((place) => distanceBetween(place.at, at) <= sameplace);
  return found.map(({ at, ends }) => {
    const contact = here(structure.contacts ?? [], at);
    const onPlane = soil.kind === "perfect" && Math.abs(at[2]) <= sameplace;
    const ground = onPlane ? { arms: [] } : contact >= 0 ? { arms: electrodes[contact] ?? [] } : null;
    return { at, ends, ground, contact, feed: here(structure.feeds, at) };
  });
}

/** One unknown current of a junction: it flows in through `from` and out through `to`; null is the ground. */
export interface JunctionCurrent {
  readonly from: WireEnd | null;
  readonly to: WireEnd | null;
  /** Index of the feed this current passes, or -1. */
  readonly feed: number;
}

const chain = (from: WireEnd | null, others: readonly WireEnd[]): JunctionCurrent[] =>
  others.map((to) => ({ from, to, feed: -1 }));

/**
 * The n - 1 independent currents of n ends (n with the ground as another one); the feed current, if any, is last. The
 * ground belongs to the side a feed leaves open, else to the side it feeds into.
 */
export function junctionCurrents(junction: Junction, feeds: readonly FeedGap[]): readonly JunctionCurrent[] {
  const { ends, ground, feed } = junction;
  if (feed < 0) return ground ? chain(null, ends) : chain(ends[0]!, ends.slice(1));
  const fromWires = feeds[feed]!.from;
  const from = ends.filter((e) => fromWires.includes(e.wire));
  const into = ends.filter((e) => !fromWires.includes(e.wire));
  if (from.length === 0) return [...chain(into[0]!, into.slice(1)), { from: null, to: into[0]!, feed }];
  if (into.length === 0) return [...chain(from[0]!, from.slice(1)), { from: from[0]!, to: null, feed }];
  return [
    ...chain(from[0]!, from.slice(1)),
    ...chain(into[0]!, into.slice(1)),
    ...(ground ? chain(null, [into[0]!]) : []),
    { from: from[0]!, to: into[0]!, feed },
  ];
}
