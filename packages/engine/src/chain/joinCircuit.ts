/** Path and antenna as one circuit, and the match that stands in for a tuner. */
import type { TwoPort } from "../networks/twoPort";
import { add, type Complex, complex, multiply, reciprocal, zero } from "../numerics/complex";
import type { Station } from "../station/station";
import type { SolvedAntenna } from "./antennaSolver";
import { type Circuit, type CircuitState, solveCircuit, type Termination } from "./circuit";
import { losslessMatch } from "./edges";
import type { Resolved, ResolvedJoint } from "./resolve";
import type { PointRefused, TunerTask } from "./workedPoint";

function terminationOf(joint: ResolvedJoint): Termination {
  if (joint.load) return { kind: "admittance", admittance: complex(1 / joint.load.value) };
  if (joint.idle === "shorted") return { kind: "short" };
  if (joint.idle !== null && joint.idle !== "open")
    return { kind: "admittance", admittance: complex(1 / joint.idle.value) };
  return { kind: "none" };
}

/** Antenna ports the path does not reach get a joint of their own, left open. */
export function joinCircuit(resolved: Resolved, antenna: SolvedAntenna, twoPorts: readonly TwoPort[]): Circuit {
  const terminations = resolved.joints.map(terminationOf);
  const names = antenna.feeds;
  const portJoints = names.map((name) => {
    const joint = resolved.joints.findIndex((j) => j.feed === name || (j.feed !== null && names.length === 1));
    return joint >= 0 ? joint : terminations.push({ kind: "none" }) - 1;
  });
  const edges = resolved.edges.map((edge, e) => ({ from: edge.from, to: edge.to, twoPort: twoPorts[e]! }));
  return { terminations, edges, portJoints, admittance: antenna.admittance, source: 0 };
}

/** Replaces a tuner of the unbranched path by a match without loss into what lies behind it. */
export function matchTuner(
  station: Station,
  resolved: Resolved,
  circuit: Circuit,
): { readonly circuit: Circuit; readonly tuner: TunerTask | null } | PointRefused {
  const tuners = resolved.edges.flatMap((e, i) => (e.part?.kind === "tuner" && e.inUse ? [i] : []));
  const [index] = tuners;
  if (index === undefined) return { circuit, tuner: null };
  const edge = resolved.edges[index]!;
  if (tuners.length > 1 || edge.branch !== "") {
    return {
      refused: {
        why: "not computed yet: several tuners, or a tuner behind a branch",
        mend: "one tuner, before any branch",
      },
    };
  }
  const behind = circuit.edges.slice(index + 1);
  const before = new Set(circuit.edges.slice(0, index + 1).map((e) => e.from));
  const terminations = circuit.terminations.map((t, joint): Termination => (before.has(joint) ? { kind: "short" } : t));
  const state = solveCircuit({ ...circuit, terminations, edges: behind, source: edge.to });
  const current = state && currentFrom({ ...circuit, edges: behind }, state, edge.to);
  if (!current)
    return { refused: { why: "nothing definite lies behind the tuner", mend: "a path that ends in a feed" } };
  const load = reciprocal(current);
  const target = station.transmitter.designedFor.value;
  if (!(load.re > 0))
    return { refused: { why: "what lies behind the tuner takes no power", mend: "another line or antenna" } };
  const edges = circuit.edges.map((e, i) => (i === index ? { ...e, twoPort: losslessMatch(load, target) } : e));
  return { circuit: { ...circuit, edges }, tuner: { name: edge.name, impedance: load, target } };
}

/** Current that leaves a joint towards the antenna: into the two-ports that start there and into its antenna port. */
export function currentFrom(circuit: Circuit, state: CircuitState, joint: number): Complex {
  let sum = zero;
  circuit.edges.forEach((edge, e) => {
    if (edge.from === joint) sum = add(sum, state.inward[e]!);
  });
  const termination = circuit.terminations[joint]!;
  if (termination.kind === "admittance") sum = add(sum, multiply(termination.admittance, state.voltage[joint]!));
  const port = circuit.portJoints.indexOf(joint);
  return port < 0 ? sum : add(sum, portCurrent(circuit, state, port));
}

export const portCurrent = (circuit: Circuit, state: CircuitState, port: number): Complex =>
  circuit.portJoints.reduce<Complex>(
    (sum, j, k) => add(sum, multiply(circuit.admittance[port]![k]!, state.voltage[j]!)),
    zero,
  );
