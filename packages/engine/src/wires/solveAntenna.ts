/**
 * The currents on a wire structure at one frequency, by the moment method: Galerkin, hat functions, mixed potentials,
 * exact cylindrical kernel, rigorous half-space below. Solves twice, on the mesh and on its halved twin, extrapolates
 * the port impedances and reports the difference as their error; refines by itself until the goal is met.
 */
import { chosenKernels } from "../kernels/chosen";
import type { Kernels } from "../kernels/door";
import type { AntennaSolution } from "./antennaSolution";
import { meshRule } from "./grading";
import { solveOnMesh } from "./solveOnMesh";
import type { Soil, Structure } from "./structure";
import { countUnknowns, mostUnknowns } from "./validateSize";
import { validateStructure } from "./validateStructure";

const finest = 3.2;
/** Refinement stops when a step leaves more than this share of the estimate. */
const worthwhile = 0.8;
/** A mesh that is asked for may have this many times the unknowns of the largest structure let in. */
const mostOverBound = 1.5;

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
  kernels: Kernels = chosenKernels(),
  options: SolveOptions = {},
): AntennaSolution {
  const problems = validateStructure(structure, soil, frequency);
  if (problems.length > 0) throw new RangeError(problems.join("\n"));
  const meshFrequency = options.meshFrequency ?? frequency;
  const at = (refinement: number) =>
    solveOnMesh(structure, soil, frequency, kernels, meshRule(meshFrequency, refinement), refinement);
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
