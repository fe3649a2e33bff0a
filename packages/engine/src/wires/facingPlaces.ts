/** Places of a wire that face a gap in another one close by. */
import { along, difference, distanceBetween, dot, wireDirection, wireLength } from "./geometry";
import { sameplace } from "./junctions";
import type { Point, Structure } from "./structure";

/** Where a voltage stands across a gap: feeds, loads, ports on wires. */
function gaps(structure: Structure): Point[] {
  const onWires = [...structure.loads, ...(structure.gaps ?? [])].map(({ wire, distance }) => {
    const carrier = structure.wires[wire]!;
    return along(carrier.from, wireDirection(carrier), distance);
  });
  return [...structure.feeds.map((f) => f.at), ...onWires];
}

/**
 * Distances (m) along a wire of its places nearer than `reach` (m) to a gap in another wire. Between two close wires the
 * charge of one mirrors that of the other: where it changes its sign across the gap it does so there too, and an element
 * across that place would smear it out.
 */
export function facingPlaces(structure: Structure, wire: number, reach: number): number[] {
  const asked = structure.wires[wire]!;
  const direction = wireDirection(asked);
  return gaps(structure)
    .map((gap) => ({ gap, foot: dot(difference(gap, asked.from), direction) }))
    .filter(({ gap, foot }) => {
      const aside = distanceBetween(gap, along(asked.from, direction, foot));
      return aside > sameplace && aside < reach && foot > reach && foot < wireLength(asked) - reach;
    })
    .map(({ foot }) => foot);
}
