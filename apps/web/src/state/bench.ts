/** The bench: acts of the person in, state out. Computing happens in the worker only. */

import type { LinesAsked } from "../worker/messages";
import { type BenchState, beginState } from "./benchState";
import { beginHistory, changeText, redo, type TextHistory, undo } from "./history";
import type { Keeper } from "./keeper";
import { knownQuestion } from "./reports";
import { makeRunner, type Runner, type RunnerParts } from "./runner";
import { makeStore, type Store } from "./store";

export interface BenchParts extends RunnerParts {
  readonly makeKeeper: (onRefused: (reason: string) => void, onKept: () => void) => Keeper;
  /** Text and file name of a first visit. */
  readonly first: { readonly text: string; readonly fileName: string };
  /** Milliseconds from any origin. */
  readonly now: () => number;
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
  /** Has the feed lines listed as asked; they come into the state. */
  readonly showLines: (lines: LinesAsked) => void;
  /** HTML of a page of the feed lines chosen. */
  readonly makeLinesPage: (lines: LinesAsked) => Promise<string>;
  readonly keepNow: () => void;
  readonly putAwayDefect: () => void;
}

/** How long a stretch that the page wrote stays marked, ms. */
const markLife = 2000;

export function makeBench(parts: BenchParts): Bench {
  const store = makeStore(beginState(beginHistory(parts.first.text), parts.first.fileName, "watts"));
  const { get, set } = store;
  const runner = makeRunner(store, parts);
  const keeper = parts.makeKeeper(
    (reason) => set({ storage: { refused: true, reason } }),
    () => get().storage.refused && set({ storage: { refused: false, reason: "" } }),
  );
  const keep = () => {
    const { history, fileName, question } = get();
    const { past, now, future } = history;
    keeper.keepSoon({ version: 1, history: { past, now, future }, fileName, question });
  };
  return {
    get,
    subscribe: store.subscribe,
    begin: async (question) => {
      const kept = await keeper.load();
      if (kept) set({ history: { ...kept.history, act: "", at: 0 }, fileName: kept.fileName });
      else set({ firstVisit: true });
      set({ question: knownQuestion(question || kept?.question || get().question, get().questions) });
      runner.runFirst();
    },
    ...fileActs(store, runner, keep, parts),
    ...questionActs(store, runner, keep),
    askAgain: runner.run,
    stop: runner.stop,
    makeSheet: runner.makeSheet,
    showLines: runner.showLines,
    makeLinesPage: runner.makeLinesPage,
    keepNow: () => void keeper.keepNow(),
    putAwayDefect: () => set({ defect: null }),
  };
}

type FileActs = Pick<Bench, "type" | "write" | "open" | "undo" | "redo">;

function fileActs(store: Store<BenchState>, runner: Runner, keep: () => void, parts: BenchParts): FileActs {
  const { get, set } = store;
  const setHistory = (history: TextHistory, change: Partial<BenchState> = {}) => {
    if (history === get().history) return;
    set({ history, firstVisit: false, marked: null, ...change });
    keep();
  };
  const changed = (text: string, act: string) => changeText(get().history, text, act, parts.now());
  return {
    type: (text) => {
      setHistory(changed(text, "typing"));
      runner.runSoon();
    },
    write: (from, to, text, act = "") => {
      const before = get().history.now;
      const marked = { from, to: from + text.length };
      setHistory(changed(before.slice(0, from) + text + before.slice(to), act), { marked });
      parts.later(markLife, () => get().marked === marked && set({ marked: null }));
      runner.run();
    },
    open: (text, fileName) => {
      setHistory(changed(text, ""));
      set({ fileName });
      keep();
      runner.run();
    },
    undo: () => {
      setHistory(undo(get().history));
      runner.run();
    },
    redo: () => {
      setHistory(redo(get().history));
      runner.run();
    },
  };
}

function questionActs(
  { get, set }: Store<BenchState>,
  runner: Runner,
  keep: () => void,
): Pick<Bench, "ask" | "setParameter"> {
  return {
    ask: (question) => {
      if (!get().questions.some(({ id }) => id === question)) return;
      if (question !== get().question) set({ question, questionBefore: get().question });
      keep();
      runner.run();
    },
    setParameter: (name, typed) => {
      const { parameters, question } = get();
      set({ parameters: { ...parameters, [question]: { ...parameters[question], [name]: typed } } });
      runner.run();
    },
  };
}
