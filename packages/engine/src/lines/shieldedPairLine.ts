/** Two equal wires in one round shield, driven in opposition. */
import { outerConductorImpedance } from "../conductors/outerConductor";
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, type Complex, complex, divide, multiply, scale, zero } from "../numerics/complex";
import { vacuumPermeability } from "../numerics/vacuum";
import { fieldOfWires, type WiresField } from "./crossSection/mirroredWires";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import type { ShieldedPairLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";

/**
 * Series impedance and shunt admittance per metre, exact for wires in one medium within a round shield. The shield carries no net
 * current but loops of it, which keep the field inside. `omega` in rad/s.
 * Source: integral equation for the charge round the wires, image charges in the shield.
 */
export function shieldedPairImmittance(line: ShieldedPairLine, omega: number): LineImmittance {
  const field = shieldedPairField(line);
  const inVacuum = Math.PI / field.potential;
  const shield = shieldOf(line, field, omega);
  const wires = scale(crowdedWireImpedance(line.wire, omega, field.crowding), 2);
  return {
    series: add(add(wires, shield), reactanceOf(inVacuum, omega)),
    shunt: shuntOf(scale(relativePermittivity(line.dielectric, omega), inVacuum), omega),
    outerResistance: shield.re,
    notes: [],
  };
}

/**
 * Each harmonic m of the loops meets the shield's own impedance beside its inductance mu0/(4 pi m): at high frequency the loops flow in
 * full and the impedance alone counts, towards direct current they fade and the field goes through the wall as if it were
 * not there. A wall thin against its radius; what fading loops do to the crowding in the wires is left out.
 */
function shieldOf(line: ShieldedPairLine, field: WiresField, omega: number): Complex {
  const own = outerConductorImpedance(line.outer, omega);
  return field.shieldHarmonics.slice(1).reduce((sum, weight, k) => {
    const inductive = complex(0, (omega * vacuumPermeability) / (4 * Math.PI * (k + 1)));
    return add(sum, scale(divide(multiply(own, inductive), add(own, inductive)), weight));
  }, zero);
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
