/** Coils, capacitors and resistors in the line or across it. */
import { add, type Complex, complex, reciprocal, zero } from "../numerics/complex";
import type { Lumped } from "../station/path";
import { seriesImpedance, shuntAdmittance, type TwoPort } from "./twoPort";

/** Impedances (ohm) of the elements that are there. Q counts for coil and capacitor: resistance = reactance/Q. */
function impedances(component: Lumped, omega: number): readonly Complex[] {
  const q = component.q.value;
  const found: Complex[] = [];
  if (component.resistor) found.push(complex(component.resistor.value));
  if (component.coil) {
    const reactance = omega * component.coil.value;
    found.push(complex(reactance / q, reactance));
  }
  if (component.capacitor) {
    const reactance = 1 / (omega * component.capacitor.value);
    found.push(complex(reactance / q, -reactance));
  }
  return found;
}

/** In the line: elements given together follow one another. `omega` in rad/s. */
export const seriesTwoPort = (component: Lumped, omega: number): TwoPort =>
  seriesImpedance(impedances(component, omega).reduce(add, zero));

/** Across the line: elements given together lie beside one another. `omega` in rad/s. */
export const acrossTwoPort = (component: Lumped, omega: number): TwoPort =>
  shuntAdmittance(impedances(component, omega).map(reciprocal).reduce(add, zero));
