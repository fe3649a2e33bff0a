/** Which direction is asked about: what is wanted, else where the antenna is strongest, else a usual low angle. */
import { strongestOfCut } from "../../fields/cutExtremes";
import { levelCut } from "../../fields/patternCut";
import type { Direction } from "../../fields/strongestDirection";
import type { Station } from "../../station/station";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import type { Parameters } from "../common/question";

export interface Aim {
  /** Radians. */
  readonly elevation: number;
  readonly azimuth: number;
  /** Named by the question or the file. */
  readonly wanted: { readonly elevation: boolean; readonly direction: boolean };
}

const degree = Math.PI / 180;
/** Taken when nothing is wanted and the antenna is strongest steeply up: first hops of two thousand kilometres. */
const usualElevation = 20 * degree;
/** A strongest direction steeper than this has no useful azimuth. */
const steep = 60 * degree;

export function aimOf(station: Station, parameters: Parameters, driven: DrivenAntenna, strongest: Direction): Aim {
  const named = (name: string): number | null => (typeof parameters[name] === "number" ? parameters[name] : null);
  const elevation = named("elevation") ?? station.wanted.elevation?.value ?? null;
  const direction = named("direction") ?? station.wanted.direction;
  const own = Math.abs(strongest.elevation) <= steep ? strongest.elevation : usualElevation;
  const taken = elevation ?? own;
  const azimuth =
    direction ?? (taken === strongest.elevation ? strongest.azimuth : strongestOfCut(levelCut(driven, taken)).angle);
  const turn = 2 * Math.PI;
  return {
    elevation: taken,
    azimuth: ((azimuth % turn) + turn) % turn,
    wanted: { elevation: elevation !== null, direction: direction !== null },
  };
}
