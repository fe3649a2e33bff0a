/**
 * Power account and strongest direction of an antenna with one feed: worked out for 1 V there and kept with the solution, for
 * another line, loss or power only scales them.
 */

import type { SolvedAntenna } from "../../chain/closeAntenna";
import { driveSolved } from "../../chain/driveSolved";
import { type PowerAccount, powerAccount } from "../../fields/powerAccount";
import { type Direction, strongestDirection } from "../../fields/strongestDirection";
import { type Complex, magnitudeSquared, one } from "../../numerics/complex";
import type { AntennaSolution } from "../../wires/antennaSolution";
import type { DrivenAntenna } from "../../wires/driveAntenna";

export interface AntennaFields {
  readonly account: PowerAccount;
  readonly strongest: Direction;
}

/** By how the other ports are closed. */
const kept = new WeakMap<AntennaSolution, Map<string, AntennaFields>>();

const fieldsOf = (driven: DrivenAntenna): AntennaFields => ({
  account: powerAccount(driven),
  strongest: strongestDirection(driven),
});

function atOneVolt(antenna: SolvedAntenna, solution: AntennaSolution): AntennaFields | null {
  const ofSolution = kept.get(solution) ?? new Map<string, AntennaFields>();
  kept.set(solution, ofSolution);
  const key = JSON.stringify([antenna.portVoltages, antenna.joined]);
  const known = ofSolution.get(key);
  if (known) return known;
  const driven = driveSolved(antenna, [one]);
  if (driven === null) return null;
  const made = fieldsOf(driven);
  ofSolution.set(key, made);
  return made;
}

function scaled({ residue, ...watts }: PowerAccount, factor: number): PowerAccount {
  const all = Object.entries(watts).map(([name, power]) => [name, factor * power]);
  return { ...(Object.fromEntries(all) as Omit<PowerAccount, "residue">), residue };
}

/** Of an antenna under voltages (V rms) at its feeds; `driven` is the same antenna under them. */
export function antennaFields(
  antenna: SolvedAntenna,
  feedVoltages: readonly Complex[],
  driven: DrivenAntenna,
): AntennaFields {
  const [voltage] = feedVoltages;
  if (!antenna.solution || !voltage || feedVoltages.length > 1) return fieldsOf(driven);
  const unit = atOneVolt(antenna, antenna.solution);
  return unit ? { ...unit, account: scaled(unit.account, magnitudeSquared(voltage)) } : fieldsOf(driven);
}
