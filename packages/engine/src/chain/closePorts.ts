/**
 * An antenna with many ports seen at its feeds alone: the others are closed by an impedance each, or left open. So a
 * choke, an earth or a line between two points of the antenna is changed without solving the wires again.
 */
import { add, type Complex, complex, multiply, negate, one, zero } from "../numerics/complex";
import { solveComplexSystem } from "../numerics/solveComplexSystem";

/** Impedance in ohm, or nothing at all. */
export type Closing = Complex | "open";

export interface ClosedPorts {
  /** Siemens, between the first ports only. */
  readonly admittance: readonly (readonly Complex[])[];
  /** Voltage at every port for 1 V at each of the first ones in turn: `voltages[driven][port]`. */
  readonly voltages: readonly (readonly Complex[])[];
}

/**
 * `admittance` (siemens) between all ports; the last ones get `closings` in their order: V = -Z I with the current into
 * the antenna's port. Null when the closed antenna has no unique state.
 */
export function closePorts(
  admittance: readonly (readonly Complex[])[],
  closings: readonly Closing[],
): ClosedPorts | null {
  const feeds = admittance.length - closings.length;
  // a V + b I = 0 at each closed port, with I = sum of Y V: one equation for each unknown voltage.
  const rows = closings.map((closing, c) => {
    const [a, b] = closing === "open" ? [zero, one] : [one, closing];
    const coupled = admittance[feeds + c]!.map((y) => multiply(b, y));
    coupled[feeds + c] = add(coupled[feeds + c]!, a);
    return coupled;
  });
  const matrix = rows.map((row) => row.slice(feeds));
  const voltages: Complex[][] = [];
  for (let driven = 0; driven < feeds; driven++) {
    const solved =
      closings.length === 0
        ? []
        : solveComplexSystem(
            matrix.map((row) => [...row]),
            rows.map((row) => negate(row[driven]!)),
          );
    if (solved === null) return null;
    voltages.push([...Array.from({ length: feeds }, (_, i) => (i === driven ? one : zero)), ...solved]);
  }
  const reduced = admittance
    .slice(0, feeds)
    .map((row) => voltages.map((v) => row.reduce((sum, y, port) => add(sum, multiply(y, v[port]!)), complex(0))));
  return { admittance: reduced, voltages };
}

/** Voltages at all ports under given ones at the feeds, from those for 1 V at each feed in turn. */
export const allPortVoltages = (unit: readonly (readonly Complex[])[], feedVoltages: readonly Complex[]): Complex[] =>
  (unit[0] ?? []).map((_, port) =>
    feedVoltages.reduce((sum, v, driven) => add(sum, multiply(v, unit[driven]![port]!)), complex(0)),
  );
