/** Threads that solve what a question announces, started when there is enough of it. */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { createSolutionMemory } from "@feedpath/engine";
import { type AheadPlace, createSolverPool, type SolverWorker } from "@feedpath/workers";
import { macrotask } from "./drive";

/** The thread that computes is one of them. */
const mostThreads = 4;
/**
 * Squared unknowns in all from which on threads are started: about half a second of solving or more. A thread takes a
 * second to start, in which this one goes on.
 */
const worthwhile = 2e6;

/** Close its pool when the question is answered. */
export function openSolverThreads(
  size = Math.min(availableParallelism(), mostThreads) - 1,
  least = worthwhile,
): AheadPlace {
  return {
    pool: createSolverPool({
      size,
      startWorker: startThread,
      later: (ms, act) => void setTimeout(act, ms).unref(),
    }),
    memory: createSolutionMemory(),
    worthwhile: least,
    breathe: macrotask,
  };
}

function startThread(): SolverWorker {
  const worker = new Worker(new URL("../../bin/solve.mjs", import.meta.url));
  let ended = false;
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (hear) => void worker.on("message", hear),
    onDeath: (hear) => {
      let why = "";
      worker.on("error", (error) => {
        why = error.stack ?? error.message;
      });
      worker.once("exit", (code) => {
        if (!ended) hear(why || `exit status ${code}`);
      });
    },
    terminate: () => {
      ended = true;
      void worker.terminate();
    },
  };
}
