/** One conductor near by, alone over the soil, fed across a cut: where it resonates is read from what it shows there. */
import type { Station } from "../station/station";
import type { FeedGap, Point, Wire } from "../wires/structure";
import type { AntennaBuild } from "./antennaStructure";
import { emptyGrowing } from "./growing";
import { addSurroundings } from "./surroundings";
import { distance } from "./wireRun";

/** Cut at a length along it (m); its own insulators and feet stay as they are. Null where it cannot be cut there. */
export function loneConductor(station: Station, name: string, at: number): AntennaBuild | null {
  const growing = emptyGrowing();
  addSurroundings(
    { ...station, surroundings: station.surroundings.filter((s) => s.kind !== "roof" && s.name === name) },
    growing,
  );
  const place = placeOf(growing.wires, at);
  if (!place) return null;
  const { wires, feed } = cut(growing.wires, place);
  const gaps = growing.gaps.map((gap) => {
    if (gap.wire < place.wire) return gap;
    const beyond = gap.wire === place.wire && gap.distance >= place.left;
    if (gap.wire === place.wire && !beyond) return gap;
    return { ...gap, wire: gap.wire + 1, distance: beyond ? gap.distance - place.left : gap.distance };
  });
  return {
    structure: {
      wires,
      feeds: [feed],
      loads: [],
      gaps: gaps.map(({ closing: _, ...gap }) => gap),
      contacts: growing.contacts.map(({ closing: _, ...contact }) => contact),
    },
    refused: null,
    notComputed: growing.notComputed,
    assumed: growing.assumed,
    closings: [...gaps, ...growing.contacts].map((port) => port.closing),
    loops: [],
    joined: [],
    outside: [],
    surroundingWires: new Set(wires.map((_, w) => w)),
    thingWires: new Map([[name, wires.map((_, w) => w)]]),
    antennaWires: new Map(),
    outsideWires: new Set(),
    restingWires: growing.resting,
  };
}

interface Place {
  readonly wire: number;
  readonly left: number;
}

function placeOf(wires: readonly Wire[], at: number): Place | null {
  let left = at;
  for (const [wire, { from, to }] of wires.entries()) {
    const length = distance(from, to);
    if (left < length) return left > 0 ? { wire, left } : null;
    left -= length;
  }
  return null;
}

function cut(wires: readonly Wire[], place: Place): { wires: Wire[]; feed: FeedGap } {
  const whole = wires[place.wire]!;
  const share = place.left / distance(whole.from, whole.to);
  const at = [0, 1, 2].map((c) => whole.from[c]! + share * (whole.to[c]! - whole.from[c]!)) as [number, number, number];
  const middle: Point = at;
  const pieces = [
    { ...whole, name: `${whole.name}, before the cut`, to: middle },
    { ...whole, name: `${whole.name}, after the cut`, from: middle },
  ];
  return {
    wires: [...wires.slice(0, place.wire), ...pieces, ...wires.slice(place.wire + 1)],
    feed: { name: "cut", at: middle, from: [place.wire], into: [place.wire + 1] },
  };
}
