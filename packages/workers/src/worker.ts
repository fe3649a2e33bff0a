/** What is said through a worker's door, and what the pool needs of a worker; each platform gives its own. */

export type ToWorker<Job> =
  | { readonly kind: "do"; readonly task: number; readonly job: Job }
  /** Work whose result nobody wants, so that the code is compiled before it is needed. */
  | { readonly kind: "warm up" };

export type FromWorker<Result> =
  | { readonly kind: "ready" }
  | { readonly kind: "done"; readonly task: number; readonly result: Result }
  | { readonly kind: "failed"; readonly task: number; readonly message: string };

export interface WorkerLike<Job, Result> {
  readonly post: (message: ToWorker<Job>) => void;
  readonly onMessage: (hear: (message: FromWorker<Result>) => void) => void;
  /** Heard at most once, and not after `terminate`. */
  readonly onDeath: (hear: (why: string) => void) => void;
  readonly terminate: () => void;
}

export interface Port<Job, Result> {
  readonly post: (message: FromWorker<Result>) => void;
  readonly onMessage: (hear: (message: ToWorker<Job>) => void) => void;
}

/** The worker's side: does what comes, one after another. A mistake in the work is told, and the worker lives on. */
export function serve<Job, Result>(port: Port<Job, Result>, work: (job: Job) => Result, warmUp: () => void): void {
  port.onMessage((message) => {
    if (message.kind === "warm up") return warmUp();
    const { task, job } = message;
    try {
      port.post({ kind: "done", task, result: work(job) });
    } catch (defect) {
      const told = defect instanceof Error ? (defect.stack ?? defect.message) : String(defect);
      port.post({ kind: "failed", task, message: told });
    }
  });
  port.post({ kind: "ready" });
}
