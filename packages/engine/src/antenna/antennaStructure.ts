/** The whole radiating structure of a station: every antenna, what it works against, and conductors near by. */
import type { Complex } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { FeedGap, LumpedLoad, Structure, Wire } from "../wires/structure";
import { placeLoads } from "./loads";
import { fedAgainst, wiresAt } from "./returnSide";
import { meets, shapeWires } from "./shapes/shapeWires";
import { steepness } from "./shapes/span";
import { type Built, type BuiltFeed, chainOf, joined, pointOf, shifted } from "./wireRun";

/** What bridges a gap, or the earth a contact leads to (there its whole impedance, electrode included). */
export interface PortClosing {
  readonly name: string;
  readonly kind: "choke" | "earth";
  /** Ohm at an angular frequency; "open" where nothing bridges the gap. */
  readonly impedance: (angularFrequency: number) => Complex | "open";
}

export interface AntennaRefusal {
  readonly why: string;
  readonly mend: string;
}

export interface AntennaBuild {
  readonly structure: Structure;
  /** Why this station's antenna cannot be computed; the structure is then incomplete and must not be used. */
  readonly refused: AntennaRefusal | null;
  /** Things of the file that the model leaves out, each with "not computed yet". */
  readonly notComputed: readonly string[];
  /** What closes the structure's gaps, then its contacts, in their order. */
  readonly closings: readonly PortClosing[];
  /** Wires that belong to `surroundings`, the rest to antennas. */
  readonly surroundingWires: ReadonlySet<number>;
}

interface Growing {
  wires: Wire[];
  feeds: FeedGap[];
  loads: LumpedLoad[];
  notComputed: string[];
  refused: AntennaRefusal | null;
  surrounding: Map<string, number[]>;
}

/** Lowest height of a conductor's point that still counts as above the soil, metres. */
const aboveSoil = 1e-6;

export function antennaStructure(station: Station): AntennaBuild {
  const growing: Growing = { wires: [], feeds: [], loads: [], notComputed: [], refused: null, surrounding: new Map() };
  addSurroundings(station, growing);
  for (const antenna of station.antennas) {
    if (!growing.refused) addAntenna(station, antenna, growing);
  }
  const { wires, feeds, loads, notComputed, refused } = growing;
  return {
    structure: { wires, feeds, loads },
    refused,
    notComputed,
    closings: [],
    surroundingWires: new Set([...growing.surrounding.values()].flat()),
  };
}

function addSurroundings(station: Station, growing: Growing): void {
  for (const thing of station.surroundings) {
    if (thing.kind === "sheet") growing.notComputed.push(`not computed yet: the sheet "${thing.name}" near by`);
    else if (thing.kind === "roof") {
      const { low, high } = thing.loss;
      growing.notComputed.push(
        `not computed yet: the roof of ${thing.covering}, which may take another ${low} to ${high} dB`,
      );
    } else if (station.ground.kind !== "free space" && thing.points.some((p) => p[2].value <= aboveSoil)) {
      growing.notComputed.push(`not computed yet: the conductor "${thing.name}", which touches the soil`);
    } else {
      const chain = chainOf(thing.name, thing.points.map(pointOf), thing.wire);
      growing.surrounding.set(
        thing.name,
        chain.map((_, i) => growing.wires.length + i),
      );
      growing.wires.push(...chain);
    }
  }
}

function addAntenna(station: Station, antenna: Antenna, growing: Growing): void {
  if (antenna.shapes.some((s) => s.shape.kind === "small loop")) {
    growing.refused = { why: "not computed yet: the small loop with its capacitor", mend: "a shape of straight wires" };
    return;
  }
  if (antenna.shapes.some((s) => cannotHang(s.shape))) {
    growing.refused = {
      why: "the ends hang further below the feed point than the legs are long",
      mend: "another `ends height` or `length`",
    };
    return;
  }
  if (antenna.shapes.some(({ shape }) => shape.kind === "beam" && shape.boomCorrection === "insulated")) {
    growing.notComputed.push("not computed yet: what a metal boom does to elements mounted insulated on it");
  }
  const built = onOneFeed(antenna);
  const placed = placeLoads(antenna, built);
  if (placed.refused) {
    growing.refused = {
      why: `not computed yet: ${placed.refused}`,
      mend: "the same antenna without it, or a later version",
    };
    return;
  }
  growing.notComputed.push(...placed.notComputed.map((n) => `not computed yet: ${n}`));
  const start = growing.wires.length;
  const feeds = feedsOf(station, antenna, built, growing);
  if (!Array.isArray(feeds)) return;
  growing.feeds.push(...feeds);
  growing.loads.push(...placed.loads.map((load) => ({ ...load, wire: load.wire + start })));
}

