/** The moment matrix of a structure: direct terms, images or reflected waves, and what the wires add themselves. */
import { reflectedTables } from "../ground/reflectedKernels";
import type { Kernels, SplitMatrix } from "../kernels/door";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { groupByHeight, tablesBetween } from "./heightGroups";
import { addLocalTerms, type LocalImpedances } from "./localTerms";
import type { PreparedMesh } from "./preparedMesh";
import { addReflectedTerms } from "./reflectedTerms";
import type { SamplePoints } from "./samplePoints";
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

export function assembleMatrix(assembly: Assembly, kernels: Kernels): Assembled {
  const { structure, prepared, points, local, soil, angularFrequency: w } = assembly;
  const { mesh, near, images } = prepared;
  const n = mesh.unknowns;
  const matrix = { size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) };
  const k = w / speedOfLight;
  const common = {
    tests: mesh.elements,
    scatter: mesh.scatter,
    wavenumber: k,
    vectorFactor: (w * vacuumPermeability) / (4 * Math.PI),
    scalarFactor: 1 / (4 * Math.PI * w * vacuumPermittivity),
  };
  kernels.addPairTerms({ ...common, sources: mesh.elements, near, sign: 1 }, matrix);
  if (images) {
    kernels.addPairTerms({ ...common, sources: images.elements, near: images.near, sign: -1 }, matrix);
  }
  let kernelError = 0;
  if (isRealSoil(soil)) {
    const groups = groupByHeight(points);
    const tables = tablesBetween(groups, reflectedTables(soil, w / (2 * Math.PI), k, kernels.sumSpectrum));
    kernelError = tables.reduce((worst, table) => Math.max(worst, table.unresolved), 0);
    const { groupOf, count } = groups;
    addReflectedTerms(points, (p, q) => tables[groupOf[p]! * count + groupOf[q]!]!, w, matrix);
  }
  addLocalTerms(structure, mesh, local, matrix);
  return { matrix, kernelError };
}
