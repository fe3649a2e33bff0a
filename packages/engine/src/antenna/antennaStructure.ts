/** The whole radiating structure of a station: antennas, what they work against, the outside of the lines, conductors near by. */
import type { Joined } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { Structure } from "../wires/structure";
import { addAntenna } from "./antennaFeeds";
import {
  type AntennaRefusal,
  emptyGrowing,
  type Growing,
  type ModelAssumption,
  type PortClosing,
  type SmallLoop,
} from "./growing";
import type { OutsideLine } from "./outside/outsideLine";
import { addOutsideOfLines } from "./outside/outsideOfLines";
import { addSurroundings } from "./surroundings";

export type { AntennaRefusal, ModelAssumption, PortClosing } from "./growing";

export interface AntennaBuild {
  readonly structure: Structure;
  /** Why this station's antenna cannot be computed; the structure is then incomplete and must not be used. */
  readonly refused: AntennaRefusal | null;
  /** Things of the file that the model leaves out, each with "not computed yet". */
  readonly notComputed: readonly string[];
  readonly assumed: readonly ModelAssumption[];
  /** What closes the structure's gaps, then its contacts, in their order. */
  readonly closings: readonly PortClosing[];
  /** Lines between feeds and stubs across them, of all antennas. */
  readonly joined: readonly Joined[];
  readonly loops: readonly SmallLoop[];
  readonly outside: readonly OutsideLine[];
  /** Wires that belong to `surroundings`, the rest to antennas and lines. */
  readonly surroundingWires: ReadonlySet<number>;
  /** The same by the name of the conductor or sheet; those that could not be put in are missing. */
  readonly thingWires: ReadonlyMap<string, readonly number[]>;
  /** Wires of each antenna by its name, without the outside of its line. */
  readonly antennaWires: ReadonlyMap<string, readonly number[]>;
  /** Wires of the outside of lines. */
  readonly outsideWires: ReadonlySet<number>;
  /** Wires that lie on the soil or lead into it. */
  readonly restingWires: ReadonlySet<number>;
}

export function antennaStructure(station: Station): AntennaBuild {
  const growing = emptyGrowing();
  addSurroundings(station, growing);
  const antennaWires = new Map<string, readonly number[]>();
  for (const antenna of station.antennas) {
    const first = growing.wires.length;
    if (!growing.refused) addAntenna(station, antenna, growing);
    antennaWires.set(
      antenna.name,
      growing.wires.slice(first).map((_, i) => first + i),
    );
  }
  const ownWires = growing.wires.length;
  if (!growing.refused) {
    addOutsideOfLines(station, growing);
    growing.refused ??= lonelyFeed(growing);
  }
  const { wires, feeds, loads, gaps, contacts, notComputed, assumed, refused, outside, resting } = growing;
  return {
    structure: {
      wires,
      feeds,
      loads,
      gaps: gaps.map(({ closing: _, ...gap }) => gap),
      contacts: contacts.map(({ closing: _, ...contact }) => contact),
    },
    refused,
    notComputed,
    assumed,
    closings: [...gaps, ...contacts].map((port) => port.closing),
    loops: growing.loops,
    joined: station.antennas.flatMap((a) => a.joined ?? []),
    outside,
    surroundingWires: new Set([...growing.surrounding.values()].flat()),
    thingWires: growing.surrounding,
    antennaWires,
    outsideWires: new Set(wires.map((_, w) => w).filter((w) => w >= ownWires && !resting.has(w))),
    restingWires: resting,
  };
}

/** An antenna that works against the outside of its line, which turned out to have none. */
function lonelyFeed(growing: Growing): AntennaRefusal | null {
  const lonely = growing.feeds.find(
    (feed) => feed.into.length === 0 && !growing.contacts.some((c) => meetsFeed(c.at, feed.at)),
  );
  if (!lonely) return null;
  return {
    why: `"${lonely.name}" works against the outside of its line, but no routed coaxial line reaches its feed point`,
    mend: "a `route` on the last line of the path that ends at the feed point",
  };
}

const meetsFeed = (a: readonly number[], b: readonly number[]): boolean =>
  Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!, a[2]! - b[2]!) <= 1e-6;
