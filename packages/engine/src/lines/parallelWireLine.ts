/** Two equal parallel round wires, far from everything else, driven in opposition. */
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import { add, complex, scale, subtract } from "../numerics/complex";
import { vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import type { LineImmittance } from "./immittance";
import type { ParallelWireLine } from "./lineModel";

/**
 * Rise of the resistance of two wires by crowding of the current on the sides that face: (D/d)/sqrt((D/d)^2 - 1), D between
 * centres, d the diameter. Exact in the limit of small skin depth. Source: handbooks; the field of two line charges.
 */
export const proximityFactor = (spacingRatio: number): number => spacingRatio / Math.sqrt(spacingRatio ** 2 - 1);

/** Centre spacing over effective diameter of the wires. */
export function spacingRatio(line: ParallelWireLine): number {
  const diameter = 2 * outerRadius(line.wire) * line.wire.effectiveRadiusRatio;
  const ratio = line.spacing.value / diameter;
  if (!(ratio > 1)) {
    throw new RangeError(
      `parallel-wire line: spacing ${line.spacing.value} m between centres, wires of ${diameter} m; expected wires that do not touch`,
    );
  }
  return ratio;
}

/**
 * Series impedance and shunt admittance per metre: external L = (mu/pi) acosh(D/d), C = pi eps/acosh(D/d), and twice the wire's
 * exact internal impedance. Proximity multiplies what skin effect adds to the direct-current resistance; that is exact for
 * small skin depth and for direct current, and between them off by less than the factor itself. Radiation of the pair, earth
 * and metal near by are not in it. `omega` in rad/s.
 */
export function parallelWireImmittance(line: ParallelWireLine, omega: number): LineImmittance {
  const ratio = spacingRatio(line);
  const area = Math.acosh(ratio);
  const { permittivity, lossTangent } = line.dielectric;
  const direct = roundConductorImpedance(line.wire, 0);
  const skin = subtract(roundConductorImpedance(line.wire, omega), direct);
  const wire = add(direct, scale(skin, proximityFactor(ratio)));
  const inductive = (omega * vacuumPermeability * area) / Math.PI;
  const capacitive = (omega * Math.PI * vacuumPermittivity * permittivity) / area;
  const notes =
    ratio < 3
      ? [
          `The wires of this pair are only ${ratio.toFixed(1)} diameters apart: crowding of the current is taken from its limit of small skin depth.`,
        ]
      : [];
  return {
    series: add(scale(wire, 2), complex(0, inductive)),
    shunt: complex(capacitive * lossTangent, capacitive),
    notes,
  };
}
