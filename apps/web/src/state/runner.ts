/** Runs what is asked in the worker, now or after a pause, and brings the reports into the bench's state. */
import type { Report, WorkerClient } from "../worker/client";
import type { LinesAsked } from "../worker/messages";
import type { BenchState } from "./benchState";
import { applyReport } from "./reports";
import type { Store } from "./store";

export interface RunnerParts {
  readonly startClient: (onReport: (report: Report) => void) => WorkerClient;
  /** Texts of the measured files that stand beside a station's file, by name. */
  readonly measuredBeside: (fileName: string) => Readonly<Record<string, string>>;
  /** Acts after so many ms; returns what calls it off. */
  readonly later: (ms: number, act: () => void) => () => void;
}

export interface Runner {
  readonly run: () => void;
  /** Runs after a pause without another call. */
  readonly runSoon: () => void;
  /** Runs as soon as it is known which questions there are. */
  readonly runFirst: () => void;
  readonly stop: () => void;
  readonly makeSheet: () => Promise<string>;
  readonly showLines: (lines: LinesAsked) => void;
  readonly makeLinesPage: (lines: LinesAsked) => Promise<string>;
}

/** Times in ms: pause in typing before a run; a run's length before the page says so. */
const typingPause = 250;
const patience = 150;

export function makeRunner(store: Store<BenchState>, parts: RunnerParts): Runner {
  const { get, set } = store;
  let firstWanted = false;
  let sheet: { done: (html: string) => void; failed: (why: Error) => void } | null = null;
  const client = parts.startClient((report) => {
    if (report.kind === "sheet") sheet?.done(report.html);
    if (report.kind === "defect" || report.kind === "broke") sheet?.failed(new Error(report.message));
    if (report.kind === "missing")
      sheet?.failed(new Error("a part of the page could not be loaded. Connect once more, then try again."));
    if (report.kind === "sheet") set({ missing: false });
    set(applyReport(get(), report));
    if (firstWanted) runFirst();
  });

  let cancelWait = () => {};
  let cancelSlow = () => {};
  const run = () => {
    cancelWait();
    cancelSlow();
    const { history, fileName, question, parameters } = get();
    const measured = parts.measuredBeside(fileName);
    client.ask({ text: history.now, fileName, measured, question, parameters: parameters[question] ?? {} });
    set({ running: true, askedText: history.now, stopped: false, parameterProblems: [], progress: null });
    cancelSlow = parts.later(patience, () => get().running && set({ slow: true }));
  };
  const stationAsked = () => {
    const { history, fileName } = get();
    return { text: history.now, fileName, measured: parts.measuredBeside(fileName) };
  };
  const runFirst = () => {
    firstWanted = get().questions.length === 0;
    if (!firstWanted) run();
  };

  return {
    run,
    runSoon: () => {
      cancelWait();
      cancelWait = parts.later(typingPause, run);
    },
    runFirst,
    stop: client.stop,
    showLines: (lines) => client.lines("lines", stationAsked(), lines),
    makeLinesPage: (lines) =>
      new Promise((done, failed) => {
        sheet = { done, failed };
        client.lines("linesPage", stationAsked(), lines);
      }),
    makeSheet: () =>
      new Promise((done, failed) => {
        const { shown } = get();
        if (shown?.kind !== "answer") return failed(new Error("There is no answer to hand over yet."));
        sheet = { done, failed };
        client.sheet(shown.answer, shown.text);
      }),
  };
}
