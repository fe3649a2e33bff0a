/** The one composition: resolved station, path and antenna joined, at one frequency. */

import { alongLine, netPower, type PortState } from "../lines/alongLine";
import { matchedLoss } from "../lines/lineConstants";
import { swr } from "../lines/reflection";
import { type Complex, conjugate, divide, multiply, reciprocal, scale } from "../numerics/complex";
import type { LinePart } from "../station/path";
import type { Band, Station } from "../station/station";
import type { AntennaSolver, SolvedAntenna } from "./antennaSolver";
import { type Circuit, type CircuitState, solveCircuit } from "./circuit";
import { constantsOf, edgeTwoPorts } from "./edges";
import { beyondCurve, deliveredPower } from "./foldback";
import { currentFrom, joinCircuit, matchTuner, portCurrent } from "./joinCircuit";
import { type Resolved, resolveStation } from "./resolve";
import type { PointRefused, TunerTask, WorkedJoint, WorkedPart, WorkedPoint } from "./workedPoint";

export interface PointOptions {
  /** A tuner in the path is taken as a match without loss, or as not there. */
  readonly tuner: "matched" | "through";
  /** Metres by which the antennas are raised. */
  readonly lift?: number;
}

/** Equal steps along a line at which power, voltage and current are given. */
const stepsAlongLine = 24;

export function workPoint(
  station: Station,
  band: Band,
  frequency: number,
  solver: AntennaSolver,
  options: PointOptions,
): WorkedPoint | PointRefused {
  const resolved = resolveStation(station, band, frequency);
  if (resolved.feedsInUse.length === 0) {
    return { refused: { why: "the path reaches no feed point in this band", mend: "a path that ends in a feed" } };
  }
  const antenna = solver.solve(station, frequency, options.lift);
  if ("refused" in antenna) return antenna;
  const made = edgeTwoPorts(station, resolved, frequency);
  if ("refused" in made) return made;
  const circuit = joinCircuit(resolved, antenna, made.twoPorts);
  const tuned = options.tuner === "matched" ? matchTuner(station, resolved, circuit) : { circuit, tuner: null };
  if ("refused" in tuned) return tuned;
  const state = solveCircuit(tuned.circuit);
  if (state === null)
    return {
      refused: {
        why: "the network of this path has no single solution",
        mend: "a path without shorts or floating parts",
      },
    };
  return scaledPoint(
    { station, resolved, antenna, circuit: tuned.circuit, frequency, tuner: tuned.tuner, notes: made.notes },
    state,
  );
}

const realPower = (v: Complex, i: Complex): number => multiply(v, conjugate(i)).re;

interface Solved {
  readonly station: Station;
  readonly resolved: Resolved;
  readonly antenna: SolvedAntenna;
  readonly circuit: Circuit;
  readonly frequency: number;
  readonly tuner: TunerTask | null;
  readonly notes: readonly string[];
}

/** From 1 V at the transmitter to the power it delivers. */
function scaledPoint(solved: Solved, state: CircuitState): WorkedPoint | PointRefused {
  const { station, resolved, antenna, circuit, frequency, tuner } = solved;
  const rated = station.transmitter.designedFor.value;
  const sourceCurrent = currentFrom(circuit, state, 0);
  if (!(sourceCurrent.re > 0))
    return {
      refused: { why: "the path takes no power from the transmitter", mend: "a path without a short or an open end" },
    };
  const swrAtTransmitter = swr(reciprocal(sourceCurrent), rated);
  const power = deliveredPower(station.transmitter, swrAtTransmitter);
  const factor = Math.sqrt(power / sourceCurrent.re);
  const scaled: CircuitState = {
    voltage: state.voltage.map((v) => scale(v, factor)),
    inward: state.inward.map((i) => scale(i, factor)),
    outward: state.outward.map((i) => scale(i, factor)),
  };
  const parts = resolved.edges.map((_, e) => workedPart(resolved, scaled, e, frequency));
  const portVoltages = circuit.portJoints.map((j) => scaled.voltage[j]!);
  const powerIntoAntenna = portVoltages.reduce((sum, v, p) => sum + realPower(v, portCurrent(circuit, scaled, p)), 0);
  return {
    frequency,
    resolved,
    joints: workedJoints(resolved, circuit, scaled),
    parts,
    powerFromTransmitter: power,
    ratedPower: station.transmitter.power.value,
    ratedResistance: rated,
    swrAtTransmitter,
    powerIntoAntenna,
    heatInPath: power - powerIntoAntenna,
    portVoltages,
    antenna,
    tuner,
    notes: beyondCurve(station.transmitter, swrAtTransmitter) ? [...solved.notes, beyondCurveNote] : solved.notes,
  };
}

const beyondCurveNote =
  "the transmitter's power at this SWR lies beyond the points of the file: the last point's power is taken";

function workedPart(resolved: Resolved, state: CircuitState, e: number, frequency: number): WorkedPart {
  const edge = resolved.edges[e]!;
  const entry = { voltage: state.voltage[edge.from]!, current: state.inward[e]! };
  const exit = { voltage: state.voltage[edge.to]!, current: state.outward[e]! };
  const powerIn = netPower(entry);
  const powerOut = netPower(exit);
  const names = { from: resolved.joints[edge.from]!.name, to: resolved.joints[edge.to]!.name };
  const loss = powerIn > 0 && powerOut > 0 ? 10 * Math.log10(powerIn / powerOut) : 0;
  const common = { edge, ...names, powerIn, powerOut, heat: powerIn - powerOut, loss };
  if (edge.part?.kind !== "line")
    return { ...common, matchedLoss: null, length: 0, along: { power: [], voltage: [], current: [] } };
  return Object.assign(lineDetails(edge.part, frequency, exit), common);
}

/** What a sweep of hundreds of points never asks a line for is worked out when it is read. */
function lineDetails(
  part: LinePart,
  frequency: number,
  exit: PortState,
): Pick<WorkedPart, "length" | "matchedLoss" | "along"> {
  const length = part.length.value;
  let kept: WorkedPart["along"] | null = null;
  const along = (): WorkedPart["along"] => {
    const { power, voltage, current } = alongLine(constantsOf(part, frequency), length, exit, stepsAlongLine);
    const rms = (values: readonly Complex[]) => values.map((x) => Math.hypot(x.re, x.im));
    return { power, voltage: rms(voltage), current: rms(current) };
  };
  return {
    length,
    get matchedLoss() {
      return matchedLoss(constantsOf(part, frequency), length);
    },
    get along() {
      kept ??= along();
      return kept;
    },
  };
}

/** Joints in use, in path order; a transmitter at the feed point is both joints. */
function workedJoints(resolved: Resolved, circuit: Circuit, state: CircuitState): WorkedJoint[] {
  const used = new Set([0, ...resolved.edges.filter((e) => e.inUse).map((e) => e.to)]);
  const joints = resolved.joints.flatMap((joint, index): WorkedJoint[] => {
    if (!used.has(index)) return [];
    const voltage = state.voltage[index]!;
    const current = currentFrom(circuit, state, index);
    const impedance = divide(voltage, current);
    return [{ name: joint.name, side: joint.side, voltage, current, impedance, power: realPower(voltage, current) }];
  });
  return joints.length === 1 ? [joints[0]!, { ...joints[0]!, name: "feed point" }] : joints;
}
