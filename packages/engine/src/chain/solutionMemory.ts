/** Solutions of antennas kept by content, so that they outlive a question: the host owns the memory and says how large. */
import { createBoundedStore } from "../kept/boundedStore";
import type { AntennaSolution } from "../wires/antennaSolution";
import type { AntennaRefused } from "./closeAntenna";

export interface SolutionMemory {
  readonly get: (key: string) => AntennaSolution | AntennaRefused | undefined;
  readonly set: (key: string, solution: AntennaSolution | AntennaRefused) => void;
  /** Bytes held now, nearly. */
  readonly held: () => number;
}

/** What a question takes where its host brings no memory along. */
export const usualBytes = 64e6;

/** Keys are those of `requestKey`: all that a solution hangs on. Beyond `mostBytes` those longest unused go first. */
export function createSolutionMemory(mostBytes = usualBytes): SolutionMemory {
  interface Kept {
    readonly solution: AntennaSolution | AntennaRefused;
    readonly bytes: number;
  }
  const store = createBoundedStore<Kept>(mostBytes, ({ bytes }) => bytes);
  return {
    get: (key) => store.get(key)?.solution,
    set: (key, solution) => store.set(key, { solution, bytes: bytesOf(solution) + 2 * key.length }),
    held: store.held,
  };
}

/** Elements and unknowns take some 300 bytes each, sample points 70, what the mesh gives them 20. */
function bytesOf(solution: AntennaSolution | AntennaRefused): number {
  if ("refused" in solution) return 1000;
  const { mesh, points, currents } = solution.model;
  return (
    2000 +
    300 * (mesh.unknowns + mesh.elements.count) +
    70 * points.count +
    20 * points.point.length +
    32 * currents.re.length
  );
}
