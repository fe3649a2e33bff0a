/** A lossy dielectric that fills only part of a field. */
import { type Complex, complex } from "../numerics/complex";
import type { Dielectric } from "./dielectric";

/**
 * Permittivity and every loss of a dielectric of which a rule (permittivity alone to permittivity of the whole, analytic) shows a
 * part: losses go by the rule's slope. First order in the loss; relaxations and conductivity are taken as small.
 */
export function diluted(
  solid: Dielectric,
  rule: (own: Complex) => Complex,
): Pick<Dielectric, "permittivity" | "lossTangent" | "lossPoints" | "relaxations" | "conductivity"> {
  const { permittivity, lossTangent, lossPoints, relaxations, conductivity } = solid;
  const mixed = rule(complex(permittivity, -1e-6));
  const slope = -mixed.im / 1e-6;
  const factor = (slope * permittivity) / mixed.re;
  return {
    permittivity: mixed.re,
    lossTangent: lossTangent * factor,
    ...(lossPoints && { lossPoints: lossPoints.map((p) => ({ ...p, lossTangent: p.lossTangent * factor })) }),
    ...(relaxations && { relaxations: relaxations.map((r) => ({ ...r, strength: r.strength * slope })) }),
    ...(conductivity !== undefined && { conductivity: conductivity * slope }),
  };
}
