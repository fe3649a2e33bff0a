/** What a one-sided shape works against: radials, the outside of the line, an earth, a conductor near by. */
import type { Antenna } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { FeedGap, Point, Wire } from "../wires/structure";
import { connectToEarth } from "./earths";
import { addWires, assume, type Growing } from "./growing";
import { radialWires, standsOnThem } from "./radials";
import { meets } from "./shapes/shapeWires";
import type { Built } from "./wireRun";

export interface Refused {
  readonly refused: string;
  readonly mend: string;
}

/** Wires of a list that have an end at a point. */
export const wiresAt = (wires: readonly Wire[], at: Point): number[] =>
  wires.flatMap((w, i) => (meets(w.from, at) || meets(w.to, at) ? [i] : []));

/** Adds a one-sided shape and its return to the structure; its feed lies at the shape's foot. */
export function feedAgainst(station: Station, antenna: Antenna, oneSided: Built, growing: Growing): FeedGap | Refused {
  const base = oneSided.wires[0]!.from;
  const { against } = antenna;
  if (against === null) {
    return {
      refused: "the antenna has one side only and the file does not say what it works against",
      mend: "`against:` in the antenna",
    };
  }
  if (against === "radials") return againstRadials(station, antenna, oneSided, growing);
  const feed = (into: number[]): FeedGap => {
    const [first] = addWires(growing, oneSided.wires);
    return { name: antenna.name, at: base, from: [first!], into };
  };
  if (against === "outside of the line") return feed([]);
  if (station.earths.some((e) => e.name === against)) return againstEarth(station, against, base, growing, feed);
  const conductor = growing.surrounding.get(against);
  const known = station.surroundings.some((s) => s.kind === "conductor" && s.name === against);
  if (!known)
    return { refused: `nothing in the file is called "${against}"`, mend: "the name of a conductor of `surroundings`" };
  const into = (conductor ?? []).filter((w) => wiresAt(growing.wires, base).includes(w));
  if (into.length > 0) return feed(into);
  return {
    refused: `the conductor "${against}" has no end at the antenna's feed point`,
    mend: "give the conductor a point there, above the soil",
  };
}

function againstEarth(
  station: Station,
  earth: string,
  base: Point,
  growing: Growing,
  feed: (into: number[]) => FeedGap,
): FeedGap | Refused {
  const before = growing.wires.length;
  if (!connectToEarth(station, growing, earth, base)) {
    growing.notComputed.pop();
    return {
      refused: `the earth "${earth}" cannot be worked with: it needs soil and a resistance`,
      mend: "`resistance` of that earth (or `unknown`), and a `ground`",
    };
  }
  return feed(wiresAt(growing.wires, base).filter((w) => w >= before));
}

function againstRadials(station: Station, antenna: Antenna, oneSided: Built, growing: Growing): FeedGap | Refused {
  const { radials } = antenna;
  if (!radials)
    return { refused: "the antenna works against radials, but the file gives none", mend: "a `radials` entry" };
  const base = oneSided.wires[0]!.from;
  const made = radialWires(radials, base, growing);
  if ("refused" in made) return made;
  const { wires, hub } = made;
  const [foot, ...rest] = oneSided.wires;
  const onThem = meets(base, hub) || base[2] - hub[2] <= standsOnThem;
  if (onThem && !meets(base, hub))
    assume(growing, "base of the antenna", "taken down to its radials", "the piece between is part of the antenna");
  const [first] = addWires(growing, [onThem ? { ...foot!, from: hub } : foot!, ...rest]);
  const indices = addWires(growing, wires);
  if (radials.lie === "on the soil") for (const w of indices) growing.resting.add(w);
  if (radials.bond) connectToEarth(station, growing, radials.bond, hub);
  if (onThem) return { name: antenna.name, at: hub, from: [first!], into: indices };
  const lead = addWires(growing, [{ ...wires[0]!, name: "lead to the radials", from: base, to: hub }]);
  return { name: antenna.name, at: base, from: [first!], into: lead };
}
