/** The direction whose gain is told. */
import type { Worked } from "./worked";

export interface Aim {
  /** Degrees. */
  readonly elevation: number;
  readonly azimuth: number;
}

/** `elevation` as asked (radians) and the file's wanted direction, else where the station as it stands is strongest. */
export function aimOf(worked: Worked, elevation: unknown): Aim {
  const { wanted } = worked.station;
  const degrees = (radians: number): number => (radians * 180) / Math.PI;
  const up = typeof elevation === "number" ? elevation : (wanted.elevation?.value ?? null);
  return {
    elevation: up === null ? worked.numbers.elevationOfMaximum! : degrees(up),
    azimuth: wanted.direction === null ? worked.numbers.azimuthOfMaximum! : degrees(wanted.direction),
  };
}
