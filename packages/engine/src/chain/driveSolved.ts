/** Currents of a station's antenna under voltages at its feeds, all other ports closed as the station has them. */
import type { Complex } from "../numerics/complex";
import { coarseTwin } from "../wires/coarseTwin";
import { type DrivenAntenna, driveAntenna } from "../wires/driveAntenna";
import { heatInJoined, type SolvedAntenna } from "./closeAntenna";
import { allPortVoltages } from "./closePorts";

/** `feedVoltages` in V rms, in the order of the antenna's feeds; null where it was interpolated: no currents, no fields. */
export function driveSolved(antenna: SolvedAntenna, feedVoltages: readonly Complex[]): DrivenAntenna | null {
  if (antenna.solution === null) return null;
  const voltages = allPortVoltages(antenna.portVoltages, feedVoltages);
  return driveAntenna(antenna.solution, voltages, heatInJoined(antenna, feedVoltages));
}

/** The same on the mesh of doubled elements, to see what its currents would change; null also where that has no single state. */
export function driveCoarse(antenna: SolvedAntenna, feedVoltages: readonly Complex[]): DrivenAntenna | null {
  if (antenna.solution === null || antenna.coarsePortVoltages === null) return null;
  const voltages = allPortVoltages(antenna.coarsePortVoltages, feedVoltages);
  return driveAntenna(coarseTwin(antenna.solution), voltages, heatInJoined(antenna, feedVoltages));
}
