/** How materials of lines carry, store and bear heat, each with its source. Room temperature. */

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

const polyethylene: ThermalMaterial = {
  conductivity: 1 / 3.5,
  heatCapacity: 2.4e6,
  greatestTemperature: celsius(80),
  source: "3.5 K m/W: IEC 60287-2-1, 2.4 MJ/(m³ K): IEC 60853 (both from memory); 80 °C: cable practice (from memory)",
};
const foam: ThermalMaterial = {
  conductivity: 0.12,
  heatCapacity: 1.1e6,
  greatestTemperature: celsius(80),
  source:
    "45 % polyethylene with cells of air, mixed by Maxwell's formula (our assumption); 80 °C: cable practice (from memory)",
};
const fluorocarbon: ThermalMaterial = {
  conductivity: 0.25,
  heatCapacity: 2.2e6,
  greatestTemperature: celsius(200),
  source: "handbooks, and 200 °C: cable practice (from memory)",
};
const vinyl: ThermalMaterial = {
  conductivity: 0.2,
  heatCapacity: 1.7e6,
  greatestTemperature: celsius(70),
  source: "5 K m/W: IEC 60287-2-1, 1.7 MJ/(m³ K): IEC 60853, 70 °C: cable practice (from memory)",
};
/** Air that does not move: what little it carries by conduction alone. */
const air: ThermalMaterial = {
  conductivity: 0.026,
  heatCapacity: 1.2e3,
  greatestTemperature: null,
  source: "dry air at rest: handbooks (from memory)",
};

/** First that fits a name decides; foams before solids. */
const insulations: readonly (readonly [RegExp, ThermalMaterial])[] = [
  [/window|web/i, polyethylene],
  [/foam|cellular/i, foam],
  [/ptfe|fep|fluoro/i, fluorocarbon],
  [/pvc|vinyl/i, vinyl],
  [/polyethylene|^pe$|polypropylene|polystyrene/i, polyethylene],
  [/air|vacuum|spacer/i, air],
];

/** Insulation by its name; null where nothing is known of it. */
export const thermalMaterial = (name: string): ThermalMaterial | null =>
  insulations.find(([pattern]) => pattern.test(name))?.[1] ?? null;

/** Insulations of which nothing is known, and jackets: of PVC. */
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
