/** Where on an antenna's wires a load lies, counted from the feed along a leg. */
import type { Antenna, Load } from "../station/antennaDescription";
import type { Point } from "../wires/structure";
import { meets } from "./shapes/shapeWires";
import { type Built, distance, type Leg, pointOf } from "./wireRun";

export interface Spot {
  readonly wire: number;
  /** m from that wire's `from` end. */
  readonly distance: number;
}

/** Legs a load hangs on. */
export const legsOf = (built: Built, load: Load): readonly Leg[] =>
  load.on === "both legs"
    ? built.legs.filter((l) => l.name === "first leg" || l.name === "second leg")
    : built.legs.filter((l) => l.name === load.on);

export const feedPlaces = (antenna: Antenna, built: Built): readonly Point[] => [
  ...built.feeds.map((f) => f.at),
  ...antenna.feeds.map((f) => pointOf(f.at)),
];

/** Places at a length along a leg, two on an element counted from its middle; none before its beginning or beyond its end. */
export function spotsOn(built: Built, leg: Leg, feeds: readonly Point[], along: number | "end"): readonly Spot[] {
  if (!leg.fromMiddle) return alongLeg(built, leg, feeds, along);
  const [wire] = leg.wires;
  const half = lengthOf(built, wire!) / 2;
  const off = along === "end" ? half : along;
  if (off > half) return [];
  return (off === 0 ? [0] : [-off, off]).map((by) => ({ wire: wire!, distance: half + by }));
}

const lengthOf = (built: Built, wire: number): number => distance(built.wires[wire]!.from, built.wires[wire]!.to);

function alongLeg(built: Built, leg: Leg, feeds: readonly Point[], along: number | "end"): readonly Spot[] {
  const fed = (p: Point): boolean => feeds.some((feed) => meets(p, feed));
  const [first, last] = [built.wires[leg.wires[0]!]!, built.wires[leg.wires.at(-1)!]!];
  const backwards = fed(last.to) && !fed(first.from);
  const order = backwards ? [...leg.wires].reverse() : leg.wires;
  const total = order.reduce((sum, wire) => sum + lengthOf(built, wire), 0);
  let left = along === "end" ? total : along;
  if (left < 0) return [];
  for (const wire of order) {
    const length = lengthOf(built, wire);
    // The end itself, whatever rounding does to the sum.
    const here = along === "end" && wire === order.at(-1) ? Math.min(left, length) : left;
    if (here <= length) return [{ wire, distance: backwards ? length - here : here }];
    left -= length;
  }
  return [];
}
