/** How materials of lines carry, store and bear heat, each with its source. Room temperature. */
import type { CableDielectric } from "../dielectrics/cableDielectric";
import { foamed } from "../dielectrics/foam";
import { cableDielectric } from "../dielectrics/materials";
import { gasFractionOfVelocity } from "../dielectrics/mixture";

export interface ThermalMaterial {
  /** W/(m K). */
  readonly conductivity: number;
  /** J/(m³ K). */
  readonly heatCapacity: number;
  /** K it bears for long; null where nothing softens. */
  readonly greatestTemperature: number | null;
  readonly source: string;
}

const celsius = (degrees: number): number => degrees + 273.15;

const thermalOf = (insulation: CableDielectric): ThermalMaterial => ({
  conductivity: insulation.thermalConductivity,
  heatCapacity: insulation.density * insulation.specificHeat,
  greatestTemperature: insulation.greatestTemperature ?? null,
  source: insulation.thermalSource,
});

const named = (name: string): ThermalMaterial => {
  const found = cableDielectric(name);
  if (!found) throw new Error(`thermal materials: no dielectric "${name}"`);
  return thermalOf(found);
};

const polyethylene = named("polyethylene");
const vinyl = named("PVC");
const ptfe = cableDielectric("PTFE")!;
const foamPtfe = thermalOf(foamed(ptfe, gasFractionOfVelocity(ptfe.permittivity, 0.82)));

/** What other names mean: the first that fits decides, foams and spacers before solids. */
const insulations: readonly (readonly [RegExp, ThermalMaterial])[] = [
  [/window|web/i, polyethylene],
  [/(foam|cellular|spaced|expanded).*(ptfe|fep)/i, foamPtfe],
  [/foam|cellular|spaced|expanded/i, named("foam polyethylene")],
  [/ptfe|fep|fluoro/i, named("PTFE")],
  [/pvc|vinyl/i, vinyl],
  [/polypropylene/i, named("polypropylene")],
  [/polystyrene/i, named("polystyrene")],
  [/polyethylene|^pe$/i, polyethylene],
  [/air|vacuum|spacer/i, named("air")],
];

/** Insulation by its name; null where nothing is known of it. */
export const thermalMaterial = (name: string): ThermalMaterial | null =>
  insulations.find(([pattern]) => pattern.test(name))?.[1] ?? null;

/** Jackets are of PVC; insulations of which nothing is known count as polyethylene. */
export const jacketMaterial = vinyl;
export const unknownInsulation = polyethylene;

/** W/(m K) and J/(m³ K) of conductors by the metal's name: IEC 60853 and handbooks (from memory); copper where it is another. */
export function metalHeat(name: string): { readonly conductivity: number; readonly heatCapacity: number } {
  if (/alumin/i.test(name)) return { conductivity: 220, heatCapacity: 2.5e6 };
  if (/steel|iron/i.test(name)) return { conductivity: 50, heatCapacity: 3.8e6 };
  return { conductivity: 390, heatCapacity: 3.45e6 };
}

/** K at which hard-drawn copper begins to soften over the years: bare wires (from memory). */
export const bareWireLimit = celsius(100);
