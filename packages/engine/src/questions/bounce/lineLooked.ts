/** The line of the path that is looked at, and what stands at its end. */
import { createAntennaSolver } from "../../chain/antennaSolver";
import { constantsOf } from "../../chain/edges";
import { deliveredPower } from "../../chain/foldback";
import { type ResolvedEdge, resolveStation } from "../../chain/resolve";
import { inputImpedance } from "../../lines/alongLine";
import { swr } from "../../lines/reflection";
import { type Complex, complex } from "../../numerics/complex";
import { oneReactance } from "../../pulses/resonator";
import { openEnd, shortedEnd } from "../../pulses/termination";
import type { LinePart } from "../../station/path";
import type { Band, Station } from "../../station/station";
import type { Context, Progress } from "../common/question";
import type { CannotWork } from "../common/worked";
import type { LineEdge, LineLooked } from "./looked";
import type { BounceAsked } from "./parameters";
import { solvedLoad } from "./solvedLoad";

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
  const found = yield* solvedLoad(station, band, edge, createAntennaSolver(kept));
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
