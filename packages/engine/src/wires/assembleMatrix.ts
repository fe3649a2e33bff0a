/** The moment matrix of a structure: direct terms, images or reflected waves, and what the wires add themselves. */
import { createBoundedStore } from "../kept/boundedStore";
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
  const { structure, prepared, local } = assembly;
  const { matrix, kernelError } = fieldTerms(assembly, kernels);
  addLocalTerms(structure, prepared.mesh, local, matrix);
  return { matrix, kernelError };
}

/** What the wires' metals, sleeves and loads do not change: kept, so that another metal, choke or coil needs no new one. */
function fieldTerms({ prepared, points, soil, angularFrequency: w }: Assembly, kernels: Kernels): Assembled {
  const { shape, height } = prepared;
  const key = `${shape} at ${height} over ${JSON.stringify(soil)}, ${points.layout}, ${w}`;
  const known = shape === null ? undefined : matrices.get(key);
  if (known) return { ...known, matrix: copied(known.matrix) };
  const matrix = directTerms(prepared, w, kernels);
  if (!isRealSoil(soil)) return { matrix, kernelError: 0 };
  const kernelError = addSoilTerms(prepared, points, soil, w, kernels, matrix);
  keep(prepared, key, { matrix, kernelError });
  return { matrix, kernelError };
}

/** The wires themselves, and their images in a perfect plane; kept, for they are the same at every height over every soil. */
function directTerms(prepared: PreparedMesh, w: number, kernels: Kernels): SplitMatrix {
  const { mesh, lowered, near, images, orbits, shape } = prepared;
  const key = `${shape}, ${w}`;
  const known = shape === null ? undefined : matrices.get(key);
  if (known) return copied(known.matrix);
  const n = mesh.unknowns;
  const matrix = { size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) };
  const common = {
    tests: lowered,
    scatter: mesh.scatter,
    ...(orbits ? { orbits } : {}),
    wavenumber: w / speedOfLight,
    vectorFactor: (w * vacuumPermeability) / (4 * Math.PI),
    scalarFactor: 1 / (4 * Math.PI * w * vacuumPermittivity),
  };
  kernels.addPairTerms({ ...common, sources: lowered, near, factors: itself }, matrix);
  if (images) {
    kernels.addPairTerms({ ...common, sources: images.elements, near: images.near, factors: mirrored }, matrix);
  }
  keep(prepared, key, { matrix, kernelError: 0 });
  return matrix;
}

/** A matrix larger than this share of the store would push out too many others, and be held twice while it is used. */
const largestShare = 1 / 8;
const mostBytes = 96e6;
const bytesOf = ({ matrix }: Assembled): number => 16 * matrix.size ** 2;
const matrices = createBoundedStore<Assembled>(mostBytes, bytesOf);

const copied = ({ size, re, im }: SplitMatrix): SplitMatrix => ({ size, re: re.slice(), im: im.slice() });

function keep({ shape }: PreparedMesh, key: string, made: Assembled): void {
  if (shape === null || bytesOf(made) > largestShare * mostBytes) return;
  matrices.set(key, { ...made, matrix: copied(made.matrix) });
}
