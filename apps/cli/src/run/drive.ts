import type { Progress } from "@feedpath/engine";

/** Longest time without looking at the output, ms. */
const patience = 20;

const macrotask = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Runs a long computation to its end, stepping aside every 20 ms so that what it shows is written. */
export async function drive<T>(
  work: Generator<Progress, T>,
  onProgress: (progress: Progress) => void,
  now: () => number = () => performance.now(),
): Promise<T> {
  let turn = now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    onProgress(step.value);
    if (now() - turn >= patience) {
      await macrotask();
      turn = now();
    }
  }
}
