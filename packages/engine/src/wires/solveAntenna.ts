/**
 * The currents on a wire structure at one frequency, by the moment method: Galerkin, hat functions, mixed potentials,
 * exact cylindrical kernel, rigorous half-space below. Solves twice, on the mesh and on its halved twin, extrapolates
 * the port impedances and reports the difference as their error; refines by itself until the goal is met.
 */
import { soilLength } from "../ground/soilLength";
import type { Kernels, SplitMatrix, SplitVectors, SymmetricSolution } from "../kernels/door";
import { referenceKernels } from "../kernels/reference/referenceKernels";
import type { Complex } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { assembleMatrix } from "./assembleMatrix";
import { electrodeImpedance } from "./electrodeImpedance";
import { withElectrodes } from "./electrodes";
import { type MeshRule, meshRule } from "./grading";
import { type LocalImpedances, localImpedances } from "./localTerms";
import type { Mesh } from "./mesh";
import { type PortBasis, portBasis } from "./portBasis";
import { extrapolate, portAdmittance, portVectors } from "./portMatrices";
import { preparedMesh } from "./preparedMesh";
import { type Restriction, restrictMatrix } from "./restriction";
import { buildSamplePoints, type SamplePoints } from "./samplePoints";
import { isRealSoil, portNames, type Soil, type Structure } from "./structure";
import { countUnknowns, mostUnknowns } from "./validateSize";
import { validateStructure } from "./validateStructure";

const finest = 3.2;
/** Refinement stops when a step leaves more than this share of the estimate. */
const worthwhile = 0.8;
/** A mesh that is asked for may have this many times the unknowns of the largest structure let in. */
const mostOverBound = 1.5;

export interface AntennaSolution {
  /** Hz */
  readonly frequency: number;
  readonly soil: Soil;
  /** Names of all ports: feeds, gaps, contacts, in the order of the structure (portNames). */
  readonly ports: readonly string[];
  /** Ohm: what the electrode of each contact contributes by itself, to give way to a stated impedance. */
  readonly electrodes: readonly Complex[];
  /** Which ports carry currents of their own, and the others as sums of those. */
  readonly basis: PortBasis;
  /** Port admittance matrix in siemens, from extrapolated impedances. */
  readonly admittance: readonly (readonly Complex[])[];
  /** The same from the fine mesh alone, which the currents and powers belong to. */
  readonly fineAdmittance: readonly (readonly Complex[])[];
  /** Estimated error of the port impedances in ohm: a third of the difference to the halved mesh, largest entry. */
  readonly errorEstimate: number;
  /** The estimate over the goal, 0.5 ohm or 0.5 per cent of the port's impedance: the goal is met up to 1. */
  readonly errorOverGoal: number;
  readonly goalMet: boolean;
  readonly unknowns: number;
  readonly method: {
    readonly kernels: string;
    readonly factorisation: SymmetricSolution["method"];
    readonly growth: number;
    readonly residual: number;
    readonly samplePoints: number;
    readonly refinement: number;
    /** Largest share of a reflected kernel its tables leave unresolved; 0 without soil. */
    readonly kernelError: number;
  };
  readonly model: SolvedModel;
}

/** What currents, fields and powers are computed from. */
export interface SolvedModel {
  readonly structure: Structure;
  readonly mesh: Mesh;
  readonly points: SamplePoints;
  readonly local: LocalImpedances;
  /** One vector of unknown currents (A) for 1 V at each port, the others short. */
  readonly currents: SplitVectors;
}

/**
 * Holds the mesh instead of choosing it: over a sweep, where a mesh that changes between frequencies would put steps into
 * the curve, and in tests of convergence.
 */
export interface SolveOptions {
  /** 1 is the default mesh, 2 halves its largest element. Without it the mesh is refined until the goal is met. */
  readonly refinement?: number;
  /** Hz; the mesh is made for this frequency, at or above the one solved. */
  readonly meshFrequency?: number;
}

/** Solves one frequency (Hz). Throws RangeError when validateStructure finds something. */
export function solveAntenna(
  structure: Structure,
  soil: Soil,
  frequency: number,
  kernels: Kernels = referenceKernels,
  options: SolveOptions = {},
): AntennaSolution {
  const problems = validateStructure(structure, soil, frequency);
  if (problems.length > 0) throw new RangeError(problems.join("\n"));
  const meshFrequency = options.meshFrequency ?? frequency;
  const at = (refinement: number) =>
    solveOnce(structure, soil, frequency, kernels, meshRule(meshFrequency, refinement), refinement);
  if (options.refinement) {
    const bound = mostUnknowns * mostOverBound;
    const unknowns = countUnknowns(structure, soil, meshRule(meshFrequency, options.refinement));
    if (unknowns > bound) throw new RangeError(`a mesh of ${unknowns} unknowns was asked for: at most ${bound}`);
    return at(options.refinement);
  }
  let best = at(1);
  while (!best.goalMet && best.method.refinement < finest) {
    const refinement = nextRefinement(best);
    if ((best.unknowns * refinement) / best.method.refinement > mostUnknowns) break;
    const next = at(refinement);
    const helped = next.errorOverGoal < worthwhile * best.errorOverGoal;
    if (next.errorOverGoal < best.errorOverGoal) best = next;
    if (!helped) break;
  }
  return best;
}

/** The error falls with the square of the element: the refinement that should meet the goal, in steps worth taking. */
function nextRefinement({ method, errorOverGoal }: AntennaSolution): number {
  const needed = 1.1 * method.refinement * Math.sqrt(Math.min(errorOverGoal, 100));
  return Math.min(finest, Math.max(1.3 * method.refinement, needed));
}

function solveOnce(
  asked: Structure,
  soil: Soil,
  frequency: number,
  kernels: Kernels,
  rule: MeshRule,
  refinement: number,
): AntennaSolution {
  const w = 2 * Math.PI * frequency;
  const made = withElectrodes(asked, soil);
  const { structure } = made;
  const prepared = preparedMesh(made, soil, rule, kernels);
  const { mesh } = prepared;
  const points = buildSamplePoints(
    structure,
    mesh,
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
  const coarse = solveCoarse(matrix, mesh, prepared.restriction, kernels);
  const basis = portBasis(mesh.ports);
  const { admittance, errorEstimate, errorOverGoal } = extrapolate(fineAdmittance, coarse, basis);
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
    goalMet: errorOverGoal <= 1,
    unknowns: mesh.unknowns,
    method: {
      kernels: kernels.name,
      factorisation: fine.method,
      growth: fine.growth,
      residual: fine.residual,
      samplePoints: points.count,
      refinement,
      kernelError,
    },
    model: { structure, mesh, points, local, currents: fine.vectors },
  };
}

function solveCoarse(matrix: SplitMatrix, mesh: Mesh, restriction: Restriction, kernels: Kernels): Complex[][] {
  const ports = mesh.ports.map((port) => port.map((p) => ({ ...p, unknown: mesh.coarse.indexOf(p.unknown) })));
  const solved = kernels.solveSymmetric(restrictMatrix(matrix, restriction), portVectors(restriction.size, ports));
  return portAdmittance(solved.vectors, ports);
}