function cannotHang(shape: Shape): boolean {
  if (shape.kind === "off-centre dipole")
    return steepness(shape, Math.min(shape.legs[0].value, shape.legs[1].value)) >= 1;
  if (shape.kind === "dipole" || shape.kind === "inverted vee")
    return steepness({ sag: exactly(0), ...shape }, shape.length.value / 2) >= 1;
  return false;
}

/** Shapes of one antenna; several (`elements`) share one feed point, first legs with first legs. */
function onOneFeed(antenna: Antenna): Built {
  const several = antenna.shapes.length > 1;
  const shapes = antenna.shapes.map(({ name, shape }) => {
    const built = shapeWires(shape, pointOf(antenna.at), antenna.name);
    return several ? withOwnName(name, built) : built;
  });
  const all = joined(shapes);
  const [first] = all.feeds;
  if (!several || !first) return all;
  const shared = all.feeds.filter((f) => meets(f.at, first.at));
  const feed: BuiltFeed = {
    name: antenna.name,
    at: first.at,
    from: shared.flatMap((f) => f.from),
    into: shared.flatMap((f) => f.into),
  };
  return { ...all, feeds: [feed, ...all.feeds.filter((f) => !meets(f.at, first.at))] };
}

/** All legs of a shape also under the shape's own name, each once: loads are put on one shape of several by it. */
function withOwnName(name: string, built: Built): Built {
  const legs = [...built.legs];
  const known = legs.filter((leg) => leg.name === name).flatMap((leg) => leg.wires);
  for (const leg of built.legs) {
    if (leg.wires.every((w) => known.includes(w))) continue;
    known.push(...leg.wires);
    legs.push({ ...leg, name });
  }
  return { ...built, legs };
}

/** Adds the antenna's wires and returns its feeds, or refuses. */
function feedsOf(station: Station, antenna: Antenna, built: Built, growing: Growing): FeedGap[] | null {
  const start = growing.wires.length;
  if (antenna.feeds.length > 0) return explicitFeeds(antenna, built, growing);
  if (built.feeds.length > 0) {
    growing.wires.push(...built.wires);
    return [...shifted(built, start).feeds];
  }
  const side = fedAgainst(station, antenna, built, antenna.name);
  if ("refused" in side) {
    growing.refused = { why: side.refused, mend: side.mend };
    return null;
  }
  if ("built" in side) {
    growing.wires.push(...side.built.wires);
    return [...shifted(side.built, start).feeds];
  }
  const base = built.wires[0]!.from;
  const conductor = growing.surrounding.get(side.surrounding);
  const into = (conductor ?? []).filter((w) => wiresAt(growing.wires, base).includes(w));
  if (into.length === 0) {
    growing.refused = {
      why: `the conductor "${side.surrounding}" has no end at the antenna's feed point`,
      mend: "give the conductor a point there, above the soil",
    };
    return null;
  }
  growing.wires.push(...built.wires);
  return [{ name: antenna.name, at: base, from: [start], into }];
}

function explicitFeeds(antenna: Antenna, built: Built, growing: Growing): FeedGap[] | null {
  const start = growing.wires.length;
  growing.wires.push(...built.wires);
  const feeds: FeedGap[] = [];
  for (const feed of antenna.feeds) {
    const at = pointOf(feed.at);
    const named = (name: string) =>
      built.legs
        .filter((l) => l.name === name)
        .flatMap((l) => l.wires)
        .filter((w) => wiresAt(built.wires, at).includes(w));
    const from = named(feed.from);
    const into = named(feed.into);
    if (from.length === 0 || into.length === 0) {
      growing.refused = {
        why: `the feed "${feed.name}" names wires that do not both end at its place`,
        mend: "`at`, `from` and `into` of that feed",
      };
      return null;
    }
    feeds.push({ name: feed.name, at, from: from.map((w) => w + start), into: into.map((w) => w + start) });
  }
  return feeds;
}
