/**
 * Solutions that cross a worker's door. A load's impedance is a function and stays behind: the receiver puts in that of its
 * own build of the same station, which is the same function.
 */
import { chosenKernels } from "../kernels/chosen";
import type { AntennaSolution, SolvedModel } from "../wires/antennaSolution";
import type { LumpedLoad, Structure } from "../wires/structure";
import type { AntennaRefused } from "./closeAntenna";
import { describeStation } from "./describedStation";
import type { SolutionMemory } from "./solutionMemory";
import { requestKey, type SolveRequest, solveRequest } from "./solveRequest";

type PortableStructure = Omit<Structure, "loads"> & { readonly loads: readonly Omit<LumpedLoad, "impedance">[] };
type PortableModel = Omit<SolvedModel, "structure"> & { readonly structure: PortableStructure };

/** Plain data and typed arrays only. */
export type PortableSolution = (Omit<AntennaSolution, "model"> & { readonly model: PortableModel }) | AntennaRefused;

/** What a worker does: solves a request. */
export function solvePortable(request: SolveRequest): PortableSolution {
  const solution = solveRequest(request);
  if ("refused" in solution) return solution;
  const { model } = solution;
  const loads = model.structure.loads.map(({ impedance: _, ...place }) => place);
  return { ...solution, model: { ...model, structure: { ...model.structure, loads } } };
}

/** What a host does with it: keeps it for the question that asked ahead. Throws when other kernels solved it than are chosen here. */
export function adoptSolution(memory: SolutionMemory, request: SolveRequest, solution: PortableSolution): void {
  const own = chosenKernels().name;
  if (!("refused" in solution) && solution.method.kernels !== own)
    throw new Error(
      `a worker solved with the kernels "${solution.method.kernels}", "${own}" are chosen here: choose the same`,
    );
  memory.set(requestKey(request), attached(request, solution));
}

function attached({ station }: SolveRequest, solution: PortableSolution): AntennaSolution | AntennaRefused {
  if ("refused" in solution) return solution;
  const { model } = solution;
  const own = describeStation(station).build.structure.loads;
  const loads = model.structure.loads.map((load, i) => ({ ...load, impedance: own[i]!.impedance }));
  return { ...solution, model: { ...model, structure: { ...model.structure, loads } } };
}

/** Requests not kept yet, each once, in their order. */
export function openRequests(memory: SolutionMemory, requests: readonly SolveRequest[]): SolveRequest[] {
  const byKey = new Map(requests.map((request) => [requestKey(request), request]));
  return [...byKey].filter(([key]) => memory.get(key) === undefined).map(([, request]) => request);
}
