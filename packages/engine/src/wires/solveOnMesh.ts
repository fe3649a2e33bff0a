/** One solution on one mesh and on its halved twin: port admittances with their error, currents, what was met on the way. */
import { soilLength } from "../ground/soilLength";
import type { Kernels } from "../kernels/door";
import { speedOfLight } from "../numerics/vacuum";
import type { Accuracy } from "./accuracy";
import type { AntennaSolution } from "./antennaSolution";
import { electrodeImpedance } from "./electrodeImpedance";
import { withElectrodes } from "./electrodes";
import { errorByWire } from "./errorByWire";
import type { MeshRule } from "./grading";
import { localImpedances } from "./localTerms";
import { onGrid } from "./onGrid";
import { portBasis } from "./portBasis";
import { extrapolate, portAdmittance } from "./portMatrices";
import { preparedMesh } from "./preparedMesh";
import { buildSamplePoints } from "./samplePoints";
import { solveSystem } from "./solveSystem";
import { isRealSoil, portNames, type Soil, type Structure } from "./structure";

/** Solves on the mesh of a rule. */
export function solveOnMesh(
  asked: Structure,
  soil: Soil,
  frequency: number,
  kernels: Kernels,
  rule: MeshRule,
  { accuracy, useSymmetry }: { readonly accuracy: Accuracy; readonly useSymmetry: boolean },
): AntennaSolution {
  const w = 2 * Math.PI * frequency;
  const made = withElectrodes(onGrid(asked), soil);
  const { structure } = made;
  const prepared = preparedMesh(made, soil, rule, kernels);
  const { mesh } = prepared;
  const points = buildSamplePoints(
    structure,
    prepared,
    speedOfLight / rule.frequency,
    isRealSoil(soil) ? soilLength(soil, rule.frequency) : null,
  );
  const local = localImpedances(structure, mesh, w);
  const solved = solveSystem({ structure, prepared, points, local, soil, angularFrequency: w }, kernels, useSymmetry);
  const { currents, coarseCurrents, ownImpedances } = solved;
  const fineAdmittance = portAdmittance(currents, mesh.ports);
  const coarse = portAdmittance(coarseCurrents, mesh.ports);
  const basis = portBasis(mesh.ports);
  const ends = extrapolate(fineAdmittance, coarse, basis, accuracy);
  const { admittance, errorEstimate, errorOverGoal, impedances, goals } = ends;
  return {
    frequency,
    soil,
    ports: portNames(structure),
    electrodes: (structure.contacts ?? []).map((c) => electrodeImpedance(c, soil, frequency, rule.frequency, kernels)),
    basis,
    admittance,
    fineAdmittance,
    errorEstimate,
    errorOverGoal,
    errorByWire: errorByWire({ mesh, ownImpedances, currents, basis, impedances, goals }),
    goalMet: errorOverGoal <= 1,
    unknowns: mesh.unknowns,
    method: {
      kernels: kernels.name,
      factorisation: solved.factorisation,
      growth: solved.growth,
      residual: solved.residual,
      samplePoints: points.count,
      refinement: rule.refinement,
      kernelError: solved.kernelError,
      symmetry: solved.symmetry,
    },
    model: { structure, mesh, points, local, currents, coarseCurrents },
  };
}
