/** The file's text with every step back and forth. Pure: each act gives a new history. */

export interface TextHistory {
  readonly past: readonly string[];
  readonly now: string;
  readonly future: readonly string[];
  /** What made the last step: steps of the same act in quick succession are one. */
  readonly act: string;
  /** Time of the last step, ms from any origin. */
  readonly at: number;
}

const mostSteps = 200;
/** Characters kept in all steps back together. */
const mostText = 2_000_000;
/** Typing within this time in ms belongs to the step before. */
const oneStroke = 800;

export const beginHistory = (text: string): TextHistory => ({ past: [], now: text, future: [], act: "", at: 0 });

/** A change of the text. `act` names what was done ("typing", "mend", "example"); only typing-like acts run together. */
export function changeText(history: TextHistory, text: string, act: string, at: number): TextHistory {
  if (text === history.now) return history;
  const sameStroke = act !== "" && act === history.act && at - history.at < oneStroke && history.past.length > 0;
  const past = sameStroke ? history.past : withinLimits([...history.past, history.now]);
  return { past, now: text, future: [], act, at };
}

export function undo(history: TextHistory): TextHistory {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    now: before,
    future: [history.now, ...history.future],
    act: "",
    at: 0,
  };
}

export function redo(history: TextHistory): TextHistory {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.now], now: next, future, act: "", at: 0 };
}

function withinLimits(past: readonly string[]): readonly string[] {
  let from = Math.max(0, past.length - mostSteps);
  let size = past.slice(from).reduce((sum, text) => sum + text.length, 0);
  while (size > mostText && from < past.length - 1) {
    size -= past[from]?.length ?? 0;
    from += 1;
  }
  return past.slice(from);
}
