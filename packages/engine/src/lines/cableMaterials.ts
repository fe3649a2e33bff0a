/** What coaxial lines are made of, at 20 degrees Celsius, each value with its source and how well it is known. */
import type { Metal } from "../conductors/conductor";
import type { Dielectric } from "./lineModel";

export interface CableDielectric extends Dielectric {
  /** Field in V/m, peak, at which the insulation itself breaks down in a short test. */
  readonly breakdown: number;
  readonly source: string;
  readonly breakdownSource: string;
}

/** Loss tangents hold from about 1 MHz to 1 GHz, good to a factor of two. */
export const cableDielectrics: readonly CableDielectric[] = [
  {
    name: "air",
    permittivity: 1.00059,
    lossTangent: 0,
    breakdown: 3e6,
    source: "dry air at 1 atmosphere: CRC Handbook (from memory)",
    breakdownSource: "uniform field, centimetre gaps, sea level, ± 5 %: textbooks (from memory)",
  },
  {
    name: "polyethylene",
    permittivity: 2.26,
    lossTangent: 3e-4,
    breakdown: 20e6,
    source: "solid polyethylene: handbooks; a table of dielectrics gives 2.21 and 3e-4 (published, confirmed)",
    breakdownSource:
      "low end of 20 to 40 kV/mm in bulk: handbooks; a table of dielectrics gives 40 (published, confirmed)",
  },
  {
    name: "foam polyethylene",
    permittivity: 1.49,
    lossTangent: 2e-4,
    breakdown: 3e6,
    source: "velocity factor 0.82, 1e-4 to 3e-4 (common practice, no source)",
    breakdownSource: "that of the gas in its cells, taken as air (our assumption)",
  },
  {
    name: "PTFE",
    permittivity: 2.1,
    lossTangent: 3e-4,
    breakdown: 25e6,
    source: "handbooks; a table of dielectrics gives 2.0 and 2e-4 (published, confirmed)",
    breakdownSource: "25 kV/mm in bulk: a table of dielectrics (published, confirmed)",
  },
];

export const cableMetals = {
  /** IEC 60028, annealed copper. */
  copper: { name: "copper", conductivity: 58e6, permeability: 1 },
  /** IEC 60889, hard-drawn aluminium, 61 % IACS (value from memory; a handbook gives 34.8). */
  aluminium: { name: "aluminium", conductivity: 35.38e6, permeability: 1 },
  /** Handbooks: 10 % IACS; the permeability falls with frequency, 50 to 300 (from memory). */
  steel: { name: "steel", conductivity: 5.8e6, permeability: 200 },
} as const satisfies Record<string, Metal>;

/** The dielectric of that name, or null. */
export const cableDielectric = (name: string): CableDielectric | null =>
  cableDielectrics.find((d) => d.name === name) ?? null;
