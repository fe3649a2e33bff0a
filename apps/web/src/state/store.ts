/** A value that can be read, changed in part, and listened to. */
export interface Store<State> {
  readonly get: () => State;
  readonly set: (change: Partial<State>) => void;
  /** Returns what ends the listening. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function makeStore<State extends object>(first: State): Store<State> {
  let state = first;
  const listeners = new Set<() => void>();
  return {
    get: () => state,
    set: (change) => {
      state = { ...state, ...change };
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
