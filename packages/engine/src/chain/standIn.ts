/** A solver that answers inside a span from an interpolation, and solves exactly beyond it. */
import { add, type Complex, complex, conjugate, multiply, zero } from "../numerics/complex";
import type { Station } from "../station/station";
import type { Radiating } from "../wires/radiating";
import type { SamplePoints } from "../wires/samplePoints";
import { type AntennaSolver, type HeldMesh, soilOf } from "./antennaSolver";
import { closeAntenna, heatInJoined } from "./closeAntenna";
import { allPortVoltages } from "./closePorts";
import type { CurrentValues, PortValues } from "./portFunctions";

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

/** At a frequency of the span in Hz. */
export interface FitAt {
  readonly ports: (frequency: number) => PortValues;
  readonly currents: (frequency: number) => CurrentValues;
}

/** Chokes and earths of the station asked for close the ports, which therefore may differ from those interpolated. */
export function standIn({ station, span, solver, mesh }: Interpolated, fit: FitAt): AntennaSolver {
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
      const state = { frequency, soil: soilOf(asked, frequency), ...fit.ports(frequency) };
      return closeAntenna(described.build, { ...state, fineAdmittance: null, solution: null }, set);
    },
  };
}

/**
 * What the interpolated antenna radiates at a frequency (Hz) of the span with voltages (V rms) at its feeds; `points` are those
 * of all samples. Null where the ports have no single state.
 */
export function radiatingAt(
  { station, solver, mesh }: Interpolated,
  fit: FitAt,
  points: SamplePoints,
  frequency: number,
  feedVoltages: readonly Complex[],
): Radiating | null {
  const { electrodes } = fit.ports(frequency);
  const { fineAdmittance, moments } = fit.currents(frequency);
  const soil = soilOf(station, frequency);
  const set = solver.settings(station, frequency, 0, mesh);
  if ("refused" in set) return null;
  const state = { frequency, soil, admittance: fineAdmittance, fineAdmittance, electrodes, solution: null };
  const closed = closeAntenna(solver.describe(station).build, state, set);
  if ("refused" in closed) return null;
  const voltages = allPortVoltages(closed.portVoltages, feedVoltages);
  const driven = Array.from({ length: points.count }, (_, i) =>
    voltages.reduce((sum, v, port) => add(sum, multiply(v, moments[port * points.count + i]!)), zero),
  );
  const powers = feedVoltages.map((_, feed) => {
    const current = voltages.reduce((sum, v, port) => add(sum, multiply(fineAdmittance[feed]![port]!, v)), complex(0));
    return multiply(voltages[feed]!, conjugate(current)).re;
  });
  return {
    solution: { frequency, soil, model: { points } },
    moments: { re: Float64Array.from(driven, (m) => m.re), im: Float64Array.from(driven, (m) => m.im) },
    powerIn: powers.reduce((sum, p) => sum + p, heatInJoined(closed, feedVoltages)),
  };
}
