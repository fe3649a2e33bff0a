/** Questions asked on several threads, as the command line does. */
import { Worker } from "node:worker_threads";
import { type Answer, findQuestion, type Refusal, type SolutionMemory, type Station } from "@feedpath/engine";
import { createSolverPool, type SolverPool, type SolverWorker, solveAhead } from "@feedpath/workers";

function startWorker(): SolverWorker {
  const worker = new Worker(new URL("./child/solverWorker.mjs", import.meta.url));
  // The bench ends when its own work ends.
  worker.unref();
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (hear) => void worker.on("message", hear),
    onDeath: (hear) => void worker.on("error", (defect) => hear(defect.message)),
    terminate: () => void worker.terminate(),
  };
}

/** Threads besides this one. */
export const startPool = (size: number): SolverPool =>
  createSolverPool({ size, startWorker, later: (ms, act) => void setTimeout(act, ms).unref() });

const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
/** The work that the command line hands out, see AheadPlace. */
const worthwhile = 100_000;

export async function askOnThreads(
  station: Station,
  id: string,
  memory: SolutionMemory,
  pool: SolverPool,
): Promise<Answer | Refusal> {
  const question = findQuestion(id);
  if (!question) throw new Error(`no question "${id}"`);
  const run = question.run(station, {}, { program: "bench", catalogue: "bench", fileHash: "", kept: memory });
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    await solveAhead(step.value, { pool, memory, worthwhile, breathe }, () => undefined);
  }
}
