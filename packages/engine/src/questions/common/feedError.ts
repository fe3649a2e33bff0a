/** How well the antenna itself could be worked out. */
import { driveCoarse } from "../../chain/driveSolved";
import type { WorkedPoint } from "../../chain/workedPoint";
import { gainError } from "../../fields/gainError";
import { magnitude, zero } from "../../numerics/complex";
import { goalFor, usualAccuracy } from "../../wires/accuracy";
import type { StationNumbers } from "./stationNumbers";

/**
 * Error of the impedance at the first feed in use, ohm: the step by which the extrapolation over the halved mesh moved it
 * (a third of the difference of the two meshes). Other ports, of antennas that stand idle, do not count. Null where the
 * antenna was interpolated or a port takes no definite impedance.
 */
export function feedError(point: WorkedPoint): number | null {
  const { feeds, extrapolationStep } = point.antenna;
  const port = Math.max(0, feeds.indexOf(point.resolved.feedsInUse[0] ?? ""));
  return extrapolationStep && magnitude(extrapolationStep[port]![port]!);
}

/** dB by which the largest gain may be off, from both meshes; null where the halved one has no single state. */
export function strongestGainError({ antenna, portVoltages }: WorkedPoint, result: StationNumbers): number | null {
  const coarse = driveCoarse(antenna, portVoltages);
  const { elevation, azimuth, gain } = result.strongest;
  return coarse && gainError(result.driven, coarse, elevation, azimuth, gain).decibels;
}

/** Told from here on: the larger of one ohm and two percent of the impedance; a thousandth of the power; the gain. */
const aimOhms = 1;
const aimShare = 0.02;
const aimBalance = 1e-3;
const aimDecibels = 0.05;

export interface Shortfall {
  readonly ohms: number | null;
  /** Share of the power into the antenna. */
  readonly power: number | null;
  readonly decibels: number | null;
}

/** What the answer has to say when the antenna could not be worked out as well as it should be; all null otherwise. */
export function shortfall(point: WorkedPoint, residue: number | null, gainDoubt: number | null): Shortfall {
  const error = feedError(point);
  const feed = point.joints.find((j) => j.name.startsWith("feed point"));
  const { solution } = point.antenna;
  const impedance = feed?.impedance ?? zero;
  // A goal that was given up is told from the goal on; what only the network makes worse, from twice as much.
  const givenUp = solution !== null && !solution.goalMet;
  const told = Math.max(aimOhms, aimShare * magnitude(impedance));
  const allowed = givenUp ? Math.min(told, goalFor(usualAccuracy, impedance)) : told;
  return {
    ohms: error !== null && error > allowed ? error : null,
    decibels: gainDoubt !== null && gainDoubt > aimDecibels ? gainDoubt : null,
    power: residue !== null && Math.abs(residue) > aimBalance ? Math.abs(residue) : null,
  };
}
