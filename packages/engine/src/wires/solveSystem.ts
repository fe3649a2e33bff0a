/** The currents that one volt at each port drives, on the mesh and on its halved twin, by way of the symmetry where there is one. */
import type { Kernels, SplitVectors, SymmetricSolution } from "../kernels/door";
import { type Assembly, assembleMatrix } from "./assembleMatrix";
import { prolong } from "./coarseTwin";
import { portVectors } from "./portMatrices";
import type { PreparedMesh } from "./preparedMesh";
import { reducedPoints, spread } from "./reducedVectors";
import { restrictMatrix } from "./restriction";
import type { SymmetricUnknowns } from "./symmetricUnknowns";
import { symmetryOf } from "./symmetry";

export interface SolvedSystem {
  readonly currents: SplitVectors;
  /** Of the mesh of doubled elements, as unknowns of this one. */
  readonly coarseCurrents: SplitVectors;
  /** |Z_nn| of each unknown, ohm; under a symmetry that of an unknown together with its images, for each of them. */
  readonly ownImpedances: Float64Array;
  readonly factorisation: SymmetricSolution["method"];
  readonly growth: number;
  readonly residual: number;
  readonly kernelError: number;
  /** Number of isometries made use of; 1 without any. */
  readonly symmetry: number;
}

/** Solves for all or some ports of a prepared mesh, which may be a reduced one. */
export function solvePorts(assembly: Assembly, ports: readonly number[], kernels: Kernels) {
  const { mesh, restriction } = assembly.prepared;
  const { matrix, kernelError } = assembleMatrix(assembly, kernels);
  const driven = ports.map((p) => mesh.ports[p]!);
  const fine = kernels.solveSymmetric(matrix, portVectors(mesh.unknowns, driven));
  const place = new Map([...mesh.coarse].map((unknown, c) => [unknown, c]));
  const onCoarse = driven.map((port) => port.map((p) => ({ ...p, unknown: place.get(p.unknown)! })));
  const coarse = kernels.solveSymmetric(
    restrictMatrix(matrix, restriction),
    portVectors(restriction.size, onCoarse),
  ).vectors;
  const own = Float64Array.from({ length: mesh.unknowns }, (_, n) =>
    Math.hypot(matrix.re[n * (matrix.size + 1)]!, matrix.im[n * (matrix.size + 1)]!),
  );
  return { fine, coarse: prolong(coarse, restriction, mesh.unknowns), own, kernelError };
}

const vectors = (count: number, length: number): SplitVectors => ({
  count,
  length,
  re: new Float64Array(count * length),
  im: new Float64Array(count * length),
});

/** `useSymmetry` false: all unknowns at once, though some be images of others. */
export function solveSystem(assembly: Assembly, kernels: Kernels, useSymmetry = true): SolvedSystem {
  const { structure, prepared, points, local, soil } = assembly;
  const symmetry = useSymmetry ? symmetryOf({ structure, prepared, local, soil }) : null;
  const ports = prepared.mesh.ports.map((_, p) => p);
  if (!symmetry) {
    const { fine, coarse, own, kernelError } = solvePorts(assembly, ports, kernels);
    const { vectors: currents, method: factorisation, growth, residual } = fine;
    const rest = { factorisation, growth, residual, kernelError, symmetry: 1 };
    return { currents, coarseCurrents: coarse, ownImpedances: own, ...rest };
  }
  const { unknowns } = prepared.mesh;
  const [currents, coarseCurrents] = [vectors(ports.length, unknowns), vectors(ports.length, unknowns)];
  const solved = symmetry.kinds.map((kind) => {
    const made = solvePorts(
      { ...assembly, prepared: kind.prepared, points: reducedPoints(points, kind.symmetric) },
      kind.ports,
      kernels,
    );
    spread(made.fine.vectors, kind.symmetric, kind.ports, currents);
    spread(made.coarse, kind.symmetric, kind.ports, coarseCurrents);
    return { ...made, own: ownOfMembers(made.own, kind.symmetric, prepared) };
  });
  const most = (of: (one: (typeof solved)[number]) => number): number => Math.max(...solved.map(of));
  const pivoted = solved.find(({ fine }) => fine.method === "LU with partial pivoting");
  return {
    currents,
    coarseCurrents,
    ownImpedances: Float64Array.from({ length: unknowns }, (_, n) => most(({ own }) => own[n]!)),
    factorisation: (pivoted ?? solved[0]!).fine.method,
    growth: most(({ fine }) => fine.growth),
    residual: most(({ fine }) => fine.residual),
    kernelError: most(({ kernelError }) => kernelError),
    symmetry: symmetry.order,
  };
}

/** A reduced unknown's own impedance is that of all its members together: each has its share. */
function ownOfMembers(
  own: Float64Array,
  { first, unknown, weight }: SymmetricUnknowns,
  { mesh }: PreparedMesh,
): Float64Array {
  const squares = new Float64Array(own.length);
  for (let a = 0; a < unknown.length; a++) squares[unknown[a]!]! += weight[a]! ** 2;
  const out = new Float64Array(mesh.unknowns);
  for (let u = 0; u < mesh.unknowns; u++) {
    for (let a = first[u]!; a < first[u + 1]!; a++)
      out[u]! += (weight[a]! ** 2 * own[unknown[a]!]!) / squares[unknown[a]!]!;
  }
  return out;
}
