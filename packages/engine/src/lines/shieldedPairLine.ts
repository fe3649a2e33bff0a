/** Two equal wires in one round shield, driven in opposition. */
import { outerConductorImpedance } from "../conductors/outerConductor";
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, scale } from "../numerics/complex";
import { fieldOfWires, type WiresField } from "./crossSection/mirroredWires";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import type { ShieldedPairLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";

/**
 * Series impedance and shunt admittance per metre, exact for wires in one medium within a round shield. The shield carries no net
 * current but loops of it, which keep the field inside; the skin depth is taken as small against its wall. `omega` in rad/s.
 * Source: integral equation for the charge round the wires, image charges in the shield.
 */
export function shieldedPairImmittance(line: ShieldedPairLine, omega: number): LineImmittance {
  const field = shieldedPairField(line);
  const inVacuum = Math.PI / field.potential;
  const shield = scale(outerConductorImpedance(line.outer, omega), field.shieldCrowding);
  const wires = scale(crowdedWireImpedance(line.wire, omega, field.crowding), 2);
  return {
    series: add(add(wires, shield), reactanceOf(inVacuum, omega)),
    shunt: shuntOf(scale(relativePermittivity(line.dielectric, omega), inVacuum), omega),
    outerResistance: shield.re,
    notes: [],
  };
}

const fields = new WeakMap<ShieldedPairLine, WiresField>();

function shieldedPairField(line: ShieldedPairLine): WiresField {
  const known =
    fields.get(line) ??
    fieldOfWires({
      radius: fieldRadius(line.wire),
      x: line.spacing.value / 2,
      y: 0,
      images: [{ alongX: -1, alongY: 1, sign: -1 }],
      shield: line.outer.innerRadius,
    });
  fields.set(line, known);
  return known;
}
