/** The station changed: without things, with one moved, opened, or ended otherwise. Each is a new station. */
import { exactly } from "../../quantity/quantity";
import type { Antenna, Shape } from "../../station/antennaDescription";
import type { Part, Path, PathEnd } from "../../station/path";
import type { Place } from "../../station/place";
import type { Station, Surrounding } from "../../station/station";
import type { Thing } from "./things";

const feedsOf = (antenna: Antenna): string[] =>
  antenna.feeds.length > 0 ? antenna.feeds.map((f) => f.name) : [antenna.name];

const named = (things: readonly Thing[], kinds: readonly Thing["kind"][]): Set<string> =>
  new Set(things.filter((t) => kinds.includes(t.kind)).map((t) => t.name));

/** Without these things; of an antenna its branch of the path goes too. */
export function withoutThings(station: Station, things: readonly Thing[]): Station {
  const surroundings = named(things, ["conductor", "sheet"]);
  const antennas = named(things, ["antenna"]);
  const gone = station.antennas.filter((a) => antennas.has(a.name));
  return {
    ...station,
    surroundings: station.surroundings.filter((s) => s.kind === "roof" || !surroundings.has(s.name)),
    antennas: station.antennas.filter((a) => !antennas.has(a.name)),
    path: withoutFeeds(station.path, new Set(gone.flatMap(feedsOf))),
  };
}

/** Branches that lead to these feeds alone are left out. */
export function withoutFeeds(path: Path, feeds: ReadonlySet<string>): Path {
  const { end } = path;
  if (end.kind === "switch") return { ...path, end: { ...end, positions: kept(end.positions, feeds) } };
  if (end.kind === "tee" || end.kind === "band splitter")
    return { ...path, end: { ...end, branches: kept(end.branches, feeds) } };
  return path;
}

const kept = (branches: Readonly<Record<string, Path>>, feeds: ReadonlySet<string>): Record<string, Path> =>
  Object.fromEntries(
    Object.entries(branches)
      .filter(([, branch]) => !leadsOnlyTo(branch.end, feeds))
      .map(([name, branch]) => [name, withoutFeeds(branch, feeds)]),
  );

function leadsOnlyTo(end: PathEnd, feeds: ReadonlySet<string>): boolean {
  if (end.kind === "feed") return feeds.has(end.feed);
  if (end.kind === "load") return false;
  return Object.values(end.kind === "switch" ? end.positions : end.branches).every((b) => leadsOnlyTo(b.end, feeds));
}

/** One thing moved by metres east and north, with the line of an antenna that does not transmit. */
export function withMoved(station: Station, thing: Thing, by: readonly [number, number]): Station {
  const shift = (p: Place): Place => [moved(p[0], by[0]), moved(p[1], by[1]), p[2]];
  if (thing.kind !== "antenna")
    return {
      ...station,
      surroundings: station.surroundings.map((s) =>
        s.kind !== "roof" && s.name === thing.name ? carried(s, shift) : s,
      ),
    };
  const antenna = station.antennas.find((a) => a.name === thing.name)!;
  return {
    ...station,
    antennas: station.antennas.map((a) => (a === antenna ? movedAntenna(a, shift) : a)),
    path: withShiftedRoutes(station.path, new Set(feedsOf(antenna)), shift),
  };
}

const moved = (q: Place[0], by: number): Place[0] => ({
  ...q,
  value: q.value + by,
  low: q.low + by,
  high: q.high + by,
});

const carried = (s: Exclude<Surrounding, { kind: "roof" }>, shift: (p: Place) => Place): Surrounding =>
  s.kind === "sheet" ? { ...s, corners: s.corners.map(shift) } : { ...s, points: s.points.map(shift) };

const movedAntenna = (antenna: Antenna, shift: (p: Place) => Place): Antenna => ({
  ...antenna,
  at: shift(antenna.at),
  feeds: antenna.feeds.map((f) => ({ ...f, at: shift(f.at) })),
  shapes: antenna.shapes.map(({ name, shape }) => ({ name, shape: movedShape(shape, shift) })),
});

/** Shapes that stand at the antenna's spot move with it; the others name places of their own. */
function movedShape(shape: Shape, shift: (p: Place) => Place): Shape {
  if (shape.kind === "end-fed wire") return { ...shape, points: shape.points.map(shift) };
  if (shape.kind === "loop") return { ...shape, corners: shape.corners.map(shift) };
  if (shape.kind !== "wires") return shape;
  return { ...shape, wires: shape.wires.map((w) => ({ ...w, from: shift(w.from), to: shift(w.to) })) };
}

/** Routes on branches that lead to these feeds alone. */
function withShiftedRoutes(path: Path, feeds: ReadonlySet<string>, shift: (p: Place) => Place): Path {
  const { end } = path;
  const shifted = (part: Part): Part => (part.kind === "line" ? { ...part, route: part.route.map(shift) } : part);
  const branch = (b: Path): Path =>
    leadsOnlyTo(b.end, feeds) ? { ...b, parts: b.parts.map(shifted) } : withShiftedRoutes(b, feeds, shift);
  const all = (branches: Readonly<Record<string, Path>>): Record<string, Path> =>
    Object.fromEntries(Object.entries(branches).map(([name, b]) => [name, branch(b)]));
  if (end.kind === "switch") return { ...path, end: { ...end, positions: all(end.positions) } };
  if (end.kind === "tee" || end.kind === "band splitter")
    return { ...path, end: { ...end, branches: all(end.branches) } };
  return path;
}

/** What bridges a place opened in a conductor, ohm. */
export type Bridge = { readonly re: number; readonly im: number } | "open";

/** A conductor opened at a length along it (m). */
export const withGap = (station: Station, thing: Thing, at: number, bridge: Bridge): Station => ({
  ...station,
  surroundings: station.surroundings.map((s) =>
    s.kind === "conductor" && s.name === thing.name
      ? { ...s, gaps: [...(s.gaps ?? []), { at: exactly(at), bridge }] }
      : s,
  ),
});

/** Ohm: a short that leaves the equations their figures. */
const short = 1e-4;

/** An antenna that does not transmit, cut off its line at the feed points, which are left open or shorted. */
export function withEnd(station: Station, thing: Thing, end: "open" | "shorted"): Station {
  const antenna = station.antennas.find((a) => a.name === thing.name)!;
  const feeds = feedsOf(antenna);
  const component = { coil: null, capacitor: null, resistor: exactly(short), q: exactly(Number.POSITIVE_INFINITY) };
  const across = feeds.map((from) => ({ component, from, farEnd: "across" as const }));
  const ended = end === "open" ? antenna : { ...antenna, joined: [...(antenna.joined ?? []), ...across] };
  return {
    ...station,
    antennas: station.antennas.map((a) => (a === antenna ? ended : a)),
    path: withoutFeeds(station.path, new Set(feeds)),
  };
}
