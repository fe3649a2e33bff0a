/**
 * The outer surface of every routed coaxial line as wires of the antenna: from the transmitter, tied to its earth or
 * floating, through chokes and bonds to the outer side of the feed. The path is walked in its own order, branches included.
 */
import { isPair } from "../../station/isPair";
import type { LinePart, Part, Path } from "../../station/path";
import type { Station } from "../../station/station";
import type { Point } from "../../wires/structure";
import { connectToEarth, contactHeight } from "../earths";
import { addWires, assume, type Growing, samePoint } from "../growing";
import { distance, pointOf } from "../wireRun";
import { attachToFeed, type Reached } from "./attachToFeed";
import { openGap } from "./openGap";
import { type Opening, openingOf } from "./openings";
import { sheathOf, sheathWire } from "./sheath";

/** Routes that end this near to each other (m) are joined straight. */
const joinedWithin = 1;

/** Where the walk stands: the run so far (null: no outside here), what opens it next, and whether it is still at the start. */
interface Walk {
  readonly reached: Reached | null;
  readonly pending: readonly Opening[];
  readonly atTransmitter: boolean;
}

export function addOutsideOfLines(station: Station, growing: Growing): void {
  walkPath(station, growing, station.path, { reached: null, pending: [], atTransmitter: true });
}

function walkPath(station: Station, growing: Growing, path: Path, start: Walk): void {
  const walk = path.parts.reduce(
    (at, part) => (part.state === "bypassed" ? at : passPart(station, growing, part, at)),
    start,
  );
  const { end } = path;
  if (end.kind === "feed") attachToFeed(growing, end.feed, walk.reached, walk.pending);
  else if (end.kind === "switch")
    for (const branch of Object.values(end.positions)) walkPath(station, growing, branch, walk);
  else if (end.kind !== "load")
    for (const branch of Object.values(end.branches)) walkPath(station, growing, branch, walk);
}

function passPart(station: Station, growing: Growing, part: Part, walk: Walk): Walk {
  if (part.kind === "line")
    return isPair(part) ? { ...walk, reached: null, atTransmitter: false } : passLine(station, growing, part, walk);
  const earth = part.kind === "bond" || part.kind === "arrestor" ? part.earth : null;
  if (earth && walk.reached) {
    const { at, bonds, length } = walk.reached;
    if (!connectToEarth(station, growing, earth, at)) return walk;
    return { ...walk, reached: { ...walk.reached, bonds: [...bonds, { earth, distance: length }] } };
  }
  const opening = openingOf(part, growing);
  return opening ? { ...walk, pending: [...walk.pending, opening] } : walk;
}

function passLine(station: Station, growing: Growing, part: LinePart, walk: Walk): Walk {
  const gone: Walk = { reached: null, pending: [], atTransmitter: false };
  if (part.route.length < 2) {
    if (walk.reached)
      growing.notComputed.push(
        `the outside of ${part.name} has no route: that of the line before it ends there, floating`,
      );
    return gone;
  }
  const soil = station.ground.kind !== "free space";
  if (soil && part.route.some((p) => p[2].value < 0)) {
    growing.notComputed.push(`not computed yet: the outside of ${part.name}, which runs in the soil`);
    return gone;
  }
  const sheath = sheathOf(part.name, part.line, growing);
  const lying = Math.max(contactHeight, sheath.jacket);
  const points = part.route.map(pointOf).map((p): Point => (soil ? [p[0], p[1], Math.max(p[2], lying)] : p));
  const joined = joinRoutes(growing, part, points, walk.reached?.at ?? null);
  const before = joined ? walk.reached : startOfRun(station, growing, points[0]!, walk.atTransmitter);
  const run = (joined ?? points).filter((p, i, all) => i === 0 || !samePoint(p, all[i - 1]!));
  const wires = addWires(
    growing,
    run
      .slice(1)
      .map((to, i) =>
        sheathWire(
          run.length === 2 ? `outside of ${part.name}` : `outside of ${part.name}, ${i + 1}`,
          run[i]!,
          to,
          sheath,
        ),
      ),
  );
  const beyond = before !== null && (joined !== null || before.earthed !== null);
  const base = before ?? emptyRun(points[0]!, walk.atTransmitter);
  const choke = beyond && walk.pending.length > 0 ? openGap(growing, walk.pending, wires[0]!, 0, base.length) : null;
  const length = run.slice(1).reduce((sum, to, i) => sum + distance(run[i]!, to), base.length);
  return {
    reached: {
      ...base,
      at: run.at(-1)!,
      lines: [...base.lines, part.name],
      wires: [...base.wires, ...wires],
      length,
      chokes: choke ? [...base.chokes, choke] : base.chokes,
    },
    pending: [],
    atTransmitter: false,
  };
}

const emptyRun = (at: Point, fromTransmitter: boolean): Reached => ({
  at,
  lines: [],
  wires: [],
  length: 0,
  fromTransmitter,
  earthed: null,
  chokes: [],
  bonds: [],
});

/** A run that begins here; at the transmitter it is tied to the transmitter's earth. */
function startOfRun(station: Station, growing: Growing, at: Point, atTransmitter: boolean): Reached {
  const { earthed } = station.transmitter;
  const tied = atTransmitter && earthed !== "floating" && connectToEarth(station, growing, earthed, at);
  return { ...emptyRun(at, atTransmitter), earthed: tied ? earthed : null };
}

/** The points of a route joined to where the line before ended; null when there is none, or it ends too far away. */
function joinRoutes(growing: Growing, part: LinePart, points: readonly Point[], before: Point | null): Point[] | null {
  if (before === null) return null;
  const off = distance(before, points[0]!);
  if (off <= 1e-6) return [before, ...points.slice(1)];
  if (off <= joinedWithin) {
    assume(
      growing,
      `outside of ${part.name}`,
      "joined straight to that of the line before",
      `their routes end ${off.toFixed(2)} m apart`,
    );
    return [before, ...points];
  }
  growing.notComputed.push(
    `the outside of ${part.name} begins ${off.toFixed(1)} m from where the line before ends: they are taken as apart`,
  );
  return null;
}
