/** Currents of a solved antenna under given port voltages. Rms phasors. */
import { add, type Complex, complex, conjugate, multiply, zero } from "../numerics/complex";
import type { AntennaSolution } from "./solveAntenna";

export interface DrivenAntenna {
  readonly solution: AntennaSolution;
  /** V rms, in the order of the feeds. */
  readonly portVoltages: readonly Complex[];
  /** A rms through each feed gap, on the mesh the currents belong to. */
  readonly portCurrents: readonly Complex[];
  /** W, from port voltages and currents of that mesh: powers and gains refer to it. */
  readonly powerIn: number;
  /** Unknown currents of the mesh, A rms. */
  readonly currents: { readonly re: Float64Array; readonly im: Float64Array };
  /** Current moments of the sample points, A m. */
  readonly moments: { readonly re: Float64Array; readonly im: Float64Array };
}

/** Throws RangeError when the number of voltages is not the number of feeds. */
export function driveAntenna(solution: AntennaSolution, portVoltages: readonly Complex[]): DrivenAntenna {
  const { points, currents: unit } = solution.model;
  if (portVoltages.length !== unit.count) {
    throw new RangeError(`drive: ${portVoltages.length} voltages for ${unit.count} feeds; give one for each feed`);
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
  const powerIn = portVoltages.reduce((sum, v, port) => sum + multiply(v, conjugate(portCurrents[port]!)).re, 0);
  return { solution, portVoltages, portCurrents, powerIn, currents, moments };
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
