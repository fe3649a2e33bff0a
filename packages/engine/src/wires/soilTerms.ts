/** What real soil adds to the moment matrix: quasi-static images of low wires, and reflected waves by way of the sample points. */

import { type QuasiStaticImages, quasiStaticImages } from "../ground/quasiStaticImages";
import { type RealSoil, soilSurface } from "../ground/soilSurface";
import type { Kernels, PairFactors, SplitMatrix } from "../kernels/door";
import { negate, zero } from "../numerics/complex";
import { speedOfLight, vacuumPermeability, vacuumPermittivity } from "../numerics/vacuum";
import { keptTables } from "./keptTables";
import { lowImages } from "./lowImages";
import type { PreparedMesh } from "./preparedMesh";
import type { SamplePoints } from "./samplePoints";
import { tablesFor } from "./tableReaches";

/** Factors of mirrored sources, whose upright parts point the other way. */
const soilImages = ({ scalar, vertical, cross }: QuasiStaticImages): PairFactors => ({
  level: zero,
  upright: negate(vertical),
  charge: scalar,
  cross,
});

/** Adds to the upper triangle; returns the largest share of a reflected kernel its tables leave unresolved. `w` in rad/s. */
export function addSoilTerms(
  { mesh, orbits }: PreparedMesh,
  points: SamplePoints,
  soil: RealSoil,
  w: number,
  kernels: Kernels,
  matrix: SplitMatrix,
): number {
  const k = w / speedOfLight;
  const frequency = w / (2 * Math.PI);
  const low = lowImages(mesh, points.lowWires, kernels, orbits);
  if (low) {
    const factors = soilImages(quasiStaticImages(soilSurface(soil, frequency).top));
    const { elements: tests, scatter, mirrored: sources, near, orbits: images } = low;
    const pairs = { tests, sources, near, scatter, ...(images ? { orbits: images } : {}) };
    const vectorFactor = (w * vacuumPermeability) / (4 * Math.PI);
    const scalarFactor = 1 / (4 * Math.PI * w * vacuumPermittivity);
    kernels.addPairTerms({ ...pairs, wavenumber: k, vectorFactor, scalarFactor, factors }, matrix);
  }
  const tables = tablesFor(points, keptTables(soil, frequency, k, kernels));
  const factors = { vectorFactor: w * vacuumPermeability, scalarFactor: 1 / (w * vacuumPermittivity) };
  kernels.addReflectedTerms({ points, tables, ...factors }, matrix);
  return Math.max(tables.lessImages?.unresolved ?? 0, tables.whole?.unresolved ?? 0);
}
