/** One station on the bench: its feed point over frequency and length, with the tuner left out of the way. */
import type { AntennaSolver, HeldMesh } from "../../chain/antennaSolver";
import type { WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import type { Complex } from "../../numerics/complex";
import type { Band, Station } from "../../station/station";
import type { Refinement } from "../../wires/refinement";
import type { Trimmed } from "./trimmed";
import { withTrim } from "./withTrim";

export interface Bench {
  readonly station: Station;
  readonly band: Band;
  readonly trimmed: Trimmed;
  readonly solver: AntennaSolver;
  /** Rated load of the transmitter, ohm. */
  readonly rated: number;
  /** Wanted frequency, Hz. */
  readonly frequency: number;
  /** Refinement of the mesh that the present antenna asked for: kept while length and frequency change. */
  readonly refinement: Refinement;
}

/** The whole station worked out at a frequency (Hz) with its piece `length` m long; null where that is refused. */
export function pointAt(bench: Bench, frequency: number, length: number): WorkedPoint | null {
  const station = withTrim(bench.station, bench.trimmed, length);
  const point = workPoint(station, bench.band, frequency, bench.solver, { tuner: "through" });
  return "refused" in point ? null : point;
}

/** Impedance at the feed point, ohm, on a mesh made for `meshFrequency`, all other antennas and idle branches in place. */
export function feedPointAt(bench: Bench, frequency: number, length: number, meshFrequency: number): Complex | null {
  const mesh: HeldMesh = { refinement: bench.refinement, meshFrequency };
  const held: AntennaSolver = {
    ...bench.solver,
    solve: (station, f, lift) => bench.solver.solve(station, f, lift, mesh),
  };
  const point = pointAt({ ...bench, solver: held }, frequency, length);
  return point?.joints.find((j) => j.name.startsWith("feed point"))?.impedance ?? null;
}
