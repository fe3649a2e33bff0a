/** Keeps the file's text in this browser, so that nothing is lost; a browser that refuses is survived and told. */
import type { TextHistory } from "./history";

/** What is kept: enough to go on where one stopped, steps back included. */
export interface Kept {
  readonly version: 1;
  readonly history: Pick<TextHistory, "past" | "now" | "future">;
  readonly fileName: string;
  readonly question: string;
}

/** A place to keep things, as idb-keyval offers it; tests give their own. */
export interface Store {
  readonly get: (key: string) => Promise<unknown>;
  readonly set: (key: string, value: unknown) => Promise<void>;
}

export interface Keeper {
  /** What was kept last, or null: nothing, not readable, or no answer within the patience. */
  readonly load: () => Promise<Kept | null>;
  /** Keeps soon; calls in quick succession are one. */
  readonly keepSoon: (kept: Kept) => void;
  /** Keeps what waits at once: the page is about to go. */
  readonly keepNow: () => Promise<void>;
}

const key = "feedpath bench";
const pause = 300;
const patience = 1000;

export function makeKeeper(store: Store, onRefused: (reason: string) => void, onKept: () => void): Keeper {
  let waiting: Kept | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const keepNow = async () => {
    clearTimeout(timer);
    timer = undefined;
    const kept = waiting;
    if (!kept) return;
    waiting = null;
    try {
      await store.set(key, kept);
      onKept();
    } catch (refusal) {
      onRefused(refusal instanceof Error ? refusal.message : String(refusal));
    }
  };

  return {
    load: async () => {
      try {
        const found = await Promise.race([
          store.get(key),
          new Promise<null>((done) => setTimeout(done, patience, null)),
        ]);
        return isKept(found) ? found : null;
      } catch (refusal) {
        onRefused(refusal instanceof Error ? refusal.message : String(refusal));
        return null;
      }
    },
    keepSoon: (kept) => {
      waiting = kept;
      timer ??= setTimeout(() => void keepNow(), pause);
    },
    keepNow,
  };
}

function isKept(found: unknown): found is Kept {
  if (typeof found !== "object" || found === null) return false;
  const { version, history, fileName, question } = found as Partial<Kept>;
  const texts = (list: unknown) => Array.isArray(list) && list.every((text) => typeof text === "string");
  return (
    version === 1 &&
    typeof history?.now === "string" &&
    texts(history.past) &&
    texts(history.future) &&
    typeof fileName === "string" &&
    typeof question === "string"
  );
}
