import type { Progress } from "@feedpath/engine";
import { type AheadPlace, solveAhead } from "@feedpath/workers";

/** Longest time without looking at the output, ms. */
const patience = 20;

export const macrotask = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/**
 * Runs a long computation to its end, stepping aside every 20 ms so that what it shows is written. What it announces is
 * solved ahead in `place`.
 */
export async function drive<T>(
  work: Generator<Progress, T>,
  onProgress: (progress: Progress) => void,
  place: AheadPlace | null = null,
  now: () => number = () => performance.now(),
): Promise<T> {
  let turn = now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    onProgress(step.value);
    if (place && step.value.ahead) await solveAhead(step.value, place, onProgress);
    if (now() - turn >= patience) {
      await macrotask();
      turn = now();
    }
  }
}
