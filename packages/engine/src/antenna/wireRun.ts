/** Wires under construction: an antenna as straight runs, its legs, and its feed. SI, absolute places. */
import type { Conductor, Place } from "../station/place";
import type { Point, Wire } from "../wires/structure";
import { sectionOf } from "./sectionOf";

/** A leg: consecutive wires from the feed outwards; loads are placed by distance along it. */
export interface Leg {
  readonly name: string;
  readonly wires: readonly number[];
  /** An element without a feed, one wire: distances are counted from its middle to both sides. */
  readonly fromMiddle?: boolean;
}

export interface BuiltFeed {
  readonly name: string;
  readonly at: Point;
  /** Wires on the inner conductor's side, and on the outer's; every one has an end at `at`. */
  readonly from: readonly number[];
  readonly into: readonly number[];
}

export interface Built {
  readonly wires: readonly Wire[];
  readonly legs: readonly Leg[];
  readonly feeds: readonly BuiltFeed[];
}

export const pointOf = (place: Place): Point => [place[0].value, place[1].value, place[2].value];

/** Horizontal unit vector of an azimuth (radians clockwise from north). */
export const heading = (azimuth: number): readonly [number, number] => [Math.sin(azimuth), Math.cos(azimuth)];

export const offset = (p: Point, azimuth: number, along: number, up = 0): Point => {
  const [east, north] = heading(azimuth);
  return [p[0] + east * along, p[1] + north * along, p[2] + up];
};

export const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** One straight wire of a conductor, with its layers and its sleeve. */
export function wireOf(name: string, from: Point, to: Point, conductor: Conductor): Wire {
  const radius = conductor.diameter.value / 2;
  const { insulation } = conductor;
  const section = sectionOf(conductor);
  return {
    name,
    from,
    to,
    radius,
    conductivity: conductor.conductivity,
    permeability: conductor.permeability,
    ...(section ? { section } : {}),
    insulation: insulation && {
      outerRadius: radius + insulation.wall.value,
      permittivity: insulation.permittivity.value,
      ...(insulation.lossTangent ? { lossTangent: insulation.lossTangent.value } : {}),
    },
  };
}

/** Consecutive points joined by wires named "NAME 1", "NAME 2", ... (just NAME for one). */
export function chainOf(name: string, points: readonly Point[], conductor: Conductor): Wire[] {
  return points.slice(1).map((to, i) => {
    const label = points.length === 2 ? name : `${name} ${i + 1}`;
    return wireOf(label, points[i]!, to, conductor);
  });
}

export const turned = (wire: Wire): Wire => ({ ...wire, from: wire.to, to: wire.from });

/** Two legs that start at the same point, fed between them: the first leg is `from`. */
export function fedLegs(first: readonly Wire[], second: readonly Wire[], feedName: string): Built {
  const start = first[0]!.from;
  const indices = first.map((_, i) => i);
  const others = second.map((_, i) => first.length + i);
  return {
    wires: [...first, ...second],
    legs: [
      { name: "first leg", wires: indices },
      { name: "second leg", wires: others },
    ],
    feeds: [{ name: feedName, at: start, from: [0], into: [first.length] }],
  };
}

/** Same wires with every index moved up, to be joined with others. */
export const shifted = (built: Built, by: number): Built => ({
  wires: built.wires,
  legs: built.legs.map((leg) => ({ ...leg, wires: leg.wires.map((w) => w + by) })),
  feeds: built.feeds.map((f) => ({ ...f, from: f.from.map((w) => w + by), into: f.into.map((w) => w + by) })),
});

export function joined(parts: readonly Built[]): Built {
  let all: Built = { wires: [], legs: [], feeds: [] };
  for (const part of parts) {
    const moved = shifted(part, all.wires.length);
    all = {
      wires: [...all.wires, ...moved.wires],
      legs: [...all.legs, ...moved.legs],
      feeds: [...all.feeds, ...moved.feeds],
    };
  }
  return all;
}
