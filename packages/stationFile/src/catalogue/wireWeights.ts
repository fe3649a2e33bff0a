/** What wires weigh: densities of the catalogue's metals and plastics at 20 degrees Celsius. */
import { type Conductor, sectionOf } from "@feedpath/engine";

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
  tin: 7290,
};

/** kg/m³. Handbooks, from memory; PVC of cables between 1300 and 1500. */
const plastics: Readonly<Record<string, number>> = { PVC: 1400, polyethylene: 930, PTFE: 2180 };

/** The metal at the surface of clad and plated wires. */
const surfaceMetals: Readonly<Record<string, string>> = {
  "copper-clad steel 40 %": "copper",
  "copper-clad steel 30 %": "copper",
  "copper-clad steel 21 %": "copper",
  "copper-clad aluminium": "copper",
  "tinned copper": "tin",
  "silver-plated copper": "silver",
  "galvanised steel": "zinc",
};

/** m/s², standard acceleration of free fall (CGPM 1901). */
const fall = 9.80665;

/** N/m of a wire with its insulation; null for a tube whose wall is not known, and for materials without a density here. */
export function weightPerMetre(conductor: Conductor): number | null {
  const { diameter, form, insulation, wall } = conductor;
  const metal = form === "tube" && !wall ? undefined : metalWeight(conductor);
  const plastic = insulation ? plastics[insulation.material] : 0;
  if (metal === undefined || plastic === undefined) return null;
  const inner = diameter.value / 2;
  const outer = inner + (insulation?.wall.value ?? 0);
  return Math.PI * fall * (metal + plastic * (outer ** 2 - inner ** 2));
}

/** kg/m over pi: the layers of a clad wire or a tube, or one metal throughout. */
function metalWeight(conductor: Conductor): number | undefined {
  const section = sectionOf(conductor);
  if (!section) {
    const density = metals[conductor.material];
    return density === undefined ? undefined : density * (conductor.diameter.value / 2) ** 2;
  }
  const surface = surfaceMetals[conductor.material] ?? conductor.material;
  let inside = section.holeRadius;
  let sum: number | undefined = 0;
  section.layers.forEach(({ metal, outerRadius }, i) => {
    const density = metals[i === section.layers.length - 1 ? surface : metal.name];
    sum = sum === undefined || density === undefined ? undefined : sum + density * (outerRadius ** 2 - inside ** 2);
    inside = outerRadius;
  });
  return sum;
}
