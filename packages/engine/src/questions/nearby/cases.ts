/** One state of the station in the numbers that things near by change. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import { driveSolved } from "../../chain/driveSolved";
import type { SolveRequest } from "../../chain/solveRequest";
import type { PointRefused, WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { swr } from "../../lines/reflection";
import type { Complex } from "../../numerics/complex";
import type { Band, Station } from "../../station/station";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import type { Aim } from "../common/aim";
import { gainAt, type StationNumbers, stationNumbers } from "../common/stationNumbers";
import type { Worked } from "../common/worked";

/** What a change of one thing needs at least. */
export interface Brief {
  /** At the transmitter, or what a tuner has to match. */
  readonly swr: number;
  readonly feedPoint: Complex;
  /** dBi at the angle looked at. */
  readonly gain: number;
  readonly powerIntoAntenna: number;
}

export interface Case extends Brief {
  readonly point: WorkedPoint;
  readonly driven: DrivenAntenna;
  readonly numbers: StationNumbers["numbers"];
}

export interface Bench {
  readonly band: Band;
  readonly frequency: number;
  readonly solver: AntennaSolver;
  /** What the solver solves for a station looked at. */
  readonly request: (station: Station) => SolveRequest;
  readonly aim: Aim;
}

/** A solver that keeps the mesh of the station as it is, so that a change is never one of the mesh. */
export function benchOf(worked: Worked, aim: Aim): Bench {
  const { band, frequency, solver, point } = worked;
  const refinement = point.antenna.solution?.method.refinement ?? 1;
  const mesh = { refinement, meshFrequency: frequency };
  return {
    band,
    frequency,
    aim,
    request: (station) => ({ station, frequency, lift: 0, mesh }),
    solver: { ...solver, solve: (station, f, lift, asked) => solver.solve(station, f, lift, asked ?? mesh) },
  };
}

export const isWorked = <T extends object>(made: T | PointRefused): made is T => !("refused" in made);

/** SWR against the transmitter's load: where a tuner matches, what it has to match. */
export const seenSwr = (point: WorkedPoint): number =>
  point.tuner ? swr(point.tuner.impedance, point.ratedResistance) : point.swrAtTransmitter;

function briefOf(point: WorkedPoint, driven: DrivenAntenna, aim: Aim): Brief {
  return {
    swr: seenSwr(point),
    feedPoint: point.joints.find((joint) => joint.name.startsWith("feed point"))!.impedance,
    gain: gainAt(driven, aim.elevation, aim.azimuth),
    powerIntoAntenna: point.powerIntoAntenna,
  };
}

function driven(station: Station, bench: Bench): { point: WorkedPoint; driven: DrivenAntenna } | PointRefused {
  const point = workPoint(station, bench.band, bench.frequency, bench.solver, { tuner: "matched" });
  if ("refused" in point) return point;
  const currents = driveSolved(point.antenna, point.portVoltages);
  if (currents === null) throw new Error("nearby: an interpolated antenna has no currents");
  return { point, driven: currents };
}

/** SWR, feed point and gain only. */
export function briefCase(station: Station, bench: Bench): Brief | PointRefused {
  const made = driven(station, bench);
  return "refused" in made ? made : briefOf(made.point, made.driven, bench.aim);
}

/** With the power account and the strongest direction. */
export function wholeCase(station: Station, bench: Bench): Case | PointRefused {
  const made = driven(station, bench);
  return "refused" in made ? made : caseOf(made.point, stationNumbers(made.point), bench.aim);
}

export const caseOf = (point: WorkedPoint, result: StationNumbers, aim: Aim): Case => ({
  ...briefOf(point, result.driven, aim),
  point,
  driven: result.driven,
  numbers: result.numbers,
});

/** Our rule for what is worth naming: SWR by 0.1, by 5 % above 2; gain by 0.5 dB. */
export const leastSwrChange = (swrWithout: number): number => Math.max(0.1, 0.05 * swrWithout);
export const leastGainChange = 0.5;

/** How much one state differs from another: 1 is where a change becomes worth naming. An SWR without end counts as 999. */
export function effectOf(now: Brief, without: Brief): number {
  const [a, b] = [now, without].map((c) => Math.min(c.swr, 999)) as [number, number];
  return Math.max(Math.abs(a - b) / leastSwrChange(b), Math.abs(now.gain - without.gain) / leastGainChange);
}
