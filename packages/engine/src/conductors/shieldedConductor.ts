/** An outer conductor from how its shield is made: the one door to resistance factor and wall. */

import { fillOfCoverage, knownBraid } from "./braidGeometry";
import { braidSurfaceFactor } from "./braidSurface";
import type { Metal, OuterConductor } from "./conductor";
import { corrugationFactor } from "./corrugation";
import type { Braid, Shield } from "./shield";

/** What a braid is taken for where it is not known: 95 % covered, 28 degrees, wires of 0.15 mm (common practice, no source). */
export const usualBraid = { coverage: 0.95, angle: (28 * Math.PI) / 180, wire: 0.15e-3 } as const;

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
 * times the factor, has the resistance of the wires. Where the wires are not known in full, coverage, angle and wire are those
 * of `usualBraid` as far as they are not known.
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
      return { ...base, ...braided(innerRadius, shield.braid) };
  }
}

function braided(innerRadius: number, braid: Braid): Pick<OuterConductor, "wall" | "resistanceFactor"> {
  const known = knownBraid(innerRadius, braid);
  const fill = known?.fill ?? fillOfCoverage(braid.coverage ?? usualBraid.coverage);
  const angle = braid.angle ?? usualBraid.angle;
  const wire = braid.wire ?? usualBraid.wire;
  const resistanceFactor = braidSurfaceFactor(fill, angle);
  // Metal across the axis: wires of both directions side by side, each cut at its angle and longer by it.
  const metalArea = (fill * Math.PI ** 2 * (2 * innerRadius + 2 * wire) * wire * Math.cos(angle) ** 2) / 2;
  const area = resistanceFactor * metalArea * braid.layers;
  return { wall: Math.sqrt(innerRadius ** 2 + area / Math.PI) - innerRadius, resistanceFactor };
}
