/**
 * How one worker hears of another's end: a browser says nothing when a worker runs out of memory or closes itself, but
 * it sets the locks free that the worker held. Without locks (a page that came over an open connection from another
 * machine) only errors are heard.
 */

/** Resolves once this worker holds the lock of its name; it keeps it as long as it lives. */
export function holdLife(name: string): Promise<void> {
  const { locks } = navigator;
  if (!locks) return Promise.resolve();
  return new Promise((held) => {
    void locks.request(name, () => {
      held();
      return new Promise(() => undefined);
    });
  });
}

/** Calls back when the worker that holds this name has ended; to be asked for once it holds it. */
export function onEndOfLife(name: string, ended: () => void): void {
  void navigator.locks?.request(name, ended);
}
