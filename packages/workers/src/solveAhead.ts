/** Does what a question announced, on all threads there are, before the question goes on. */
import {
  adoptSolution,
  openRequests,
  type Progress,
  type SolutionMemory,
  type SolveRequest,
  unknownsAsked,
} from "@feedpath/engine";
import { type SolverPool, solveAll } from "./solverPool";

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
/** Squared unknowns of a portion beyond which it takes no further request: some 40 ms, between two turns for messages. */
const mostInPortion = 60_000;

/** "done" also where nothing was worth handing out: the question then solves by itself, to the same bits. */
export async function solveAhead(
  { ahead = [] }: Progress,
  { pool, memory, worthwhile, breathe }: AheadPlace,
  report: (progress: Progress) => void,
): Promise<"done" | "cancelled"> {
  if (ahead.length < 2 || pool.size === 0) return "done";
  const open = openRequests(memory, ahead).map((request) => ({ request, work: unknownsAsked(request) ** 2 }));
  const total = open.reduce((sum, { work }) => sum + work, 0);
  if (open.length < 2 || total < worthwhile) return "done";
  let done = 0;
  return pool.run({
    jobs: portions(open, portionsEach * (pool.size + 1)),
    own: { work: solveAll, breathe },
    onResult: (requests, solutions) => {
      for (const [i, request] of requests.entries()) adoptSolution(memory, request, solutions[i]!);
      done += requests.length;
      report({ done, of: open.length, what: "antennas solved" });
    },
  });
}

interface Weighed {
  readonly request: SolveRequest;
  readonly work: number;
}

/** Neighbours stay together: they share most of what a solve begins with. */
function portions(all: readonly Weighed[], wanted: number): SolveRequest[][] {
  const each = Math.ceil(all.length / wanted);
  const made: SolveRequest[][] = [];
  let left = 0;
  for (const { request, work } of all) {
    const last = made.at(-1);
    if (last && last.length < each && left >= work) last.push(request);
    else {
      made.push([request]);
      left = mostInPortion;
    }
    left -= work;
  }
  return made;
}
