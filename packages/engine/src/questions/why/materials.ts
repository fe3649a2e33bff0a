/** What a study weighs and costs: densities of metals, kg/m3, from handbooks (from memory). */
import { cableMetals } from "../../lines/cableMaterials";
import type { Metal } from "../../lines/lineModel";

/** Metals a study can be asked with. */
export const studyMetals: readonly Metal[] = [cableMetals.copper, cableMetals.silver, cableMetals.aluminium];

const metalDensity: Readonly<Record<string, number>> = { copper: 8940, aluminium: 2700, silver: 10_490, steel: 7850 };

/** Null for a metal whose density is not known here. */
export const densityOfMetal = (name: string): number | null => metalDensity[name] ?? null;
