/** Currents of a solved antenna under given port voltages. Rms phasors. */
import { add, type Complex, complex, conjugate, multiply, zero } from "../numerics/complex";
import type { AntennaSolution } from "./antennaSolution";

export interface DrivenAntenna {
  readonly solution: AntennaSolution;
  /** V rms, in the order of the ports. */
  readonly portVoltages: readonly Complex[];
  /** A rms through each port, on the mesh the currents belong to. */
  readonly portCurrents: readonly Complex[];
  /** W into the feeds, lines between them included, from voltages and currents of that mesh: powers and gains refer to it. */
  readonly powerIn: number;
  /** W of it that lines between the feeds take. */
  readonly joinedHeat: number;
  /** W taken by what closes each of the other ports, in their order. */
  readonly closingHeat: readonly number[];
  /** Unknown currents of the mesh, A rms. */
  readonly currents: { readonly re: Float64Array; readonly im: Float64Array };
  /** Current moments of the sample points, A m. */
  readonly moments: { readonly re: Float64Array; readonly im: Float64Array };
}

/**
 * Currents for one voltage at each port. The structure's feeds take power, and with them the lines that join them
 * (`joinedHeat`, W); what closes its gaps and contacts takes heat.
 * Throws RangeError when the number of voltages is not the number of ports.
 */
export function driveAntenna(
  solution: AntennaSolution,
  portVoltages: readonly Complex[],
  joinedHeat = 0,
): DrivenAntenna {
  const { points, currents: unit } = solution.model;
  if (portVoltages.length !== unit.count) {
    throw new RangeError(`drive: ${portVoltages.length} voltages for ${unit.count} ports; give one for each port`);
  }
  const n = unit.length;
  const currents = { re: new Float64Array(n), im: new Float64Array(n) };
  portVoltages.forEach((v, port) => {
    for (let i = 0; i < n; i++) {
      const re = unit.re[port * n + i]!;
      const im = unit.im[port * n + i]!;
      currents.re[i]! += v.re * re - v.im * im;
      currents.im[i]! += v.re * im + v.im * re;
    }
  });
  const moments = { re: new Float64Array(points.count), im: new Float64Array(points.count) };
  for (let i = 0; i < n; i++) {
    for (let a = points.first[i]!; a < points.first[i + 1]!; a++) {
      moments.re[points.point[a]!]! += points.current[a]! * currents.re[i]!;
      moments.im[points.point[a]!]! += points.current[a]! * currents.im[i]!;
    }
  }
  const portCurrents = solution.fineAdmittance.map((row) =>
    row.reduce((sum, y, port) => add(sum, multiply(y, portVoltages[port]!)), zero),
  );
  const powers = portVoltages.map((v, port) => multiply(v, conjugate(portCurrents[port]!)).re);
  const feeds = solution.model.structure.feeds.length;
  const powerIn = powers.slice(0, feeds).reduce((sum, p) => sum + p, joinedHeat);
  const closingHeat = powers.slice(feeds).map((p) => -p);
  return { solution, portVoltages, portCurrents, powerIn, joinedHeat, closingHeat, currents, moments };
}

/** Current (A rms) at one end (0 start, 1 end) of an element, counted along the element. */
export function elementCurrent(driven: DrivenAntenna, element: number, end: 0 | 1): Complex {
  const { first, unknown, sign } = driven.solution.model.mesh.scatter;
  let re = 0;
  let im = 0;
  for (let a = first[2 * element + end]!; a < first[2 * element + end + 1]!; a++) {
    re += sign[a]! * driven.currents.re[unknown[a]!]!;
    im += sign[a]! * driven.currents.im[unknown[a]!]!;
  }
  return complex(re, im);
}
