/**
 * The station resolved for one band: switches thrown, bypassed parts out, what is left as joints and edges.
 * Joint names are those of the station file: `transmitter`, `after NAME`, `feed point` (`feed point NAME` with several).
 */
import type { Quantity } from "../quantity/quantity";
import { isPair } from "../station/isPair";
import type { Part, Path, PathEnd } from "../station/path";
import type { Band, Station } from "../station/station";

export type Side = "coaxial" | "balanced";

export interface ResolvedJoint {
  readonly name: string;
  readonly side: Side;
  readonly feed: string | null;
  readonly load: Quantity | null;
  /** How a switch leaves this end of an idle branch; null for joints in use. */
  readonly idle: "open" | "shorted" | Quantity | null;
}

/** A part between two joints, or the loss of a switch or splitter (`part` null). */
export interface ResolvedEdge {
  readonly name: string;
  readonly kind: string;
  readonly part: Part | null;
  /** dB, for switches and splitters. */
  readonly contactLoss: Quantity | null;
  readonly from: number;
  readonly to: number;
  /** Branch name, "" before any. */
  readonly branch: string;
  readonly inUse: boolean;
}

export interface Resolved {
  readonly band: Band;
  readonly joints: readonly ResolvedJoint[];
  readonly edges: readonly ResolvedEdge[];
  /** Feeds the transmitter reaches in this band, in file order. */
  readonly feedsInUse: readonly string[];
  readonly notes: readonly string[];
  readonly notComputed: readonly string[];
  readonly cautions: readonly string[];
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
interface Growing {
  station: Station;
  band: Band;
  frequency: number;
  joints: Mutable<ResolvedJoint>[];
  edges: ResolvedEdge[];
  feedsInUse: string[];
  notes: string[];
  notComputed: string[];
  cautions: string[];
}

interface Walk {
  readonly joint: number;
  readonly side: Side;
  readonly branch: string;
  readonly inUse: boolean;
}

export function resolveStation(station: Station, band: Band, frequency: number): Resolved {
  const growing: Growing = {
    station,
    band,
    frequency,
    joints: [],
    edges: [],
    feedsInUse: [],
    notes: [],
    notComputed: [],
    cautions: [],
  };
  const start = addJoint(growing, "transmitter", "coaxial", null);
  walkPath(growing, station.path, { joint: start, side: "coaxial", branch: "", inUse: true });
  nameFeedPoints(growing);
  const { joints, edges, feedsInUse, notes, notComputed, cautions } = growing;
  return { band, joints, edges, feedsInUse, notes, notComputed, cautions };
}

function addJoint(growing: Growing, name: string, side: Side, idle: ResolvedJoint["idle"]): number {
  return growing.joints.push({ name, side, feed: null, load: null, idle }) - 1;
}

const stateOf = (growing: Growing, part: Part): "in line" | "bypassed" => {
  const said = growing.band.set[part.name];
  if (said === "bypassed" || said === "in line") return said;
  if (part.kind === "tuner" && part.set === "bypassed") return "bypassed";
  return part.state;
};

function sideAfter(part: Part, side: Side): Side {
  if (part.kind === "balun") return "balanced";
  if (part.kind === "transformer" && part.sides === "isolated") return "balanced";
  if (part.kind === "tuner" && part.output === "balanced") return "balanced";
  return isPair(part) ? "balanced" : side;
}

function walkPath(growing: Growing, path: Path, start: Walk): void {
  let at = start;
  for (const part of path.parts) {
    if (stateOf(growing, part) === "bypassed") {
      growing.notes.push(`${part.name} is bypassed`);
      continue;
    }
    if (isPair(part) && at.side === "coaxial") {
      growing.cautions.push(
        `${part.name} is a pair line put straight on a coaxial joint: its two wires will not carry equal currents.`,
      );
    }
    const side = sideAfter(part, at.side);
    const to = addJoint(growing, `after ${part.name}`, side, null);
    growing.edges.push({
      name: part.name,
      kind: part.kind,
      part,
      contactLoss: null,
      from: at.joint,
      to,
      branch: at.branch,
      inUse: at.inUse,
    });
    at = { ...at, joint: to, side };
  }
  walkEnd(growing, path.end, at);
}

function walkEnd(growing: Growing, end: PathEnd, at: Walk): void {
  const joint = growing.joints[at.joint]!;
  switch (end.kind) {
    case "feed":
      joint.feed = end.feed;
      if (at.inUse) growing.feedsInUse.push(end.feed);
      return;
    case "load":
      joint.load = end.resistance;
      return;
    case "tee":
      for (const [branch, path] of Object.entries(end.branches)) walkPath(growing, path, { ...at, branch });
      return;
    case "switch":
      walkSwitch(growing, end, at);
      return;
    case "band splitter":
      walkSplitter(growing, end, at);
      return;
  }
}

function through(growing: Growing, name: string, kind: string, loss: Quantity, at: Walk, branch: string): Walk {
  const to = addJoint(growing, `after ${name}`, at.side, null);
  growing.edges.push({
    name,
    kind,
    part: null,
    contactLoss: loss,
    from: at.joint,
    to,
    branch: at.branch,
    inUse: at.inUse,
  });
  return { ...at, joint: to, branch };
}

/** A branch the transmitter does not reach: walked from an end of its own, left as `idle` says. */
function walkIdle(
  growing: Growing,
  name: string,
  path: Path,
  idle: NonNullable<ResolvedJoint["idle"]>,
  side: Side,
): void {
  const joint = addJoint(growing, `idle side of ${name}`, side, idle);
  walkPath(growing, path, { joint, side, branch: name, inUse: false });
}

function walkSwitch(growing: Growing, end: Extract<PathEnd, { kind: "switch" }>, at: Walk): void {
  const chosen = growing.band.set[end.name] ?? end.now;
  if (end.isolation)
    growing.notComputed.push(
      `not computed yet: what leaks across the switch "${end.name}": its idle side is taken as cut off`,
    );
  for (const [name, path] of Object.entries(end.positions)) {
    if (name === chosen) walkPath(growing, path, through(growing, end.name, "switch", end.loss, at, name));
    else walkIdle(growing, name, path, end.idle, at.side);
  }
}

function walkSplitter(growing: Growing, end: Extract<PathEnd, { kind: "band splitter" }>, at: Walk): void {
  const f = growing.frequency;
  const passing = Object.keys(end.branches).filter((name) => {
    const span = end.passes[name];
    return span !== undefined && f >= span.from && f <= span.to;
  });
  growing.notes.push(
    `the band splitter "${end.name}" is taken to pass its band with its stated loss and to shut out the others`,
  );
  for (const [name, path] of Object.entries(end.branches)) {
    if (passing.includes(name))
      walkPath(growing, path, through(growing, end.name, "band splitter", end.loss, at, name));
    else walkIdle(growing, name, path, "open", at.side);
  }
}

function nameFeedPoints(growing: Growing): void {
  const several = growing.feedsInUse.length > 1;
  growing.joints.forEach((joint, index) => {
    if (joint.feed === null || index === 0) return;
    const used = growing.feedsInUse.includes(joint.feed) && joint.idle === null;
    joint.name = used && !several ? "feed point" : `feed point ${joint.feed}`;
  });
}
