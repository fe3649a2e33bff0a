/** Two equal parallel round wires, far from everything else, driven in opposition. */
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, type Complex, scale } from "../numerics/complex";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import { insulatedCapacitance } from "./insulatedPair";
import type { ParallelWireLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";

/**
 * Rise of the resistance of two wires by crowding of the current on the sides that face: (D/d)/sqrt((D/d)^2 - 1), D between
 * centres, d the diameter. Exact in the limit of small skin depth. Source: handbooks; the field of two line charges.
 */
export const proximityFactor = (spacingRatio: number): number => spacingRatio / Math.sqrt(spacingRatio ** 2 - 1);

/** Centre spacing over effective diameter of the wires. */
export function spacingRatio(line: ParallelWireLine): number {
  const diameter = 2 * fieldRadius(line.wire);
  const ratio = line.spacing.value / diameter;
  if (!(ratio > 1)) {
    throw new RangeError(
      `parallel-wire line: spacing ${line.spacing.value} m between centres, wires of ${diameter} m; expected wires that do not touch`,
    );
  }
  return ratio;
}

/**
 * Series impedance and shunt admittance per metre: external L = (mu/pi) acosh(D/d), C = pi eps/acosh(D/d) with bare wires, and twice
 * the wire's exact internal impedance. Proximity multiplies what skin effect adds to the direct-current resistance; that is exact
 * for small skin depth and for direct current, and between them off by less than the factor itself. Insulation: sleeves exactly;
 * a web within 3e-4 of C and 1 % of its loss, windows by the mean of filled and empty lengths (right while a window is short
 * against the wavelength, its edges left out). Radiation (`radiationLoss`), earth and metal near by are not in it. `omega` in rad/s.
 */
export function parallelWireImmittance(line: ParallelWireLine, omega: number): LineImmittance {
  const ratio = spacingRatio(line);
  const notes =
    ratio < 3
      ? [
          `The wires of this pair are only ${ratio.toFixed(1)} diameters apart: crowding of the current is taken from its limit of small skin depth.`,
        ]
      : [];
  const wire = crowdedWireImpedance(line.wire, omega, proximityFactor(ratio));
  return {
    series: add(scale(wire, 2), reactanceOf(Math.PI / Math.acosh(ratio), omega)),
    shunt: shuntOf(pairCapacitance(line, omega), omega),
    notes,
  };
}

/** Capacitance over eps0, complex with the dielectrics' loss, at `omega` rad/s. */
function pairCapacitance(line: ParallelWireLine, omega: number): Complex {
  const around = relativePermittivity(line.dielectric, omega);
  const { insulation } = line;
  if (insulation === undefined) return scale(around, Math.PI / Math.acosh(spacingRatio(line)));
  return insulatedCapacitance(line, insulation, relativePermittivity(insulation.dielectric, omega), around);
}
