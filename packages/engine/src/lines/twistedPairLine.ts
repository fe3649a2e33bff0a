/** Two wires in sleeves that touch, twisted with each other. */
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, complex, scale } from "../numerics/complex";
import { sleevedPairCapacitance } from "./crossSection/sleevedPair";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import type { TwistedPairLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";
import { proximityFactor } from "./parallelWireLine";

/** Metres of wire a metre of line: each axis runs on a helix of the sleeve's radius. */
export function twistLength({ sleeve, turn }: TwistedPairLine): number {
  if (!(turn > 0)) throw new RangeError(`twisted pair: a turn of ${turn} m; expected more than 0`);
  return Math.hypot(1, (2 * Math.PI * sleeve.outerRadius) / turn);
}

/**
 * Series impedance and shunt admittance per metre of line: a straight pair in sleeves that touch, in air, along the longer path of
 * its wires. Fields between neighbouring turns are left out, right while a turn is several times the pair's width. `omega` in
 * rad/s. Source: the two-dimensional field; the path is geometry.
 */
export function twistedPairImmittance(line: TwistedPairLine, omega: number): LineImmittance {
  const [radius, spacing] = [fieldRadius(line.wire), 2 * line.sleeve.outerRadius];
  const path = twistLength(line);
  const ratio = relativePermittivity(line.sleeve.dielectric, omega);
  const geometry = { radius, outerRadius: line.sleeve.outerRadius, spacing };
  const capacitance = sleevedPairCapacitance(geometry, ratio);
  const inVacuum = sleevedPairCapacitance(geometry, complex(1)).re;
  const wires = scale(crowdedWireImpedance(line.wire, omega, proximityFactor(spacing / (2 * radius))), 2);
  const notes =
    line.turn < 5 * spacing
      ? [
          "This pair is twisted so tightly that neighbouring turns touch each other's field: its impedance is an estimate.",
        ]
      : [];
  return {
    series: scale(add(wires, reactanceOf(inVacuum, omega)), path),
    shunt: shuntOf(scale(capacitance, path), omega),
    notes,
  };
}

/**
 * Rule of thumb for the effective permittivity of a tightly twisted pair of enamelled wires: 1 + q (eps - 1) with
 * q = 0.25 + 0.0004 t^2, t the angle of the twist in degrees (20 to 45). Beside the field's own value, never instead of it.
 * Source: Lefferson, IEEE Trans. Parts, Hybrids and Packaging PHP-7 (1971) 148 (from memory).
 */
export function twistedPairRule(line: TwistedPairLine, permittivity: number): number {
  const angle = (Math.atan((2 * Math.PI * line.sleeve.outerRadius) / line.turn) * 180) / Math.PI;
  return 1 + (0.25 + 0.0004 * angle ** 2) * (permittivity - 1);
}
