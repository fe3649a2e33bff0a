/** The line of the path that is looked at, and what stands at its end. */
import { type AntennaSolver, createAntennaSolver } from "../../chain/antennaSolver";
import { constantsOf } from "../../chain/edges";
import { deliveredPower } from "../../chain/foldback";
import type { ResolvedEdge } from "../../chain/resolve";
import { resolveStation } from "../../chain/resolve";
import { requestAt } from "../../chain/solveRequest";
import type { WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { inputImpedance } from "../../lines/alongLine";
import { swr } from "../../lines/reflection";
import { type Complex, complex, magnitude, subtract } from "../../numerics/complex";
import { fitResonator, type ImpedanceSample, oneReactance, type ResonatorFit } from "../../pulses/resonator";
import { openEnd, shortedEnd, type Termination } from "../../pulses/termination";
import type { LinePart } from "../../station/path";
import type { Band, Station } from "../../station/station";
import type { Context, Progress } from "../common/question";
import type { CannotWork } from "../common/worked";
import type { BounceAsked } from "./parameters";

export interface LineLooked {
  readonly part: LinePart;
  readonly length: number;
  /** Impedance at the end of the line at the frequency; null: open. */
  readonly load: Complex | null;
  readonly termination: Termination;
  /** Where the load was taken from the antenna and fitted. */
  readonly fit: ResonatorFit | null;
  /** "the antenna", "the rest of the path", "25 Ω", "an open end". */
  readonly loadKind: "antenna" | "rest" | "tried" | "open" | "shorted";
  /** Net power that enters the line once all is settled, W; null where it takes none to speak of: the first wave then carries `ratedPower`. */
  readonly powerIn: number | null;
  readonly ratedPower: number;
  /** The whole station; null where another load was tried. */
  readonly point: WorkedPoint | null;
}

type LineEdge = ResolvedEdge & { readonly part: LinePart };

export function* lineLooked(
  station: Station,
  band: Band,
  asked: BounceAsked,
  { kept }: Pick<Context, "kept">,
): Generator<Progress, LineLooked | CannotWork> {
  const frequency = band.frequency.value;
  const edge = chosenEdge(resolveStation(station, band, frequency).edges, asked.line);
  if ("refused" in edge) return edge;
  if (!((asked.length ?? edge.part.length.value) > 0)) {
    return { refused: `${edge.name} has no length`, mend: "a line with a length above 0 m" };
  }
  if (typeof asked.load === "string" && asked.loadReactance !== 0) {
    return {
      refused: `a load that is ${asked.load} has no reactance beside it`,
      mend: "a load in ohm, or no reactance",
    };
  }
  if (asked.load !== null) return tried(station, edge.part, frequency, asked, asked.load);
  const found = yield* fromStation(station, band, edge, createAntennaSolver(kept));
  return "refused" in found || asked.length === null ? found : withLength(station, found, frequency, asked.length);
}

/** The longest line in use, or the one that bears the name or designation asked for. */
function chosenEdge(edges: readonly ResolvedEdge[], name: string | null): LineEdge | CannotWork {
  const lines = edges.filter((e): e is LineEdge => e.inUse && e.part?.kind === "line");
  const [first] = lines;
  if (!first) return { refused: "the path has no line in this band", mend: "a line in the path" };
  if (name === null) return lines.reduce((a, b) => (b.part.length.value > a.part.length.value ? b : a), first);
  const found = lines.find((e) => e.name === name) ?? lines.find((e) => e.part.line.designation === name);
  const names = lines.map((e) => e.name).join(", ");
  return found ?? { refused: `the path has no line called "${name}" in this band`, mend: `one of: ${names}` };
}

function tried(
  station: Station,
  part: LinePart,
  frequency: number,
  asked: BounceAsked,
  load: NonNullable<BounceAsked["load"]>,
): LineLooked {
  const shared = {
    part,
    length: asked.length ?? part.length.value,
    fit: null,
    point: null,
    ratedPower: station.transmitter.power.value,
  };
  if (load === "open") return { ...shared, load: null, termination: openEnd, loadKind: "open", powerIn: null };
  if (load === "shorted") {
    return { ...shared, load: complex(0), termination: shortedEnd, loadKind: "shorted", powerIn: null };
  }
  const impedance = complex(load, asked.loadReactance);
  const powerIn = powerAtStart(station, part, frequency, shared.length, impedance);
  const termination = oneReactance(impedance, 2 * Math.PI * frequency);
  return { ...shared, load: impedance, termination, loadKind: "tried", powerIn };
}

/** W that the transmitter delivers when it stands at the start of the line. */
function powerAtStart(station: Station, part: LinePart, frequency: number, length: number, load: Complex): number {
  const input = inputImpedance(constantsOf(part, frequency), length, load);
  return deliveredPower(station.transmitter, swr(input, station.transmitter.designedFor.value));
}

/** The station's own load at the end of another length: what stands before the line is left out, as for a load that is tried. */
function withLength(station: Station, looked: LineLooked, frequency: number, length: number): LineLooked {
  const powerIn = looked.load && powerAtStart(station, looked.part, frequency, length, looked.load);
  return { ...looked, length, powerIn, point: null };
}

/** The load as the solved station shows it: at the frequency itself, and near by for its slope. */
function* fromStation(
  station: Station,
  band: Band,
  edge: LineEdge,
  solver: AntennaSolver,
): Generator<Progress, LineLooked | CannotWork> {
  const frequency = band.frequency.value;
  const beside = framing(band);
  const ahead = [frequency, ...beside].map((f) => requestAt(station, f));
  yield { done: 0, of: ahead.length, what: "the antenna", ahead };
  const point = workPoint(station, band, frequency, solver, { tuner: "matched" });
  if ("refused" in point)
    return { refused: point.refused.why, mend: `${point.refused.mend}; or a \`load\` to try at the end of the line` };
  const at = loadAt(point, edge.name);
  if (at === null) return { refused: `${edge.name} leads to no antenna in this band`, mend: "another `line`" };
  if (!(at.impedance.re > 0)) {
    return {
      refused: `power comes back out of the end of ${edge.name}: another feed drives it`,
      mend: "another `line`, or a `load` to try",
    };
  }
  const samples: ImpedanceSample[] = [];
  for (const [i, f] of (tunerBehind(point, edge.name) ? [] : beside).entries()) {
    yield { done: i + 1, of: ahead.length, what: "the antenna beside its frequency" };
    const near = workPoint(station, band, f, solver, { tuner: "matched" });
    const there = "refused" in near ? null : loadAt(near, edge.name);
    if (there && there.impedance.re > 0) samples.push({ frequency: f, impedance: there.impedance });
  }
  const fit = fitResonator({ frequency, impedance: at.impedance }, samples);
  const worked = point.parts.find((p) => p.edge.name === edge.name)!;
  return {
    part: edge.part,
    length: edge.part.length.value,
    load: at.impedance,
    termination: fit.termination,
    fit,
    loadKind: at.isFeed ? "antenna" : "rest",
    powerIn: worked.powerIn,
    ratedPower: point.ratedPower,
    point,
  };
}

/** Half a percent to two percent to either side: near enough for one slope, far enough to be one. */
function framing(band: Band): number[] {
  const f = band.frequency.value;
  const half = Math.min(Math.max((band.sweep.to - band.sweep.from) / 2, 0.005 * f), 0.02 * f);
  return [f - half, f + half];
}

function loadAt(point: WorkedPoint, name: string): { readonly impedance: Complex; readonly isFeed: boolean } | null {
  const part = point.parts.find((p) => p.edge.name === name);
  const joint = part && point.joints.find((j) => j.name === part.to);
  if (!joint) return null;
  // Chokes and meters pass everything between the wires: the antenna itself is then seen.
  const feed = point.joints.find((j) => j.name === "feed point");
  const isFeed =
    feed !== undefined && magnitude(subtract(feed.impedance, joint.impedance)) < 1e-9 * magnitude(joint.impedance);
  return { impedance: joint.impedance, isFeed };
}

/** A tuner behind the line is matched anew at every frequency here: what it shows beside the working one means nothing. */
function tunerBehind(point: WorkedPoint, name: string): boolean {
  const used = point.parts.filter((p) => p.edge.inUse);
  const line = used.findIndex((p) => p.edge.name === name);
  return used.findIndex((p) => p.edge.name === point.tuner?.name) > line;
}
