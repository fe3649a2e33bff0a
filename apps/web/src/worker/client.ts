/** The page's side of the worker: one run at a time, reports of older runs dropped, a broken worker replaced and told. */
import type { Answer } from "@feedpath/engine";
import type { FromWorker, LinesAsked, ToWorker, TypedParameters } from "./messages";

/** What the client needs of a Worker; tests give their own. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  terminate(): void;
  onmessage: ((event: { readonly data: FromWorker }) => void) | null;
  onerror: ((event: { readonly message?: string; preventDefault?(): void }) => void) | null;
}

/** `broke`: the worker died at work, and a new one stands ready. */
export type Report = FromWorker | { readonly kind: "broke"; readonly message: string };

export interface StationAsked {
  readonly text: string;
  readonly fileName: string;
  readonly measured: Readonly<Record<string, string>>;
}

export interface Asking extends StationAsked {
  readonly question: string;
  readonly parameters: TypedParameters;
}

export interface WorkerClient {
  /** Starts a run; whatever ran before is given up and its reports are dropped. */
  readonly ask: (asking: Asking) => void;
  /** Has the answer sheet made, beside a run that may be going on. */
  readonly sheet: (answer: Answer, text: string) => void;
  /** Has lines listed, or a page of them made, beside a run that may be going on. */
  readonly lines: (kind: "lines" | "linesPage", station: StationAsked, lines: LinesAsked) => void;
  readonly stop: () => void;
}

/** Time in ms after which a worker that does not hear "stop" is replaced. */
const patience = 60;

/** Reports after which the worker owes nothing for that run. */
const last = new Set<string>([
  "answered",
  "refused",
  "wrongParameters",
  "stopped",
  "defect",
  "missing",
  "sheet",
  "lines",
]);

export function startClient(
  makeWorker: () => WorkerLike,
  onReport: (report: Report) => void,
  later: (ms: number, act: () => void) => void = (ms, act) => void setTimeout(act, ms),
): WorkerClient {
  let worker: WorkerLike;
  let count = 0;
  let asked = 0;
  const owed = new Set<number>();

  let dead = false;

  const replace = () => {
    worker.terminate();
    owed.clear();
    begin();
  };

  const begin = () => {
    const fresh = makeWorker();
    worker = fresh;
    dead = false;
    fresh.onmessage = ({ data }) => {
      if (fresh !== worker) return;
      if (data.kind === "questions") return onReport(data);
      if (last.has(data.kind) || (data.kind === "read" && !data.outline)) owed.delete(data.run);
      // A browser may remember that a part did not come, so the next thing asked is asked of a new worker.
      if (data.kind === "missing") dead = true;
      const current = data.run === asked || ["sheet", "lines", "defect", "missing"].includes(data.kind);
      if (current) onReport(data);
    };
    fresh.onerror = (event) => {
      event.preventDefault?.();
      if (fresh !== worker) return;
      // A worker that dies with nothing to do may die again at once: it is replaced when it is needed.
      if (owed.size > 0) replace();
      else dead = true;
      onReport({ kind: "broke", message: event.message ?? "" });
    };
  };
  begin();

  return {
    ask: (asking) => {
      if (dead) replace();
      owed.delete(asked);
      count += 1;
      asked = count;
      owed.add(asked);
      worker.postMessage({ kind: "ask", run: asked, ...asking });
    },
    sheet: (answer, text) => {
      if (dead) replace();
      count += 1;
      owed.add(count);
      worker.postMessage({ kind: "sheet", run: count, answer, text });
    },
    lines: (kind, station, lines) => {
      if (dead) replace();
      count += 1;
      owed.add(count);
      worker.postMessage({ kind, run: count, ...station, lines });
    },
    stop: () => {
      const stopping = asked;
      if (!owed.has(stopping)) return;
      worker.postMessage({ kind: "stop", run: stopping });
      later(patience, () => {
        if (asked !== stopping || !owed.has(stopping)) return;
        replace();
        onReport({ kind: "stopped", run: stopping });
      });
    },
  };
}
