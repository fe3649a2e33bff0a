/** The moment matrix of a structure: direct terms, images or reflected waves, and what the wires add themselves. */
import { buildKernelTable } from "../ground/kernelTable";
import { complexPermittivity } from "../ground/soilMedium";
import { buildSpectrum } from "../ground/spectrum";
import type { Kernels, NearMoments, SplitMatrix } from "../kernels/door";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { groupByHeight, tablesBetween } from "./heightGroups";
import { addLocalTerms, type LocalImpedances } from "./localTerms";
import { type Mesh, mirrorElements } from "./mesh";
import { addReflectedTerms } from "./reflectedTerms";
import type { SamplePoints } from "./samplePoints";
import type { Soil, Structure } from "./structure";

export interface Assembly {
  readonly structure: Structure;
  readonly mesh: Mesh;
  readonly points: SamplePoints;
  readonly local: LocalImpedances;
  readonly soil: Soil;
  /** rad/s */
  readonly angularFrequency: number;
}

/** Upper triangle of the complex symmetric matrix, ohm. */
export function assembleMatrix(assembly: Assembly, kernels: Kernels): SplitMatrix {
  const { structure, mesh, points, local, soil, angularFrequency: w } = assembly;
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
  const near = keptMoments(mesh, kernels);
  kernels.addPairTerms({ ...common, sources: mesh.elements, near, sign: 1 }, matrix);
  if (soil.kind === "perfect") {
    const images = mirrorElements(mesh.elements);
    const nearImages = kernels.nearMoments(mesh.elements, images);
    kernels.addPairTerms({ ...common, sources: images, near: nearImages, sign: -1 }, matrix);
  }
  if (soil.kind === "homogeneous") {
    const eps = complexPermittivity(soil, w / (2 * Math.PI));
    const groups = groupByHeight(points);
    const tables = tablesBetween(groups, (reach) =>
      buildKernelTable(buildSpectrum(k, eps, reach), k, reach, kernels.sumSpectrum),
    );
    const { groupOf, count } = groups;
    addReflectedTerms(points, (p, q) => tables[groupOf[p]! * count + groupOf[q]!]!, w, matrix);
  }
  addLocalTerms(structure, mesh, local, w, matrix);
  return matrix;
}

/** Static moments depend on geometry alone: a mesh keeps them as long as it lives. */
const kept = new WeakMap<Mesh, NearMoments>();

function keptMoments(mesh: Mesh, kernels: Kernels): NearMoments {
  const known = kept.get(mesh);
  if (known) return known;
  const near = kernels.nearMoments(mesh.elements, mesh.elements);
  kept.set(mesh, near);
  return near;
}
