/** Waves on a stepped line, moment after moment, with an account of every joule. */
import { heldAt, type LossNodes, lossNodes, storedIn, takeAt } from "./lossNodes";
import type { SteppedLine } from "./steppedLine";
import { type SteppedTermination, steppedTermination, type Termination } from "./termination";

export interface FilmRequest {
  readonly line: SteppedLine;
  readonly source: Termination;
  readonly load: Termination;
  /** Volts of the source without load, at each step. */
  readonly voltage: Float64Array;
  /** rad/s, see `bendExactAt`: coils and capacitors at the ends are exact at that frequency. */
  readonly bend: number;
  /** Steps at which the whole line is looked at, in increasing order. */
  readonly moments: readonly number[];
  /** Even places, counted in sections from the source. */
  readonly places: readonly number[];
}

/** Volts of the waves at every place, towards the load and back, on the line's surge impedance. Energies in J since the start. */
export interface Moment {
  readonly step: number;
  readonly forward: Float64Array;
  readonly reflected: Float64Array;
  readonly energy: Energy;
}

export interface Energy {
  /** From the source into the line. */
  readonly delivered: number;
  readonly storedInLine: number;
  readonly heatInLine: number;
  /** Through the end of the line, and the part of it that the load's coil and capacitor hold at the moment. */
  readonly intoLoad: number;
  readonly storedInLoad: number;
  /** Delivered, less all the rest. */
  readonly residue: number;
}

export interface Film {
  readonly moments: readonly Moment[];
  /** At every step: volts and amperes at the source's end, and at the load. */
  readonly inputVoltage: Float64Array;
  readonly inputCurrent: Float64Array;
  readonly loadVoltage: Float64Array;
  readonly loadCurrent: Float64Array;
}

interface Running extends FilmRequest {
  /** Wave in each section that will come to its far end next, towards the load and back. */
  readonly right: Float64Array;
  readonly left: Float64Array;
  readonly series: LossNodes;
  readonly shunt: LossNodes;
  readonly endShunt: LossNodes;
  readonly sourcePort: SteppedTermination;
  readonly loadPort: SteppedTermination;
  /** Volts at even places, index place / 2. */
  readonly volts: Float64Array;
  heat: number;
  delivered: number;
  intoLoad: number;
}

/**
 * Steps the waves. Delays are exact, losses are passive networks: nothing arrives before its time, and the account of energy closes to
 * rounding. Deviation from the true line: of second order in the wave's turn between places, times the line's loss.
 * Source: P. B. Johns and R. L. Beurle, Numerical solution of two-dimensional scattering problems using a transmission-line matrix,
 * Proc. IEE 118 (1971) 1203, for waves stepped between scattering places; A. Fettweis, Proc. IEEE 74 (1986) 270, for the networks.
 */
export function film(request: FilmRequest): Film {
  const { line, voltage, moments } = request;
  const { sections, timeStep } = line;
  if (!(sections >= 4 && sections % 2 === 0)) {
    throw new RangeError(`film: ${sections} sections; expected an even number from 4 on`);
  }
  const cell = (2 * line.length) / sections;
  const running: Running = {
    ...request,
    right: new Float64Array(sections),
    left: new Float64Array(sections),
    series: lossNodes(line.series, cell, sections / 2, timeStep),
    shunt: lossNodes(line.shunt, cell, sections / 2 - 1, timeStep),
    endShunt: lossNodes(line.shunt, cell / 2, 2, timeStep),
    sourcePort: steppedTermination(request.source, request.bend, timeStep),
    loadPort: steppedTermination(request.load, request.bend, timeStep),
    volts: new Float64Array(sections / 2 + 1),
    heat: 0,
    delivered: 0,
    intoLoad: 0,
  };
  const record = () => new Float64Array(voltage.length);
  const ends = { inputVoltage: record(), inputCurrent: record(), loadVoltage: record(), loadCurrent: record() };
  const seen: Moment[] = [];
  for (let step = 0; step < voltage.length; step++) {
    const arriving = moments[seen.length] === step ? Float64Array.from(running.right) : null;
    const atSource = sourceEnd(running, voltage[step]!);
    const lastRight = walk(running, atSource.departing);
    const atLoad = loadEnd(running, lastRight);
    ends.inputVoltage[step] = atSource.voltage;
    ends.inputCurrent[step] = atSource.current;
    ends.loadVoltage[step] = atLoad.voltage;
    ends.loadCurrent[step] = atLoad.current;
    if (arriving) seen.push(look(running, step, arriving, atSource.departing));
  }
  return { moments: seen, ...ends };
}

interface AtEnd {
  readonly voltage: number;
  /** Towards the load. */
  readonly current: number;
  /** Wave that sets out into the line. */
  readonly departing: number;
}

