/**
 * The engine's matrix and power integrals under a current that is given instead of solved for. This is what the
 * induced-EMF method does, so that its closed forms and integrals can be compared without the difference between an
 * assumed and a true current. The engine is reached by its public door only: the kernels handed in keep the matrix.
 */
import {
  type AntennaSolution,
  type Complex,
  type DrivenAntenna,
  driveAntenna,
  type Kernels,
  referenceKernels,
  type Soil,
  type Structure,
  solveAntenna,
} from "@feedpath/engine";

type Matrix = Parameters<Kernels["solveSymmetric"]>[0];

export interface PrescribedAntenna {
  readonly solution: AntennaSolution;
  readonly matrix: Matrix;
}

/** The matrix of the antenna, unsolved. `refinement` divides the largest element of the mesh. */
export function prescribe(structure: Structure, soil: Soil, frequency: number, refinement: number): PrescribedAntenna {
  let matrix: Matrix | null = null;
  const keeping: Kernels = {
    ...referenceKernels,
    solveSymmetric: (given, rightSides) => {
      matrix ??= given;
      const vectors = { ...rightSides, re: new Float64Array(rightSides.re.length) };
      return { vectors, method: "LDL^T without pivoting", growth: 1, residual: 0 };
    },
  };
  const solution = solveAntenna(structure, soil, frequency, keeping, { refinement, useSymmetry: false });
  if (matrix === null) throw new Error("the engine solved no matrix");
  return { solution, matrix };
}

/** Current (A, in phase) along the whole dipole at a distance from its middle; sine of k(half length - distance). */
export type CurrentShape = (distance: number) => number;

export const sinusoid =
  (halfLength: number, wavenumber: number): CurrentShape =>
  (distance) =>
    Math.sin(wavenumber * (halfLength - distance));

export const triangle =
  (halfLength: number): CurrentShape =>
  (distance) =>
    (halfLength - distance) / halfLength;

/**
 * Amplitudes of the hat functions on dipole number `index` that carry the moments of the shape to fourth order in the
 * element length: nodal values, raised by what straight lines between them miss of a curve of second derivative `bend`
 * times the value (-k^2 for a sinusoid, 0 for a triangle). Zero on all other dipoles.
 */
export function amplitudes(
  { solution }: PrescribedAntenna,
  index: number,
  shape: CurrentShape,
  bend: number,
): Float64Array {
  const { mesh, structure } = solution.model;
  const middle = structure.feeds[index]!.at;
  const { start, direction, length } = mesh.elements;
  const sums = new Float64Array(mesh.unknowns);
  const correction = new Float64Array(mesh.unknowns);
  const reach = new Float64Array(mesh.unknowns);
  for (let e = mesh.firstElement[2 * index]!; e < mesh.firstElement[2 * index + 2]!; e++) {
    for (const end of [0, 1]) {
      const distance = Math.hypot(
        ...[0, 1, 2].map((c) => start[3 * e + c]! + end * length[e]! * direction[3 * e + c]! - middle[c]!),
      );
      for (let a = mesh.scatter.first[2 * e + end]!; a < mesh.scatter.first[2 * e + end + 1]!; a++) {
        const unknown = mesh.scatter.unknown[a]!;
        sums[unknown] = shape(distance) * mesh.scatter.sign[a]!;
        correction[unknown]! += length[e]! ** 3 * bend * shape(distance) * mesh.scatter.sign[a]!;
        reach[unknown]! += length[e]!;
      }
    }
  }
  return sums.map((value, i) => (reach[i]! > 0 ? value - correction[i]! / (12 * reach[i]!) : 0));
}

/** Sum of a_m Z_mn b_n over the symmetric matrix, of which the upper triangle is given: V A with real amplitudes in A. */
export function reaction({ matrix }: PrescribedAntenna, a: Float64Array, b: Float64Array): Complex {
  let [re, im] = [0, 0];
  for (let row = 0; row < matrix.size; row++) {
    for (let column = row; column < matrix.size; column++) {
      const weight = row === column ? a[row]! * b[row]! : a[row]! * b[column]! + a[column]! * b[row]!;
      re += weight * matrix.re[row * matrix.size + column]!;
      im += weight * matrix.im[row * matrix.size + column]!;
    }
  }
  return { re, im };
}

/** The antenna carrying these amplitudes, for powers and gains; its gain is that for 1 W of power. */
export function carrying({ solution }: PrescribedAntenna, current: Float64Array): DrivenAntenna {
  const currents = { count: 1, length: current.length, re: current, im: new Float64Array(current.length) };
  const fed = current[solution.model.mesh.ports[0]![0]!.unknown]!;
  const carrier: AntennaSolution = {
    ...solution,
    ports: solution.ports.slice(0, 1),
    fineAdmittance: [[{ re: fed, im: 0 }]],
    model: { ...solution.model, currents },
  };
  return { ...driveAntenna(carrier, [{ re: 1, im: 0 }]), powerIn: 1 };
}
