/** What lies between the conductors of lines, at 20 degrees Celsius, each value with its source and how well it is known. */
import type { CableDielectric } from "./cableDielectric";
import { foamed } from "./foam";
import { gasFractionOfVelocity } from "./mixture";

const plastics = "handbooks of plastics (from memory), ± 20 %";

export const polyethylene: CableDielectric = {
  name: "polyethylene",
  permittivity: 2.26,
  lossTangent: 3e-4,
  statedAt: 1e8,
  breakdown: 20e6,
  source:
    "solid polyethylene, loss 2e-4 to 5e-4 from 1 MHz to 1 GHz: handbooks; a table of dielectrics gives 2.21 and 3e-4 (published, confirmed)",
  breakdownSource:
    "low end of 20 to 40 kV/mm in bulk: handbooks; a table of dielectrics gives 40 (published, confirmed)",
  greatestTemperature: 353.15,
  thermalConductivity: 0.33,
  density: 920,
  specificHeat: 2300,
  thermalSource: `80 to 85 °C: general requirements for military cables (from memory); the rest: ${plastics}`,
};

const ptfe: CableDielectric = {
  name: "PTFE",
  permittivity: 2.1,
  lossTangent: 3e-4,
  statedAt: 1e8,
  breakdown: 25e6,
  source: "handbooks, 2e-4 to 4e-4; a table of dielectrics gives 2.0 and 2e-4 (published, confirmed)",
  breakdownSource: "25 kV/mm in bulk: a table of dielectrics (published, confirmed)",
  greatestTemperature: 473.15,
  thermalConductivity: 0.25,
  density: 2180,
  specificHeat: 1000,
  thermalSource: `200 °C: general requirements for military cables (from memory); the rest: ${plastics}`,
};

const fep: CableDielectric = {
  name: "FEP",
  permittivity: 2.1,
  lossTangent: 7e-4,
  statedAt: 1e6,
  lossPoints: [
    { frequency: 1e3, lossTangent: 3e-4 },
    { frequency: 1e6, lossTangent: 7e-4 },
    { frequency: 1e9, lossTangent: 1e-3 },
  ],
  breakdown: 20e6,
  source: "loss at three frequencies, a factor of 1.5: makers' data in handbooks (from memory)",
  breakdownSource: "low end of bulk values: handbooks of plastics (from memory)",
  greatestTemperature: 473.15,
  thermalConductivity: 0.2,
  density: 2150,
  specificHeat: 1170,
  thermalSource: `200 °C: handbooks (from memory); the rest: ${plastics}`,
};

const pvc: CableDielectric = {
  name: "PVC",
  permittivity: 4,
  lossTangent: 0.04,
  statedAt: 1e6,
  lossPoints: [
    { frequency: 1e3, lossTangent: 0.09 },
    { frequency: 1e6, lossTangent: 0.04 },
    { frequency: 1e8, lossTangent: 0.02 },
  ],
  breakdown: 15e6,
  source:
    "soft PVC, 3 to 4.5 and 0.03 to 0.1 by compound: handbooks; a table of dielectrics gives 4 and 0.04 (published, confirmed); loss at other frequencies from memory, a factor of two",
  breakdownSource: "low end of 15 to 40 kV/mm: handbooks of plastics (from memory)",
  greatestTemperature: 348.15,
  thermalConductivity: 0.17,
  density: 1350,
  specificHeat: 1200,
  thermalSource: `70 to 80 °C by compound: handbooks (from memory); the rest: ${plastics}`,
};

const polystyrene: CableDielectric = {
  name: "polystyrene",
  permittivity: 2.55,
  lossTangent: 1e-4,
  statedAt: 1e8,
  lossPoints: [
    { frequency: 1e6, lossTangent: 7e-5 },
    { frequency: 1e8, lossTangent: 1e-4 },
    { frequency: 3e9, lossTangent: 3.3e-4 },
  ],
  breakdown: 20e6,
  source: "von Hippel, Dielectric Materials and Applications (1954), from memory",
  breakdownSource: "low end of 20 to 28 kV/mm: handbooks of plastics (from memory)",
  greatestTemperature: 338.15,
  thermalConductivity: 0.14,
  density: 1050,
  specificHeat: 1300,
  thermalSource: `65 to 75 °C: handbooks (from memory); the rest: ${plastics}`,
};

const polypropylene: CableDielectric = {
  name: "polypropylene",
  permittivity: 2.25,
  lossTangent: 4e-4,
  statedAt: 1e8,
  breakdown: 24e6,
  source: "2.2 to 2.3, 3e-4 to 5e-4: handbooks of plastics (from memory)",
  breakdownSource: "low end of bulk values: handbooks of plastics (from memory)",
  greatestTemperature: 373.15,
  thermalConductivity: 0.2,
  density: 905,
  specificHeat: 1900,
  thermalSource: `100 °C: handbooks (from memory); the rest: ${plastics}`,
};

const air: CableDielectric = {
  name: "air",
  permittivity: 1.00059,
  lossTangent: 0,
  breakdown: 3e6,
  source: "dry air at 1 atmosphere: CRC Handbook (from memory)",
  breakdownSource: "uniform field, centimetre gaps, sea level, ± 5 %: textbooks (from memory)",
  thermalConductivity: 0.0257,
  density: 1.204,
  specificHeat: 1006,
  thermalSource: "dry air at 20 °C and 1 atmosphere: handbooks (from memory), ± 1 %",
};

/** Foam whose velocity factor is 0.82; other grades by `foamed`. */
const foamPolyethylene: CableDielectric = {
  ...foamed(polyethylene, gasFractionOfVelocity(polyethylene.permittivity, 0.82)),
  name: "foam polyethylene",
  permittivity: 1.49,
  lossTangent: 2e-4,
  statedAt: 1e8,
  source: "velocity factor 0.82, 1e-4 to 3e-4 (common practice, no source)",
};

/** Loss tangents are good to a factor of two unless their source says otherwise. */
export const cableDielectrics: readonly CableDielectric[] = [
  air,
  polyethylene,
  foamPolyethylene,
  ptfe,
  fep,
  polystyrene,
  polypropylene,
  pvc,
];

/** The dielectric of that name, or null. */
export const cableDielectric = (name: string): CableDielectric | null =>
  cableDielectrics.find((d) => d.name === name) ?? null;