/** Source in series with its impedance, half a place's shunt loss, and the line. */
function sourceEnd(running: Running, emf: number): AtEnd {
  const { line, left, endShunt, sourcePort, volts } = running;
  const z = line.surgeImpedance;
  const back = left[0]!;
  const held = heldAt(endShunt, 0);
  const g = endShunt.slope + 1 / z;
  // Current into line and shunt: g V + held - 2 back / z.
  const other = held - (2 * back) / z;
  let voltage: number;
  let current: number;
  if (sourcePort.form === "in series") {
    current = (g * (emf - sourcePort.held()) + other) / (1 + g * sourcePort.slope);
    voltage = emf - sourcePort.held() - sourcePort.slope * current;
    sourcePort.take(current);
  } else {
    // i = slope (emf - V) + held of the source's own branch.
    voltage = (sourcePort.slope * emf + sourcePort.held() - other) / (g + sourcePort.slope);
    current = g * voltage + other;
    sourcePort.take(emf - voltage);
  }
  running.heat += takeAt(endShunt, 0, voltage);
  running.delivered += voltage * current;
  volts[0] = voltage;
  return { voltage, current, departing: voltage - back };
}

/** The places between the ends; returns the wave that comes to the load. */
function walk(running: Running, fromSource: number): number {
  const { line, right, left, series, shunt, volts } = running;
  const { sections, surgeImpedance: z } = line;
  const acrossSeries = 1 / (2 * z + series.slope);
  const acrossShunt = 1 / (2 + z * shunt.slope);
  let heat = 0;
  let incoming = right[0]!;
  right[0] = fromSource;
  for (let m = 1; m < sections; m++) {
    const back = left[m]!;
    const next = right[m]!;
    if (m % 2 === 1) {
      const node = (m - 1) / 2;
      const current = (2 * (incoming - back) - heldAt(series, node)) * acrossSeries;
      heat += takeAt(series, node, current);
      left[m - 1] = incoming - z * current;
      right[m] = back + z * current;
    } else {
      const node = m / 2 - 1;
      const voltage = (2 * (incoming + back) - z * heldAt(shunt, node)) * acrossShunt;
      heat += takeAt(shunt, node, voltage);
      left[m - 1] = voltage - incoming;
      right[m] = voltage - back;
      volts[m / 2] = voltage;
    }
    incoming = next;
  }
  running.heat += heat;
  return incoming;
}

function loadEnd(running: Running, incoming: number): AtEnd {
  const { line, left, endShunt, loadPort, volts } = running;
  const z = line.surgeImpedance;
  const held = heldAt(endShunt, 1);
  const g = endShunt.slope + 1 / z;
  // Current left for the load at a voltage V: (2 incoming / z - held) - g V.
  const offered = (2 * incoming) / z - held;
  let voltage: number;
  let current: number;
  if (loadPort.form === "in series") {
    current = (offered - g * loadPort.held()) / (1 + g * loadPort.slope);
    voltage = loadPort.slope * current + loadPort.held();
    loadPort.take(current);
  } else {
    voltage = (offered - loadPort.held()) / (g + loadPort.slope);
    current = loadPort.slope * voltage + loadPort.held();
    loadPort.take(voltage);
  }
  running.heat += takeAt(endShunt, 1, voltage);
  running.intoLoad += voltage * current;
  volts[line.sections / 2] = voltage;
  left[line.sections - 1] = voltage - incoming;
  return { voltage, current, departing: voltage - incoming };
}

/** The line as it stands after a step; `arriving` are the waves towards the load before it. */
function look(running: Running, step: number, arriving: Float64Array, fromSource: number): Moment {
  const { places, volts } = running;
  const forward = Float64Array.from(places, (p) => (p === 0 ? fromSource : arriving[p - 1]!));
  const reflected = forward.map((wave, i) => volts[places[i]! / 2]! - wave);
  return { step, forward, reflected, energy: account(running) };
}

function account(running: Running): Energy {
  const { line, right, left, series, shunt, endShunt, loadPort } = running;
  const { timeStep, surgeImpedance } = line;
  let waves = 0;
  for (let m = 0; m < right.length; m++) waves += right[m]! * right[m]! + left[m]! * left[m]!;
  const lumps = [series, shunt, endShunt].reduce((sum, nodes) => sum + storedIn(nodes, timeStep), 0);
  const delivered = running.delivered * timeStep;
  const storedInLine = (waves * timeStep) / surgeImpedance + lumps;
  const heatInLine = running.heat * timeStep;
  const intoLoad = running.intoLoad * timeStep;
  const residue = delivered - storedInLine - heatInLine - intoLoad;
  return { delivered, storedInLine, heatInLine, intoLoad, storedInLoad: loadPort.stored(), residue };
}
