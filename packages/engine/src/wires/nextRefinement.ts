/** Where to spend elements: the fewest that should bring the error of the ports below its goal. */
import type { AntennaSolution } from "./antennaSolution";
import { othersOf, type Refinement, refinedWires, refinementOf } from "./refinement";

const finest = 3.2;
/** Aimed at, as a share of the goal: predictions are good to a tenth or two of the element length. */
const aim = 1 / 1.1 ** 2;
/** A step is worth taking when it should leave no more than this of the error. */
const leastGain = 1 / 1.3 ** 2;
/** Refinements are multiples of one over this, so that wires alike in shape stay alike in mesh. */
const stepsInOne = 10;
const largestError = 100;
/** Aimed at no lower than this times what is left at the finest, so that wires that matter little are not refined in vain. */
const aboveLeast = 1.2;

interface Wire {
  readonly refinement: number;
  readonly elements: number;
  error: number;
}

/**
 * The error falls with the square of the element and the number of elements grows as the refinement: for the smallest sum
 * of elements it is raised on each wire in proportion to (error/elements)^(1/3), and nowhere lowered. The indicated errors
 * are scaled to the difference found. Null when no step is worth taking.
 */
export function nextRefinement({ method, errorOverGoal, errorByWire, model }: AntennaSolution): Refinement | null {
  const { structure, mesh } = model;
  const total = errorByWire.reduce((sum, e) => sum + e, 0);
  const found = Math.min(errorOverGoal, largestError);
  const wires = new Map<string, Wire>();
  errorByWire.forEach((error, w) => {
    const { name } = structure.wires[w]!;
    const elements = mesh.firstElement[w + 1]! - mesh.firstElement[w]!;
    const known = wires.get(name);
    const share = total > 0 ? (error / total) * found : found / errorByWire.length;
    wires.set(name, {
      refinement: refinementOf(method.refinement, name),
      elements: elements + (known?.elements ?? 0),
      error: share + (known?.error ?? 0),
    });
  });
  const raised = raiseBy([...wires.values()], Math.min(aim, leastGain * found), leastGain * found);
  if (raised === null) return null;
  return refinedWires(new Map([...wires.keys()].map((name, i) => [name, raised[i]!])), othersOf(method.refinement));
}

/** Refinements that should leave the wanted error or else one that is allowed, by bisection of the common factor. */
function raiseBy(wires: readonly Wire[], wanted: number, allowed: number): number[] | null {
  const at = (factor: number) =>
    wires.map(({ refinement, elements, error }) => {
      const raised = refinement * Math.max(1, factor * Math.cbrt(error / elements));
      return Math.min(Math.max(finest, refinement), raised);
    });
  const left = (raised: readonly number[]) =>
    wires.reduce((sum, { refinement, error }, i) => sum + error * (refinement / raised[i]!) ** 2, 0);
  const steepest = Math.max(...wires.map(({ elements, error }) => Math.cbrt(error / elements)));
  let low = 0;
  let high = (1e3 * finest) / steepest;
  const aimed = Math.max(wanted, aboveLeast * left(at(high)));
  if (aimed > allowed) return null;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (left(at(middle)) > aimed) low = middle;
    else high = middle;
  }
  return at(high).map((value, i) =>
    value === wires[i]!.refinement ? value : Math.min(finest, Math.ceil(value * stepsInOne - 1e-6) / stepsInOne),
  );
}
