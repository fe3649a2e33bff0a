/** The moment matrix of a structure: direct terms, images or reflected waves, and what the wires add themselves. */
import type { Kernels, PairFactors, SplitMatrix } from "../kernels/door";
import { negate, one } from "../numerics/complex";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { addLocalTerms, type LocalImpedances } from "./localTerms";
import type { PreparedMesh } from "./preparedMesh";
import type { SamplePoints } from "./samplePoints";
import { addSoilTerms } from "./soilTerms";
import { isRealSoil, type Soil, type Structure } from "./structure";

export interface Assembly {
  readonly structure: Structure;
  readonly prepared: PreparedMesh;
  readonly points: SamplePoints;
  readonly local: LocalImpedances;
  readonly soil: Soil;
  /** rad/s */
  readonly angularFrequency: number;
}

export interface Assembled {
  /** Upper triangle of the complex symmetric matrix, ohm. */
  readonly matrix: SplitMatrix;
  /** Largest share of a reflected kernel its tables leave unresolved. */
  readonly kernelError: number;
}

const itself: PairFactors = { level: one, upright: one, charge: one, cross: null };
const mirrored: PairFactors = { level: negate(one), upright: negate(one), charge: negate(one), cross: null };

export function assembleMatrix(assembly: Assembly, kernels: Kernels): Assembled {
  const { structure, prepared, points, local, soil, angularFrequency: w } = assembly;
  const n = prepared.mesh.unknowns;
  const matrix = { size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) };
  addDirectTerms(prepared, w, kernels, matrix);
  const kernelError = isRealSoil(soil) ? addSoilTerms(prepared.mesh, points, soil, w, kernels, matrix) : 0;
  addLocalTerms(structure, prepared.mesh, local, matrix);
  return { matrix, kernelError };
}

/** The wires themselves, and their images in a perfect plane. */
function addDirectTerms({ mesh, near, images }: PreparedMesh, w: number, kernels: Kernels, matrix: SplitMatrix): void {
  const common = {
    tests: mesh.elements,
    scatter: mesh.scatter,
    wavenumber: w / speedOfLight,
    vectorFactor: (w * vacuumPermeability) / (4 * Math.PI),
    scalarFactor: 1 / (4 * Math.PI * w * vacuumPermittivity),
  };
  kernels.addPairTerms({ ...common, sources: mesh.elements, near, factors: itself }, matrix);
  if (!images) return;
  kernels.addPairTerms({ ...common, sources: images.elements, near: images.near, factors: mirrored }, matrix);
}
