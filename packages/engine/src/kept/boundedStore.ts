/** Values kept by key until together they pass a bound in bytes; those longest unused go first. */
export interface BoundedStore<T> {
  readonly get: (key: string) => T | undefined;
  /** A value larger than the bound itself is not kept. */
  readonly set: (key: string, value: T) => void;
  /** Bytes held now. */
  readonly held: () => number;
}

/** `most` and what `sizeOf` says of a value are bytes; nearly is enough. */
export function createBoundedStore<T>(most: number, sizeOf: (value: T) => number): BoundedStore<T> {
  // A Map lists its keys in the order they were put in: the first is the one longest unused.
  const kept = new Map<string, { readonly value: T; readonly size: number }>();
  let held = 0;
  const drop = (key: string): void => {
    held -= kept.get(key)?.size ?? 0;
    kept.delete(key);
  };
  return {
    held: () => held,
    get(key) {
      const found = kept.get(key);
      if (!found) return undefined;
      kept.delete(key);
      kept.set(key, found);
      return found.value;
    },
    set(key, value) {
      drop(key);
      const size = sizeOf(value);
      if (size > most) return;
      for (const oldest of kept.keys()) {
        if (held + size <= most) break;
        drop(oldest);
      }
      kept.set(key, { value, size });
      held += size;
    },
  };
}
