/** A small invented station and a pool in this thread. Tests only. */
import { exactly, type SolveRequest, type Station } from "@feedpath/engine";
import type { SolverPool } from "./solverPool";
import { solveAll } from "./solverPool";

export const station: Station = {
  ...{ title: "Test station", note: "", earths: [], surroundings: [], people: [], readings: [], assumptions: [] },
  measured: {},
  bands: [{ name: "", frequency: exactly(7.1e6), sweep: { from: 7e6, to: 7.2e6 }, set: {} }],
  transmitter: {
    ...{ power: exactly(100), duty: exactly(0.4), onAir: null, designedFor: exactly(50) },
    ...{ powerAtSwr: [], earthed: "floating", noiseFigure: null },
  },
  path: { parts: [], end: { kind: "feed", feed: "antenna" } },
  antennas: [
    {
      name: "antenna",
      shapes: [
        {
          name: "dipole",
          shape: {
            ...{ kind: "dipole", length: exactly(20), height: exactly(10), endsHeight: null, sag: exactly(0) },
            direction: exactly(1),
            wire: {
              ...{ diameter: exactly(2e-3), form: "wire", material: "copper", insulation: null },
              ...{ conductivity: 58e6, permeability: 1 },
            },
          },
        },
      ],
      ...{ feeds: [], against: null, radials: null, loads: [], at: [exactly(0), exactly(0), exactly(0)] },
    },
  ],
  ground: { kind: "soil", name: "", permittivity: exactly(13), conductivity: exactly(5e-3) },
  wanted: { elevation: null, direction: null, swrBelow: null, mayChange: [] },
};

export const raised = (lift: number): SolveRequest => ({ station, frequency: 7.1e6, lift, mesh: undefined });

/** Notes what it is given, and does it. */
export function noting(): { pool: SolverPool; jobs: SolveRequest[][] } {
  const jobs: SolveRequest[][] = [];
  const pool: SolverPool = {
    size: 1,
    run: async (batch) => {
      jobs.push(...batch.jobs.map((job) => [...job]));
      for (const job of batch.jobs) batch.onResult(job, solveAll(job));
      return "done";
    },
    cancel: () => undefined,
    warmUp: () => undefined,
    close: () => undefined,
  };
  return { pool, jobs };
}
