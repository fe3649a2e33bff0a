/** What a coil, capacitor, resistor or a circuit of them puts into a wire. */
import { add, type Complex, complex, multiply, one, reciprocal } from "../numerics/complex";
import type { Load } from "../station/antennaDescription";
import type { Lumped } from "../station/path";

/** Impedance of a lumped component at angular frequency w; a coil or capacitor of quality Q has the series resistance |X|/Q. */
export function lumpedImpedance(c: Lumped, w: number, parallel: boolean): Complex {
  const q = c.q.value;
  const coil = c.coil && complex((w * c.coil.value) / q, w * c.coil.value);
  const x = c.capacitor ? 1 / (w * c.capacitor.value) : 0;
  // Beside a coil Q belongs to the coil; the capacitor is taken as lossless.
  const capacitor = c.capacitor && complex(c.coil ? 0 : x / q, -x);
  const resistor = c.resistor && complex(c.resistor.value);
  const present = [coil, capacitor, resistor].filter((z) => z !== null);
  return parallel ? reciprocal(present.map(reciprocal).reduce(add)) : present.reduce(add);
}

/** Ohm of a load at angular frequency w, the capacitance of a coil's own turns across it: Z/(1 + jωC Z). */
export function loadImpedance(load: Load, component: Lumped, w: number): Complex {
  const z = lumpedImpedance(component, w, load.kind === "trap" || load.kind === "parallel");
  const own = load.selfCapacitance?.value ?? 0;
  return own === 0 ? z : multiply(z, reciprocal(add(one, multiply(complex(0, w * own), z))));
}
