/** A wire whose current is crowded towards its neighbours. */

import type { RoundConductor } from "../conductors/conductor";
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import { add, type Complex, scale, subtract } from "../numerics/complex";

/** Radius in m that counts for the field: a strand's gaps make it smaller than that of the metal. */
export const fieldRadius = (wire: RoundConductor): number => outerRadius(wire) * wire.effectiveRadiusRatio;

/**
 * Internal impedance (ohm/m) of a wire whose current density squared, averaged round it, is `crowding` times the square of its
 * average in the limit of small skin depth: crowding multiplies what skin effect adds to the direct-current resistance. Exact
 * for small skin depth and for direct current, between them off by less than the factor itself.
 */
export function crowdedWireImpedance(wire: RoundConductor, omega: number, crowding: number): Complex {
  const direct = roundConductorImpedance(wire, 0);
  return add(direct, scale(subtract(roundConductorImpedance(wire, omega), direct), crowding));
}
