/** Port admittances from solved currents, and what two meshes together say about them. */
import type { SplitVectors } from "../kernels/door";
import { type Complex, complex, magnitude } from "../numerics/complex";
import { type Accuracy, goalFor } from "./accuracy";
import type { Port } from "./mesh";
import { admittanceOfAll, basisImpedances, type PortBasis } from "./portBasis";

/** One volt at each port in turn. */
export function portVectors(length: number, ports: readonly Port[]): SplitVectors {
  const re = new Float64Array(ports.length * length);
  ports.forEach((port, p) => {
    for (const { unknown, sign } of port) re[p * length + unknown]! += sign;
  });
  return { count: ports.length, length, re, im: new Float64Array(re.length) };
}

/** Currents through the ports under those voltages, siemens. */
export function portAdmittance(currents: SplitVectors, ports: readonly Port[]): Complex[][] {
  const through = (port: Port, driven: number, part: Float64Array): number =>
    port.reduce((sum, { unknown, sign }) => sum + sign * part[driven * currents.length + unknown]!, 0);
  return ports.map((port) =>
    ports.map((_, driven) => complex(through(port, driven, currents.re), through(port, driven, currents.im))),
  );
}

/** The error falls with the square of the element: Z = Zfine + (Zfine - Zcoarse)/3 (Richardson), between independent ports. */
export function extrapolate(fine: Complex[][], coarse: Complex[][], basis: PortBasis, accuracy: Accuracy) {
  const zFine = basisImpedances(fine, basis);
  const zCoarse = basisImpedances(coarse, basis);
  if (!zFine || !zCoarse) {
    const unknown = Number.POSITIVE_INFINITY;
    return { admittance: fine, errorEstimate: unknown, errorOverGoal: unknown, impedances: [], goals: [] };
  }
  const goals = zFine.map((row, i) => goalFor(accuracy, row[i]!));
  let errorEstimate = 0;
  let errorOverGoal = 0;
  const extrapolated = zFine.map((row, i) =>
    row.map((z, k) => {
      const step = complex((z.re - zCoarse[i]![k]!.re) / 3, (z.im - zCoarse[i]![k]!.im) / 3);
      errorEstimate = Math.max(errorEstimate, magnitude(step));
      errorOverGoal = Math.max(errorOverGoal, magnitude(step) / Math.sqrt(goals[i]! * goals[k]!));
      return complex(z.re + step.re, z.im + step.im);
    }),
  );
  const admittance = admittanceOfAll(extrapolated, basis) ?? fine;
  return { admittance, errorEstimate, errorOverGoal, impedances: zFine, goals };
}
