/** The moment matrix of a structure: direct terms, images or reflected waves, and what the wires add themselves. */
import { type QuasiStaticImages, quasiStaticImages } from "../ground/quasiStaticImages";
import { reflectedTables } from "../ground/reflectedKernels";
import { soilSurface } from "../ground/soilSurface";
import type { Kernels, PairFactors, SplitMatrix } from "../kernels/door";
import { negate, one, zero } from "../numerics/complex";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { groupByHeight, tablesBetween } from "./heightGroups";
import { addLocalTerms, type LocalImpedances } from "./localTerms";
import { lowImages } from "./lowImages";
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

const itself: PairFactors = { level: one, upright: one, charge: one, cross: null };
const mirrored: PairFactors = { level: negate(one), upright: negate(one), charge: negate(one), cross: null };

/** Factors of mirrored sources, whose upright parts point the other way. */
const soilImages = ({ scalar, vertical, cross }: QuasiStaticImages): PairFactors => ({
  level: zero,
  upright: negate(vertical),
  charge: scalar,
  cross,
});

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
  kernels.addPairTerms({ ...common, sources: mesh.elements, near, factors: itself }, matrix);
  if (images) {
    kernels.addPairTerms({ ...common, sources: images.elements, near: images.near, factors: mirrored }, matrix);
  }
  let kernelError = 0;
  if (isRealSoil(soil)) {
    const frequency = w / (2 * Math.PI);
    const low = lowImages(mesh, points.lowWires, kernels);
    if (low) {
      const factors = soilImages(quasiStaticImages(soilSurface(soil, frequency).top));
      const { elements, scatter, mirrored: sources, near: close } = low;
      kernels.addPairTerms({ ...common, tests: elements, scatter, sources, near: close, factors }, matrix);
    }
    const groups = groupByHeight(points);
    const tables = tablesBetween(groups, reflectedTables(soil, frequency, k, kernels.sumSpectrum));
    kernelError = tables.reduce((worst, table) => Math.max(worst, table.unresolved), 0);
    const { groupOf, count } = groups;
    addReflectedTerms(points, (p, q) => tables[groupOf[p]! * count + groupOf[q]!]!, w, matrix);
  }
  addLocalTerms(structure, mesh, local, matrix);
  return { matrix, kernelError };
}
