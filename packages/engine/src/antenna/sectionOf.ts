/** The layers of a conductor of the file. */
import type { RoundConductor } from "../conductors/conductor";
import type { Conductor } from "../station/place";

/**
 * Layers of a clad, plated or hollow conductor from the core outwards, radii in metres; null for solid wire of one metal
 * and for a tube without a stated wall, which is taken as many skin depths thick. A wall or cladding thicker than the
 * radius leaves nothing inside: solid of the surface metal.
 */
export function sectionOf(conductor: Conductor): RoundConductor | null {
  const { diameter, cladding, wall, material, conductivity, permeability } = conductor;
  const outerRadius = diameter.value / 2;
  const holeRadius = Math.max(0, outerRadius - (wall?.value ?? Number.POSITIVE_INFINITY));
  const coreRadius = outerRadius - (cladding?.thickness ?? Number.POSITIVE_INFINITY);
  const clad = cladding && coreRadius > holeRadius;
  if (!clad && holeRadius === 0) return null;
  const surface = { metal: { name: material, conductivity, permeability }, outerRadius };
  return {
    form: holeRadius > 0 ? "tube" : "solid",
    layers: clad ? [{ metal: cladding.core, outerRadius: coreRadius }, surface] : [surface],
    holeRadius,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  };
}
