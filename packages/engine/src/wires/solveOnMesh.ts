/** One solution on one mesh and on its halved twin: port admittances with their error, currents, what was met on the way. */
import { soilLength } from "../ground/soilLength";
import type { Kernels, SplitMatrix, SplitVectors } from "../kernels/door";
import { speedOfLight } from "../numerics/vacuum";
import type { Accuracy } from "./accuracy";
import type { AntennaSolution } from "./antennaSolution";
import { assembleMatrix } from "./assembleMatrix";
import { prolong } from "./coarseTwin";
import { electrodeImpedance } from "./electrodeImpedance";
import { withElectrodes } from "./electrodes";
import { errorByWire } from "./errorByWire";
import type { MeshRule } from "./grading";
import { localImpedances } from "./localTerms";
import type { Mesh } from "./mesh";
import { onGrid } from "./onGrid";
import { portBasis } from "./portBasis";
import { extrapolate, portAdmittance, portVectors } from "./portMatrices";
import { preparedMesh } from "./preparedMesh";
import { type Restriction, restrictMatrix } from "./restriction";
import { buildSamplePoints } from "./samplePoints";
import { isRealSoil, portNames, type Soil, type Structure } from "./structure";

/** Solves on the mesh of a rule. */
export function solveOnMesh(
  asked: Structure,
  soil: Soil,
  frequency: number,
  kernels: Kernels,
  rule: MeshRule,
  accuracy: Accuracy,
): AntennaSolution {
  const w = 2 * Math.PI * frequency;
  const made = withElectrodes(onGrid(asked), soil);
  const { structure } = made;
  const prepared = preparedMesh(made, soil, rule, kernels);
  const { mesh } = prepared;
  const points = buildSamplePoints(
    structure,
    prepared,
    speedOfLight / frequency,
    isRealSoil(soil) ? soilLength(soil, frequency) : null,
  );
  const local = localImpedances(structure, mesh, w);
  const { matrix, kernelError } = assembleMatrix(
    { structure, prepared, points, local, soil, angularFrequency: w },
    kernels,
  );
  const fine = kernels.solveSymmetric(matrix, portVectors(mesh.unknowns, mesh.ports));
  const fineAdmittance = portAdmittance(fine.vectors, mesh.ports);
  const coarseCurrents = solveCoarse(matrix, mesh, prepared.restriction, kernels);
  const coarse = portAdmittance(coarseCurrents, mesh.ports);
  const basis = portBasis(mesh.ports);
  const ends = extrapolate(fineAdmittance, coarse, basis, accuracy);
  const { admittance, errorEstimate, errorOverGoal, impedances, goals } = ends;
  return {
    frequency,
    soil,
    ports: portNames(structure),
    electrodes: (structure.contacts ?? []).map((c) => electrodeImpedance(c, soil, frequency, kernels)),
    basis,
    admittance,
    fineAdmittance,
    errorEstimate,
    errorOverGoal,
    errorByWire: errorByWire({ mesh, matrix, currents: fine.vectors, basis, impedances, goals }),
    goalMet: errorOverGoal <= 1,
    unknowns: mesh.unknowns,
    method: {
      kernels: kernels.name,
      factorisation: fine.method,
      growth: fine.growth,
      residual: fine.residual,
      samplePoints: points.count,
      refinement: rule.refinement,
      kernelError,
    },
    model: { structure, mesh, points, local, currents: fine.vectors, coarseCurrents },
  };
}

function solveCoarse(matrix: SplitMatrix, mesh: Mesh, restriction: Restriction, kernels: Kernels): SplitVectors {
  const ports = mesh.ports.map((port) => port.map((p) => ({ ...p, unknown: mesh.coarse.indexOf(p.unknown) })));
  const solved = kernels.solveSymmetric(restrictMatrix(matrix, restriction), portVectors(restriction.size, ports));
  return prolong(solved.vectors, restriction, mesh.unknowns);
}
