/** Port admittances from solved currents, and what two meshes together say about them. */
import type { SplitVectors } from "../kernels/door";
import { type Complex, complex, magnitude } from "../numerics/complex";
import type { Port } from "./mesh";
import { admittanceOfAll, basisImpedances, type PortBasis } from "./portBasis";

/** The goal for the estimated error of a port impedance: the larger of an absolute (ohm) and a relative bound. */
const goalOhms = 0.5;
const goalShare = 0.005;

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
export function extrapolate(fine: Complex[][], coarse: Complex[][], basis: PortBasis) {
  const zFine = basisImpedances(fine, basis);
  const zCoarse = basisImpedances(coarse, basis);
  if (!zFine || !zCoarse) {
    return { admittance: fine, errorEstimate: Number.POSITIVE_INFINITY, errorOverGoal: Number.POSITIVE_INFINITY };
  }
  let errorEstimate = 0;
  let errorOverGoal = 0;
  const extrapolated = zFine.map((row, i) =>
    row.map((z, k) => {
      const step = complex((z.re - zCoarse[i]![k]!.re) / 3, (z.im - zCoarse[i]![k]!.im) / 3);
      errorEstimate = Math.max(errorEstimate, magnitude(step));
      const goal = Math.max(goalOhms, goalShare * magnitude(zFine[i]![i]!));
      errorOverGoal = Math.max(errorOverGoal, magnitude(step) / goal);
      return complex(z.re + step.re, z.im + step.im);
    }),
  );
  return { admittance: admittanceOfAll(extrapolated, basis) ?? fine, errorEstimate, errorOverGoal };
}
