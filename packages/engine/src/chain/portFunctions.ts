/** What a sweep interpolates of solutions on one mesh, as one list of numbers: all of it shares the antenna's resonances. */
import { type Complex, complex, magnitude } from "../numerics/complex";
import type { RationalSample } from "../numerics/rationalInterpolation";
import { portMoments } from "../wires/portMoments";
import type { SolvedAntenna } from "./closeAntenna";

/** How many numbers of each kind there are, and divisors that bring all to one size. */
export interface PortFunctions {
  readonly ports: number;
  readonly electrodes: number;
  /** Sample points, where all solutions have the same and currents are wanted; else 0, and moments are left out. */
  readonly points: number;
  readonly sizes: { readonly admittance: number; readonly electrode: number };
}

/** Between all ports, of one frequency, as the extrapolated impedances have it. */
export interface PortValues {
  readonly admittance: readonly (readonly Complex[])[];
  readonly electrodes: readonly Complex[];
}

/** The same on the fine mesh, which the currents belong to: its resonances lie a little aside. */
export interface CurrentValues {
  readonly fineAdmittance: readonly (readonly Complex[])[];
  /** A m at each sample point for 1 V at each port, port after port. */
  readonly moments: readonly Complex[];
}

const largest = (values: readonly Complex[]): number =>
  values.reduce((most, z) => Math.max(most, magnitude(z)), 0) || 1;

/** `withMoments`: whether currents are wanted at all. */
export function portFunctions(solved: readonly SolvedAntenna[], withMoments: boolean): PortFunctions {
  const all = solved.map((s) => s.solution!);
  const { count, layout } = all[0]!.model.points;
  return {
    ports: all[0]!.ports.length,
    electrodes: all[0]!.electrodes.length,
    points: withMoments && all.every((s) => s.model.points.layout === layout) ? count : 0,
    sizes: {
      admittance: largest(all.flatMap((s) => s.admittance.flat())),
      electrode: largest(all.flatMap((s) => s.electrodes)),
    },
  };
}

const upper = (matrix: readonly (readonly Complex[])[]): readonly Complex[] => matrix.flatMap((row, i) => row.slice(i));

const scaled = (values: readonly Complex[], size: number): number[] =>
  values.flatMap(({ re, im }) => [re / size, im / size]);

/** One sample of the ports; `x` tells the frequency. */
export const portSample = ({ solution }: SolvedAntenna, x: number, { sizes }: PortFunctions): RationalSample => ({
  x,
  values: Float64Array.from([
    ...scaled(upper(solution!.admittance), sizes.admittance),
    ...scaled(solution!.electrodes, sizes.electrode),
  ]),
});

/** The same of the currents: first `currentNumbers` of the ports, then moments as they are. */
export function currentSample({ solution }: SolvedAntenna, x: number, functions: PortFunctions): RationalSample {
  const ports = scaled(upper(solution!.fineAdmittance), functions.sizes.admittance);
  const moments = functions.points > 0 ? portMoments(solution!) : new Float64Array(0);
  const values = new Float64Array(ports.length + moments.length);
  values.set(ports);
  values.set(moments, ports.length);
  return { x, values };
}

/** Numbers of a sample of currents before its moments. */
export const currentNumbers = ({ ports }: PortFunctions): number => ports * (ports + 1);

function reader(numbers: Float64Array) {
  let at = 0;
  const next = (size: number): Complex => {
    at += 2;
    return complex(numbers[at - 2]! * size, numbers[at - 1]! * size);
  };
  const list = (count: number, size: number): Complex[] => Array.from({ length: count }, () => next(size));
  const matrix = (ports: number, size: number): Complex[][] => {
    const rows = Array.from({ length: ports }, () => new Array<Complex>(ports));
    for (let i = 0; i < ports; i++) {
      for (let k = i; k < ports; k++) {
        const y = next(size);
        rows[i]![k] = y;
        rows[k]![i] = y;
      }
    }
    return rows;
  };
  return { list, matrix };
}

export function portValues(numbers: Float64Array, { ports, electrodes, sizes }: PortFunctions): PortValues {
  const { list, matrix } = reader(numbers);
  return { admittance: matrix(ports, sizes.admittance), electrodes: list(electrodes, sizes.electrode) };
}

export function currentValues(numbers: Float64Array, { ports, points, sizes }: PortFunctions): CurrentValues {
  const { list, matrix } = reader(numbers);
  return { fineAdmittance: matrix(ports, sizes.admittance), moments: list(ports * points, 1) };
}

/** Largest difference of moments between two samples of currents, as a share of the largest moment of the first. */
export function momentChange(a: Float64Array, b: Float64Array, functions: PortFunctions): number {
  let [most, size] = [0, 0];
  for (let at = currentNumbers(functions); at < a.length; at += 2) {
    const [re, im] = [a[at]!, a[at + 1]!];
    most = Math.max(most, (re - b[at]!) ** 2 + (im - b[at + 1]!) ** 2);
    size = Math.max(size, re * re + im * im);
  }
  return size === 0 ? 0 : Math.sqrt(most / size);
}
