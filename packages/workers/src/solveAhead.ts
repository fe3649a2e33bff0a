/** Does what a question announced, on all threads there are, before the question goes on. */
import {
  adoptSolution,
  openRequests,
  type Progress,
  type SolutionMemory,
  type SolveRequest,
  unknownsAsked,
} from "@feedpath/engine";
import { type Solutions, type SolverPool, solveAll } from "./solverPool";

/** Where a host does the solves its questions announce. */
export interface AheadPlace {
  readonly pool: SolverPool;
  /** The same that the question's context has. */
  readonly memory: SolutionMemory;
  /** Least work worth handing out: sum of the squared unknowns. 100,000 take some 20 ms on the fast kernels. */
  readonly worthwhile: number;
  /** Resolves after the messages that wait have been delivered. */
  readonly breathe: () => Promise<void>;
}

/** So many portions each thread gets, so that none waits long for the last. */
const portionsEach = 4;

/** "done" also where nothing was worth handing out: the question then solves by itself, to the same bits. */
export async function solveAhead(
  { ahead = [] }: Progress,
  { pool, memory, worthwhile, breathe }: AheadPlace,
): Promise<"done" | "cancelled"> {
  if (ahead.length < 2 || pool.size === 0) return "done";
  const open = openRequests(memory, ahead);
  const work = open.reduce((sum, request) => sum + unknownsAsked(request) ** 2, 0);
  if (open.length < 2 || work < worthwhile) return "done";
  const adopt = (requests: readonly SolveRequest[], solutions: Solutions): void =>
    requests.forEach((request, i) => {
      adoptSolution(memory, request, solutions[i]!);
    });
  const jobs = portions(open, portionsEach * (pool.size + 1));
  return pool.run({ jobs, onResult: adopt, own: { work: solveAll, breathe } });
}

/** Neighbours stay together: they share most of what a solve begins with. */
function portions<T>(all: readonly T[], atMost: number): T[][] {
  const each = Math.ceil(all.length / atMost);
  return Array.from({ length: Math.ceil(all.length / each) }, (_, i) => all.slice(i * each, (i + 1) * each));
}
