/** Four equal wires at the corners of a square, joined in pairs. */
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, scale } from "../numerics/complex";
import { fieldOfWires, type WiresField } from "./crossSection/mirroredWires";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import type { FourWireLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";

/**
 * Series impedance and shunt admittance per metre, exact for wires in one medium: two wires carry the current out, two back,
 * across the diagonals or side by side. `omega` in rad/s. Source: integral equation for the charge round the wires.
 */
export function fourWireImmittance(line: FourWireLine, omega: number): LineImmittance {
  const field = fourWireField(line);
  // Two wires hold the charge of one side; the sides differ by twice the potential.
  const inVacuum = (2 * Math.PI) / field.potential;
  return {
    series: add(crowdedWireImpedance(line.wire, omega, field.crowding), reactanceOf(inVacuum, omega)),
    shunt: shuntOf(scale(relativePermittivity(line.dielectric, omega), inVacuum), omega),
    notes: [],
  };
}

const fields = new WeakMap<FourWireLine, WiresField>();

function fourWireField(line: FourWireLine): WiresField {
  const half = line.side.value / 2;
  const known =
    fields.get(line) ??
    fieldOfWires({
      radius: fieldRadius(line.wire),
      x: half,
      y: half,
      images: [
        { alongX: -1, alongY: 1, sign: line.joined === "diagonals" ? -1 : 1 },
        { alongX: 1, alongY: -1, sign: -1 },
        { alongX: -1, alongY: -1, sign: line.joined === "diagonals" ? 1 : -1 },
      ],
      shield: null,
    });
  fields.set(line, known);
  return known;
}
