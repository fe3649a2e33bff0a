/** What an isometry of the wires does to the ports and the loads on them. */
import type { Complex } from "../numerics/complex";
import { wireLength } from "./geometry";
import { sameplace } from "./junctions";
import type { LocalImpedances } from "./localTerms";
import type { Mesh } from "./mesh";
import type { FeedGap, SeriesGap, Soil, Structure } from "./structure";
import { imageOfEnd } from "./symmetricUnknowns";
import { closeness, meets, type WireMap } from "./symmetryMaps";

/** 1: the port stays as it is; -1: it stays in place with its current turned; 0: neither. */
export type PortSign = 1 | -1 | 0;

/** Only where nothing joins the ground are the two sides of a feed alike but for their wires. */
const grounded = ({ contacts = [] }: Structure, soil: Soil, { at }: FeedGap): boolean =>
  (soil.kind === "perfect" && Math.abs(at[2]) <= sameplace) || contacts.some((c) => meets(c.at, at, sameplace));

function feedSign(structure: Structure, soil: Soil, feed: FeedGap, { image, move }: WireMap): PortSign {
  if (!meets(move(feed.at), feed.at, sameplace)) return 0;
  if (feed.from.every((w) => feed.from.includes(image[w]!))) return 1;
  const into = structure.wires.flatMap((wire, w) =>
    !feed.from.includes(w) && (meets(wire.from, feed.at, sameplace) || meets(wire.to, feed.at, sameplace)) ? [w] : [],
  );
  const exchanged =
    feed.from.every((w) => into.includes(image[w]!)) && into.every((w) => feed.from.includes(image[w]!));
  return exchanged && !grounded(structure, soil, feed) ? -1 : 0;
}

function gapSign(structure: Structure, { wire, distance }: SeriesGap, map: WireMap): PortSign {
  if (map.image[wire] !== wire) return 0;
  if (!map.reversed[wire]) return 1;
  return Math.abs(wireLength(structure.wires[wire]!) - 2 * distance) <= closeness ? -1 : 0;
}

/** For all ports in their order. */
export function portSigns(structure: Structure, soil: Soil, map: WireMap): PortSign[] {
  const { feeds, gaps = [], contacts = [] } = structure;
  return [
    ...feeds.map((feed) => feedSign(structure, soil, feed, map)),
    ...gaps.map((gap) => gapSign(structure, gap, map)),
    ...contacts.map(({ at }): PortSign => (meets(map.move(at), at, sameplace) ? 1 : 0)),
  ];
}

/** The current on the end of an element as a sum of unknowns, in words; the same for its negative. */
function currentAt({ scatter: { first, unknown, sign } }: Mesh, end: number): string {
  const turned = sign[first[end]!]!;
  return Array.from({ length: first[end + 1]! - first[end]! }, (_, i) => first[end]! + i)
    .map((a) => `${unknown[a]} ${sign[a]! / turned}`)
    .sort()
    .join(", ");
}

/**
 * Whether as many loads of the same impedance stand where each load comes to lie as where it is: in the same current, be it
 * on the other of two wires that meet there.
 */
export function keepsLoads(structure: Structure, mesh: Mesh, { loads }: LocalImpedances, map: WireMap): boolean {
  const inCurrent = loads.map(({ elementEnd }) => currentAt(mesh, elementEnd));
  const countIn = (current: string, { re, im }: Complex): number =>
    loads.filter(({ impedance }, i) => inCurrent[i] === current && impedance.re === re && impedance.im === im).length;
  return loads.every(({ elementEnd, impedance }, i) => {
    const image = currentAt(mesh, imageOfEnd(mesh, map, structure.loads[i]!.wire, elementEnd));
    return countIn(image, impedance) === countIn(inCurrent[i]!, impedance);
  });
}
