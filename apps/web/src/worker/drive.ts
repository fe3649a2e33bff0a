/** Runs a question to its end in slices, so that a word from the page gets through between them. */
import type { Progress } from "@feedpath/engine";

/** Longest time in ms between two chances for a message to arrive. */
const sliceLength = 20;

export interface Driver {
  /** Milliseconds from any origin. */
  readonly now: () => number;
  /** Resolves after the messages that wait have been delivered. */
  readonly breathe: () => Promise<void>;
  readonly stopped: () => boolean;
  readonly report: (progress: Progress) => void;
  /** Does what the question announced; "cancelled" when it was told to stop meanwhile. */
  readonly solveAhead: (progress: Progress) => Promise<"done" | "cancelled">;
}

/** The generator's result, or "stopped" when the driver was told to stop; the generator is closed then. */
export async function drive<Result>(
  work: Generator<Progress, Result>,
  driver: Driver,
): Promise<{ readonly result: Result } | "stopped"> {
  let sliceEnd = driver.now() + sliceLength;
  for (;;) {
    const step = work.next();
    if (step.done) return { result: step.value };
    const announced = step.value.ahead !== undefined;
    if (!announced && driver.now() < sliceEnd) continue;
    driver.report(step.value);
    await driver.breathe();
    const stopped =
      driver.stopped() || (announced && (await driver.solveAhead(step.value)) === "cancelled") || driver.stopped();
    if (stopped) {
      work.return(undefined as never);
      return "stopped";
    }
    sliceEnd = driver.now() + sliceLength;
  }
}
