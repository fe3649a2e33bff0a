/** Free ends of the wires of a feed, given one by one in the file. */
import type { Antenna, Shape } from "../../station/antennaDescription";
import type { Place } from "../../station/place";

type Wires = Extract<Shape, { kind: "wires" }>;

export interface FreeEnd {
  /** Wires from the feed outwards. */
  readonly chain: readonly number[];
  /** Which end of the last one is free. */
  readonly end: "from" | "to";
}

/** Closest distance that counts as one place, and height below which a wire is taken to end in the soil, m. */
const samePlace = 1e-3;

const numbers = (p: Place): readonly number[] => p.map((q) => q.value);
export const placesApart = (a: Place, b: Place): number => Math.hypot(...numbers(a).map((x, i) => x - numbers(b)[i]!));
const meets = (a: Place, b: Place): boolean => placesApart(a, b) <= samePlace;

/** From each side of the feed along the wire, round its bends, to where it ends in the air; none where it meets several others. */
export function freeEnds(shape: Wires, antenna: Antenna, feedName: string): FreeEnd[] {
  const feed = antenna.feeds.find((f) => f.name === feedName);
  if (!feed) return [];
  return [feed.from, feed.into].flatMap((name) => {
    const found = walk(shape, feed.at, name);
    return found ? [found] : [];
  });
}

function walk({ wires }: Wires, start: Place, name: string): FreeEnd | null {
  let index = wires.findIndex((w) => w.name === name);
  let at = start;
  const chain: number[] = [];
  while (index >= 0) {
    const wire = wires[index]!;
    const end = meets(wire.from, at) ? "to" : meets(wire.to, at) ? "from" : null;
    if (end === null) return null;
    chain.push(index);
    at = wire[end];
    if (meets(at, start)) return null;
    const others = wires.flatMap((w, i) => (!chain.includes(i) && (meets(w.from, at) || meets(w.to, at)) ? [i] : []));
    if (others.length > 1) return null;
    if (others.length === 0) return at[2].value > samePlace ? { chain, end } : null;
    index = others[0]!;
  }
  return null;
}
