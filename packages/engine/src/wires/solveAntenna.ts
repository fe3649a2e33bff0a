/**
 * The currents on a wire structure at one frequency, by the moment method: Galerkin, hat functions, mixed potentials,
 * exact cylindrical kernel, rigorous half-space below. Solves twice, on the mesh and on its halved twin, extrapolates
 * the port impedances and reports the difference as their error; refines by itself until the goal is met.
 */
import { chosenKernels } from "../kernels/chosen";
import type { Kernels } from "../kernels/door";
import { type Accuracy, usualAccuracy } from "./accuracy";
import type { AntennaSolution } from "./antennaSolution";
import { meshRule } from "./grading";
import { nextRefinement } from "./nextRefinement";
import type { Refinement } from "./refinement";
import { solveOnMesh } from "./solveOnMesh";
import type { Soil, Structure } from "./structure";
import { countUnknowns, mostRefined, mostUnknowns } from "./validateSize";
import { validateStructure } from "./validateStructure";

/**
 * Where refining starts. A dipole of thin bare wire meets the usual goal at once on the first; of many wires most matter so
 * little that finding out which do, on half the elements, costs less than it spares: from so many unknowns of the mesh of
 * refinement 1 on. Measured over the study of structures and the examples (bench/README.md).
 */
const usualStart = 0.8;
const startOfMany = 0.5;
const many = 300;
/** Refinement stops when a step leaves more than this share of the estimate. */
const worthwhile = 0.8;
/** A mesh that is asked for may have this many times the unknowns of the largest structure let in. */
const mostOverBound = 1.5;

/** A mesh held over a sweep, where one that changes between frequencies would put steps into the curve, and in tests. */
export interface HeldMesh {
  readonly refinement: Refinement;
  /** Hz; the mesh is made for this frequency, at or above the one solved. */
  readonly meshFrequency: number;
}

export interface SolveOptions extends Partial<HeldMesh> {
  /** Without a refinement the mesh is refined, where the error sits, until this is met: 0.5 ohm or 0.5 % if not said. */
  readonly accuracy?: Accuracy;
  /** False: solves for all unknowns at once, which gives the same; for looking at the whole matrix. */
  readonly useSymmetry?: boolean;
}

/** Solves one frequency (Hz). Throws RangeError when validateStructure finds something. */
export function solveAntenna(
  structure: Structure,
  soil: Soil,
  frequency: number,
  kernels: Kernels = chosenKernels(),
  options: SolveOptions = {},
): AntennaSolution {
  const problems = validateStructure(structure, soil, frequency);
  if (problems.length > 0) throw new RangeError(problems.join("\n"));
  const meshFrequency = options.meshFrequency ?? frequency;
  const { accuracy = usualAccuracy, useSymmetry = true } = options;
  const unknownsAt = (refinement: Refinement) => countUnknowns(structure, soil, meshRule(meshFrequency, refinement));
  const at = (refinement: Refinement) =>
    solveOnMesh(structure, soil, frequency, kernels, meshRule(meshFrequency, refinement), { accuracy, useSymmetry });
  if (options.refinement) {
    const bound = mostUnknowns * mostOverBound;
    const unknowns = unknownsAt(options.refinement);
    if (unknowns > bound) throw new RangeError(`a mesh of ${unknowns} unknowns was asked for: at most ${bound}`);
    return at(options.refinement);
  }
  let best = at(unknownsAt(1) > many ? startOfMany : usualStart);
  while (!best.goalMet) {
    const refinement = nextRefinement(best);
    if (refinement === null || unknownsAt(refinement) > mostRefined) break;
    const next = at(refinement);
    const helped = next.errorOverGoal < worthwhile * best.errorOverGoal;
    if (next.errorOverGoal < best.errorOverGoal) best = next;
    if (!helped) break;
  }
  return best;
}
