import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Kept, makeKeeper, type Store } from "./keeper";

const kept = (now: string): Kept => ({
  version: 1,
  history: { past: ["before"], now, future: [] },
  fileName: "mine.yaml",
  question: "watts",
});

function memory(): Store & { readonly held: Map<string, unknown>; writes: number } {
  const held = new Map<string, unknown>();
  const store = {
    held,
    writes: 0,
    get: async (key: string) => held.get(key),
    set: async (key: string, value: unknown) => {
      store.writes += 1;
      held.set(key, structuredClone(value));
    },
  };
  return store;
}

const refusing: Store = {
  get: () => Promise.reject(new Error("storage is switched off")),
  set: () => Promise.reject(new Error("storage is full")),
};

describe("keeper", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it("keeps the last of several quick changes, once, and loads it again with its steps back", async () => {
    const store = memory();
    const keeper = makeKeeper(
      store,
      () => {},
      () => {},
    );
    for (const text of ["a", "ab", "abc"]) keeper.keepSoon(kept(text));
    expect(store.writes).toBe(0);
    await vi.advanceTimersByTimeAsync(300);
    expect(store.writes).toBe(1);
    expect(
      await makeKeeper(
        store,
        () => {},
        () => {},
      ).load(),
    ).toEqual(kept("abc"));
  });

  it("keeps at once when the page goes, and not a second time", async () => {
    const store = memory();
    const keeper = makeKeeper(
      store,
      () => {},
      () => {},
    );
    keeper.keepSoon(kept("a"));
    await keeper.keepNow();
    await vi.advanceTimersByTimeAsync(1000);
    expect(store.writes).toBe(1);
  });

  it("tells a refusal on loading and on keeping, and goes on", async () => {
    const reasons: string[] = [];
    const keeper = makeKeeper(
      refusing,
      (reason) => reasons.push(reason),
      () => {},
    );
    expect(await keeper.load()).toBeNull();
    keeper.keepSoon(kept("a"));
    await vi.advanceTimersByTimeAsync(300);
    expect(reasons).toEqual(["storage is switched off", "storage is full"]);
  });

  it("does not wait for a store that never answers", async () => {
    const keeper = makeKeeper(
      { ...memory(), get: () => new Promise(() => {}) },
      () => {},
      () => {},
    );
    const loading = keeper.load();
    await vi.advanceTimersByTimeAsync(1000);
    expect(await loading).toBeNull();
  });

  it.each([null, "text", { version: 2 }, { ...kept("a"), history: { now: 1, past: [], future: [] } }])(
    "takes nothing it does not know: %j",
    async (found) => {
      const keeper = makeKeeper(
        { ...memory(), get: async () => found },
        () => {},
        () => {},
      );
      expect(await keeper.load()).toBeNull();
    },
  );
});
