import { describe, expect, it } from "vitest";
import { createBoundedStore } from "./boundedStore";

const store = () => createBoundedStore<string>(10, (text) => text.length);

describe("a bounded store", () => {
  it("gives back what it holds, and counts it", () => {
    const kept = store();
    kept.set("a", "1234");
    kept.set("b", "123");
    expect([kept.get("a"), kept.get("b"), kept.get("c"), kept.held()]).toEqual(["1234", "123", undefined, 7]);
  });

  it("drops what was longest unused, as much as is needed", () => {
    const kept = store();
    kept.set("a", "1234");
    kept.set("b", "1234");
    kept.get("a");
    kept.set("c", "12345");
    expect([kept.get("a"), kept.get("b"), kept.get("c"), kept.held()]).toEqual(["1234", undefined, "12345", 9]);
  });

  it("does not keep what is larger than all of it, nor the value that it would replace", () => {
    const kept = store();
    kept.set("a", "1");
    kept.set("b", "1234");
    kept.set("a", "12345678901");
    expect([kept.get("a"), kept.get("b"), kept.held()]).toEqual([undefined, "1234", 4]);
  });

  it("counts a key once", () => {
    const kept = store();
    for (let i = 0; i < 5; i++) kept.set("a", "1234");
    expect(kept.held()).toBe(4);
  });
});
