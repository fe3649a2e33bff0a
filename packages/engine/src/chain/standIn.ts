/** A solver that answers inside a span from an interpolation, and solves exactly beyond it. */
import type { Complex } from "../numerics/complex";
import type { Station } from "../station/station";
import { type AntennaSolver, type HeldMesh, soilOf } from "./antennaSolver";
import { closeAntenna } from "./closeAntenna";

/** Hz, both ends included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Interpolated {
  readonly station: Station;
  readonly span: Span;
  readonly solver: AntennaSolver;
  readonly mesh: HeldMesh;
}

/** Between all ports, at a frequency of the span in Hz. */
export type PortsAt = (frequency: number) => {
  readonly admittance: readonly (readonly Complex[])[];
  readonly electrodes: readonly Complex[];
};

/** Chokes and earths of the station asked for close the ports, which therefore may differ from those interpolated. */
export function standIn({ station, span, solver, mesh }: Interpolated, ports: PortsAt): AntennaSolver {
  const { wires } = solver.describe(station);
  return {
    solves: solver.solves,
    describe: solver.describe,
    settings: solver.settings,
    solve(asked, frequency, lift = 0) {
      const described = solver.describe(asked);
      const inside = frequency >= span.from && frequency <= span.to;
      if (lift !== 0 || !inside || described.wires !== wires) return solver.solve(asked, frequency, lift, mesh);
      const set = solver.settings(asked, frequency, lift, mesh);
      if ("refused" in set) return set;
      const state = { frequency, soil: soilOf(asked, frequency), ...ports(frequency) };
      return closeAntenna(described.build, { ...state, fineAdmittance: null, solution: null }, set);
    },
  };
}
