/** A coaxial line from its build. */
import { outerConductorImpedance } from "../conductors/outerConductor";
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, complex } from "../numerics/complex";
import { vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import type { LineImmittance } from "./immittance";
import type { CoaxialLine } from "./lineModel";

/** Inner radius of the outer conductor over the effective radius of the inner one. */
export function radiusRatio(line: CoaxialLine): number {
  const inner = outerRadius(line.inner) * line.inner.effectiveRadiusRatio;
  const ratio = line.outer.innerRadius / inner;
  if (!(ratio > 1)) {
    throw new RangeError(
      `coaxial line: outer conductor's inner radius ${line.outer.innerRadius} m, inner conductor's radius ${inner} m; expected the first larger`,
    );
  }
  return ratio;
}

/**
 * Series impedance and shunt admittance per metre of a coaxial line in its one mode without cut-off: exact conductor terms,
 * L = mu/(2 pi) ln(D/d), C = 2 pi eps/ln(D/d) with the complex permittivity at that frequency. `omega` in rad/s. From the cut-off of TE11
 * on (te11.ts) other waves may travel too. Source: elementary; Schelkunoff 1934 for the conductors.
 */
export function coaxialImmittance(line: CoaxialLine, omega: number): LineImmittance {
  const logarithm = Math.log(radiusRatio(line));
  const permittivity = relativePermittivity(line.dielectric, omega);
  const outer = outerConductorImpedance(line.outer, omega);
  const conductors = add(roundConductorImpedance(line.inner, omega), outer);
  const inductive = (omega * vacuumPermeability * logarithm) / (2 * Math.PI);
  const capacitive = (omega * 2 * Math.PI * vacuumPermittivity) / logarithm;
  return {
    series: add(conductors, complex(0, inductive)),
    shunt: complex(-capacitive * permittivity.im, capacitive * permittivity.re),
    outerResistance: outer.re,
    notes: [],
  };
}
