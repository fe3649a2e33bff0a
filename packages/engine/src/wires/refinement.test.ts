import { describe, expect, it } from "vitest";
import { finerOf, refinedWires, refinementOf, timesFiner } from "./refinement";

const mast = refinedWires(new Map([["mast", 1.6]]), 1);

describe("refinement", () => {
  it("holds for each wire by name, and for all others alike", () => {
    expect(["mast", "radial"].map((name) => refinementOf(mast, name))).toEqual([1.6, 1]);
    expect(refinementOf(2, "mast")).toBe(2);
  });

  it("is plain data, the same text for the same refinement", () => {
    const one = refinedWires(
      new Map([
        ["b", 2],
        ["a", 1.5],
        ["c", 1],
      ]),
      1,
    );
    const other = refinedWires(
      new Map([
        ["a", 1.5],
        ["b", 2],
      ]),
      1,
    );
    expect(JSON.stringify(one)).toBe(JSON.stringify(other));
    expect(structuredClone(one)).toEqual(one);
    expect(refinedWires(new Map([["a", 1]]), 1)).toBe(1);
  });

  it("takes the finer of two wire by wire", () => {
    const both = finerOf(
      mast,
      refinedWires(
        new Map([
          ["radial", 1.3],
          ["mast", 1.2],
        ]),
        1.1,
      ),
    );
    expect(["mast", "radial", "lead"].map((name) => refinementOf(both, name))).toEqual([1.6, 1.3, 1.1]);
    expect(finerOf(1, 1.5)).toBe(1.5);
    expect(finerOf(mast, 2)).toBe(2);
  });

  it("is made finer everywhere", () => {
    expect(timesFiner(1.5, 2)).toBe(3);
    expect(["mast", "radial"].map((name) => refinementOf(timesFiner(mast, 2), name))).toEqual([3.2, 2]);
  });
});
