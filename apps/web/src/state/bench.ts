/** The bench's one store: acts of the person in, state out. Computing happens in the worker only. */
import type { Asking, Report, WorkerClient } from "../worker/client";
import { type BenchState, beginState } from "./benchState";
import { beginHistory, changeText, redo, type TextHistory, undo } from "./history";
import type { Keeper, Kept } from "./keeper";
import { applyReport, knownQuestion } from "./reports";

export interface BenchParts {
  readonly startClient: (onReport: (report: Report) => void) => WorkerClient;
  readonly makeKeeper: (onRefused: (reason: string) => void, onKept: () => void) => Keeper;
  /** Text and file name of a first visit. */
  readonly first: { readonly text: string; readonly fileName: string };
  /** Texts of the measured files that stand beside a station's file, by name. */
  readonly measuredBeside: (fileName: string) => Readonly<Record<string, string>>;
  readonly now: () => number;
  readonly later: (ms: number, act: () => void) => () => void;
}

export interface Bench {
  readonly get: () => BenchState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Reads what was kept, then asks. `question` is wanted from outside (a link), or "". */
  readonly begin: (question: string) => Promise<void>;
  readonly type: (text: string) => void;
  /** Writes `text` over a stretch of the file and marks it for a moment. */
  readonly write: (from: number, to: number, text: string, act?: string) => void;
  readonly open: (text: string, fileName: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** A question by its id; one that there is not is left unasked. */
  readonly ask: (question: string) => void;
  readonly setParameter: (name: string, typed: string) => void;
  readonly askAgain: () => void;
  readonly stop: () => void;
  /** HTML of the answer sheet of what is shown; rejects when it could not be made. */
  readonly makeSheet: () => Promise<string>;
  readonly keepNow: () => void;
  readonly putAwayDefect: () => void;
}

/** Times in ms: pause in typing before a run; a run's length before the page says so; a mark's life. */
const typingPause = 250;
const patience = 150;
const markLife = 2000;

export function makeBench(parts: BenchParts): Bench {
  let state = beginState(beginHistory(parts.first.text), parts.first.fileName, "watts");
  const listeners = new Set<() => void>();
  const set = (change: Partial<BenchState>) => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };

  /** The first run waits until the worker has said which questions there are. */
  let firstRun: "not wanted" | "wanted" | "done" = "not wanted";
  const runFirst = () => {
    if (firstRun !== "wanted" || state.questions.length === 0) return;
    firstRun = "done";
    run();
  };

  let sheetWanted: { done: (html: string) => void; failed: (why: Error) => void } | null = null;
  const client = parts.startClient((report) => {
    if (report.kind === "sheet") sheetWanted?.done(report.html);
    if (report.kind === "defect" || report.kind === "broke") sheetWanted?.failed(new Error(report.message));
    set(applyReport(state, report));
    if (report.kind === "questions") runFirst();
  });
  const keeper = parts.makeKeeper(
    (reason) => set({ storage: { refused: true, reason } }),
    () => state.storage.refused && set({ storage: { refused: false, reason: "" } }),
  );
  const keep = () => {
    const { past, now, future } = state.history;
    const kept: Kept = {
      version: 1,
      history: { past, now, future },
      fileName: state.fileName,
      question: state.question,
    };
    keeper.keepSoon(kept);
  };

  let cancelWait = () => {};
  let cancelSlow = () => {};
  const run = () => {
    cancelWait();
    cancelSlow();
    const asking: Asking = {
      text: state.history.now,
      fileName: state.fileName,
      measured: parts.measuredBeside(state.fileName),
      question: state.question,
      parameters: state.parameters[state.question] ?? {},
    };
    client.ask(asking);
    set({ running: true, askedText: asking.text, stopped: false, parameterProblems: [], progress: null });
    cancelSlow = parts.later(patience, () => state.running && set({ slow: true }));
  };
  const runSoon = () => {
    cancelWait();
    cancelWait = parts.later(typingPause, run);
  };

  const setHistory = (history: TextHistory, change: Partial<BenchState> = {}) => {
    if (history === state.history) return;
    set({ history, firstVisit: false, marked: null, ...change });
    keep();
  };

  return {
    get: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    begin: async (question) => {
      const kept = await keeper.load();
      if (kept) set({ history: { ...kept.history, act: "", at: 0 }, fileName: kept.fileName, question: kept.question });
      else set({ firstVisit: true });
      if (question) set({ question });
      set({ question: knownQuestion(state.question, state.questions) });
      firstRun = "wanted";
      runFirst();
    },
    type: (text) => {
      setHistory(changeText(state.history, text, "typing", parts.now()));
      runSoon();
    },
    write: (from, to, text, act = "") => {
      const before = state.history.now;
      const marked = { from, to: from + text.length };
      setHistory(changeText(state.history, before.slice(0, from) + text + before.slice(to), act, parts.now()), {
        marked,
      });
      parts.later(markLife, () => state.marked === marked && set({ marked: null }));
      run();
    },
    open: (text, fileName) => {
      setHistory(changeText(state.history, text, "", parts.now()));
      set({ fileName });
      keep();
      run();
    },
    undo: () => {
      setHistory(undo(state.history));
      run();
    },
    redo: () => {
      setHistory(redo(state.history));
      run();
    },
    ask: (question) => {
      if (!state.questions.some(({ id }) => id === question)) return;
      if (question !== state.question) set({ question, questionBefore: state.question });
      keep();
      run();
    },
    setParameter: (name, typed) => {
      const mine = { ...state.parameters[state.question], [name]: typed };
      set({ parameters: { ...state.parameters, [state.question]: mine } });
      run();
    },
    askAgain: run,
    stop: client.stop,
    makeSheet: () =>
      new Promise((done, failed) => {
        if (state.shown?.kind !== "answer") return failed(new Error("There is no answer to hand over yet."));
        sheetWanted = { done, failed };
        client.sheet(state.shown.answer, state.shown.text);
      }),
    keepNow: () => void keeper.keepNow(),
    putAwayDefect: () => set({ defect: null }),
  };
}
