/** The workers that solve ahead for the one that answers. */
import { createSolutionMemory } from "@feedpath/engine";
import { type AheadPlace, createSolverPool, type SolverWorker } from "@feedpath/workers";
import { onEndOfLife } from "./life";

/** The worker that answers is one of them; the page itself has next to nothing to do meanwhile. */
const mostThreads = 4;
/** Squared unknowns worth handing out: some 50 ms of solving. */
const worthwhile = 1e5;

export function openSolvers(breathe: () => Promise<void>): AheadPlace {
  return {
    pool: createSolverPool({
      size: Math.min(navigator.hardwareConcurrency, mostThreads) - 1,
      startWorker,
      later: (ms, act) => void setTimeout(act, ms),
    }),
    memory: createSolutionMemory(),
    worthwhile,
    breathe,
  };
}

let count = 0;

function startWorker(): SolverWorker {
  count += 1;
  // Other windows of the page share its locks.
  const name = `solver ${count} ${crypto.getRandomValues(new Uint32Array(2)).join(" ")}`;
  const worker = new Worker(new URL("./solver.ts", import.meta.url), { type: "module", name });
  let alive = true;
  let onDeath: (why: string) => void = () => undefined;
  const end = (why: string): void => {
    if (!alive) return;
    alive = false;
    worker.terminate();
    onDeath(why);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    end(event.message ?? "");
  };
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (hear) => {
      worker.onmessage = ({ data }) => {
        if (data.kind === "ready") onEndOfLife(name, () => end("the browser ended it"));
        hear(data);
      };
    },
    onDeath: (hear) => {
      onDeath = hear;
    },
    terminate: () => {
      alive = false;
      worker.terminate();
    },
  };
}
