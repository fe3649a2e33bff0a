/** What wires weigh: densities of the catalogue's metals and plastics at 20 degrees Celsius. */
import type { Conductor } from "@feedpath/engine";

/** kg/m³. Metals: CRC Handbook and handbooks of materials, from memory. */
const metals: Readonly<Record<string, number>> = {
  copper: 8960,
  aluminium: 2700,
  "aluminium alloy": 2700,
  silver: 10_490,
  brass: 8530,
  bronze: 8860,
  zinc: 7140,
  steel: 7850,
  "stainless steel": 7930,
};

/** kg/m³. Handbooks, from memory; PVC of cables between 1300 and 1500. */
const plastics: Readonly<Record<string, number>> = { PVC: 1400, polyethylene: 930, PTFE: 2180 };

/** m/s², standard acceleration of free fall (CGPM 1901). */
const fall = 9.80665;

/** N/m of a wire with its insulation; null for a tube, whose wall is not known, and for materials without a density here. */
export function weightPerMetre({ diameter, form, material, insulation }: Conductor): number | null {
  const metal = metals[material];
  const plastic = insulation ? plastics[insulation.material] : 0;
  if (form === "tube" || metal === undefined || plastic === undefined) return null;
  const inner = diameter.value / 2;
  const outer = inner + (insulation?.wall.value ?? 0);
  return Math.PI * fall * (metal * inner ** 2 + plastic * (outer ** 2 - inner ** 2));
}
