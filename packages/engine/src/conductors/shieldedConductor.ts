/** An outer conductor from how its shield is made: the one door to resistance factor and wall. */

import { fillOfCoverage, knownBraid } from "./braidGeometry";
import { braidResistance, braidSurfaceFactor } from "./braidSurface";
import type { Metal, OuterConductor } from "./conductor";
import { corrugationFactor } from "./corrugation";
import type { Braid, Shield } from "./shield";

/** What a braid is taken for where nothing is known of it: 95 % covered, 28 degrees (common practice, no source). */
export const usualBraid = { coverage: 0.95, angle: (28 * Math.PI) / 180 } as const;

export interface ShieldedInput {
  /** m, below the shield. */
  readonly innerRadius: number;
  /** Of the tube, of the braid's wires, or of the foil where there is no braid. */
  readonly metal: Metal;
  readonly shield: Shield;
  /** m, tube only; Infinity when left out. */
  readonly wall?: number;
  readonly coating?: OuterConductor["coating"];
}

/**
 * Outer conductor whose impedance is right at both ends: at small skin depth by the surface factor of its braid or the longer
 * way of its corrugation, at direct current by its metal, for which the wall of a braid stands: that of a tube which,
 * times the factor, has the resistance of the wires. Where the wires are not known in full, the wall is endless
 * (no direct-current resistance), and coverage and angle those of `usualBraid` as far as they are not known either.
 */
export function shieldedConductor(input: ShieldedInput): OuterConductor {
  const { innerRadius, metal, shield, coating } = input;
  const base = { innerRadius, metal, shield, ...(coating && { coating }) };
  const wall = input.wall ?? Number.POSITIVE_INFINITY;
  switch (shield.form) {
    case "tube":
      return { ...base, wall, resistanceFactor: 1 };
    case "corrugated":
      return { ...base, wall, resistanceFactor: corrugationFactor(shield.depth, shield.pitch) };
    case "foil":
      return { ...base, metal: shield.foil.metal, wall: shield.foil.thickness, resistanceFactor: 1 };
    default:
      return { ...base, ...braided(innerRadius, metal, shield.braid) };
  }
}

function braided(innerRadius: number, metal: Metal, braid: Braid): Pick<OuterConductor, "wall" | "resistanceFactor"> {
  const known = knownBraid(innerRadius, braid);
  if (known === null) {
    const fill = fillOfCoverage(braid.coverage ?? usualBraid.coverage);
    return {
      wall: Number.POSITIVE_INFINITY,
      resistanceFactor: braidSurfaceFactor(fill, braid.angle ?? usualBraid.angle),
    };
  }
  const resistanceFactor = braidSurfaceFactor(known.fill, known.angle);
  if (metal.conductivity === Number.POSITIVE_INFINITY) return { wall: Number.POSITIVE_INFINITY, resistanceFactor };
  const resistance = braidResistance(known, metal) / known.layers;
  const area = resistanceFactor / (metal.conductivity * resistance);
  return { wall: Math.sqrt(innerRadius ** 2 + area / Math.PI) - innerRadius, resistanceFactor };
}
