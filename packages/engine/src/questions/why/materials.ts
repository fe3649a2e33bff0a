/** What a study weighs and costs: densities of what lines are made of, each with its source. kg/m3. */
import { cableMetals } from "../../lines/cableMaterials";
import type { Metal } from "../../lines/lineModel";

const handbook = "handbooks (from memory)";

/** Metals a study can be asked with. */
export const studyMetals: readonly Metal[] = [cableMetals.copper, cableMetals.aluminium];

const metalDensity: Readonly<Record<string, number>> = { copper: 8940, aluminium: 2700, silver: 10_490, steel: 7850 };

/** Solid polyethylene, foam of velocity factor 0.82 (about half gas), PTFE, air. */
const dielectricDensity: Readonly<Record<string, number>> = {
  polyethylene: 920,
  "foam polyethylene": 450,
  PTFE: 2170,
  air: 1.2,
};

/** Null for a material whose density is not known here. */
export const densityOfMetal = (name: string): number | null => metalDensity[name] ?? null;
export const densityOfDielectric = (name: string): number | null => dielectricDensity[name] ?? null;
export const densitySource = handbook;
