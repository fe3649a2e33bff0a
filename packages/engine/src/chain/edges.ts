/** A two-port for every edge of a resolved station, and the match that stands in for a tuner. */
import { lineConstants } from "../lines/lineConstants";
import { lineTwoPort } from "../networks/lineTwoPort";
import { type PartResult, partTwoPort } from "../networks/partTwoPort";
import { matchedAttenuator, type TwoPort } from "../networks/twoPort";
import { type Complex, complex } from "../numerics/complex";
import type { LinePart, Part } from "../station/path";
import type { Station } from "../station/station";
import type { Resolved, ResolvedEdge } from "./resolve";
import type { PointRefused } from "./workedPoint";

/** Constants of a line of the path at a frequency, its excess loss and temperature included. */
export const constantsOf = (part: LinePart, frequency: number) =>
  lineConstants(part.line.model, frequency, {
    excessDecibelsPerMetre: part.excessLoss.value,
    temperature: part.temperature?.value ?? null,
  });

/** The line a choke is wound of: the one before it in its branch, else the one after. */
function lineBeside(resolved: Resolved, edge: ResolvedEdge): LinePart | null {
  const isLine = (p: Part | null): p is LinePart => p?.kind === "line";
  const before = resolved.edges.find((e) => e.to === edge.from)?.part ?? null;
  const after = resolved.edges.find((e) => e.from === edge.to)?.part ?? null;
  return isLine(before) ? before : isLine(after) ? after : null;
}

export interface EdgeTwoPorts {
  readonly twoPorts: readonly TwoPort[];
  readonly notes: readonly string[];
}

export function edgeTwoPorts(station: Station, resolved: Resolved, frequency: number): EdgeTwoPorts | PointRefused {
  const twoPorts: TwoPort[] = [];
  const notes: string[] = [];
  for (const edge of resolved.edges) {
    const made = edgeTwoPort(station, resolved, edge, frequency);
    if (made.kind === "not computed") {
      return {
        refused: { why: `not computed: ${made.reason}`, mend: `another description of "${edge.name}" in the path` },
      };
    }
    twoPorts.push(made.twoPort);
    notes.push(...made.notes.map((note) => `${edge.name}: ${note}`));
  }
  return { twoPorts, notes };
}

const plain = (twoPort: TwoPort, notes: readonly string[] = []): PartResult => ({ kind: "two-port", twoPort, notes });

function edgeTwoPort(station: Station, resolved: Resolved, edge: ResolvedEdge, frequency: number): PartResult {
  const reference = station.transmitter.designedFor.value;
  const { part } = edge;
  if (part === null) return plain(matchedAttenuator(edge.contactLoss?.value ?? 0, reference));
  if (part.kind === "choke" && part.length) {
    const line = lineBeside(resolved, edge);
    if (line) return plain(lineTwoPort(constantsOf(line, frequency), part.length.value));
    return plain(matchedAttenuator(0, reference), ["the line wound in it is not known: its length is left out"]);
  }
  return partTwoPort(part, frequency, { measured: station.measured, reference });
}

/**
 * A match without loss from `load` to `target` ohm: a series reactance that cancels the load's, then an ideal
 * transformer. Stands in for a tuner whose own loss is not computed yet.
 */
export function losslessMatch(load: Complex, target: number): TwoPort {
  const n = Math.sqrt(target / load.re);
  return { a: complex(n), b: complex(0, -n * load.im), c: complex(0), d: complex(1 / n) };
}
