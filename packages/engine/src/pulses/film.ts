/** Waves on a stepped line, moment after moment, with an account of every joule. */
import { loadEnd, type RunningEnds, sourceEnd } from "./filmEnds";
import { heatIn, type LossNodes, lossNodes, storedIn, takeAt } from "./lossNodes";
import type { SteppedLine } from "./steppedLine";
import { steppedTermination, type Termination } from "./termination";

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

interface Running extends FilmRequest, RunningEnds {
  /** Wave in each section that will come to its end at the load's side next. */
  readonly right: Float64Array;
  readonly series: LossNodes;
  readonly shunt: LossNodes;
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

/** The places between the ends; returns the wave that comes to the load. */
function walk(running: Running, fromSource: number): number {
  const { line, right, left, series, shunt, volts } = running;
  const { sections, surgeImpedance: z } = line;
  const acrossSeries = 1 / (2 * z + series.slope);
  const acrossShunt = 1 / (2 + z * shunt.slope);
  let incoming = right[0]!;
  right[0] = fromSource;
  for (let m = 1; m < sections; m++) {
    const back = left[m]!;
    const next = right[m]!;
    if (m % 2 === 1) {
      const node = (m - 1) / 2;
      const current = (2 * (incoming - back) - series.held[node]!) * acrossSeries;
      takeAt(series, node, current);
      left[m - 1] = incoming - z * current;
      right[m] = back + z * current;
    } else {
      const node = m / 2 - 1;
      const voltage = (2 * (incoming + back) - z * shunt.held[node]!) * acrossShunt;
      takeAt(shunt, node, voltage);
      left[m - 1] = voltage - incoming;
      right[m] = voltage - back;
      volts[m / 2] = voltage;
    }
    incoming = next;
  }
  return incoming;
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
  const heatInLine = [series, shunt, endShunt].reduce((sum, nodes) => sum + heatIn(nodes, timeStep), 0);
  const intoLoad = running.intoLoad * timeStep;
  const residue = delivered - storedInLine - heatInLine - intoLoad;
  return { delivered, storedInLine, heatInLine, intoLoad, storedInLoad: loadPort.stored(), residue };
}
