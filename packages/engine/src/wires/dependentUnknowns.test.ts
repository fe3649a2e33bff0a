import { describe, expect, it } from "vitest";
import { dependentUnknowns } from "./dependentUnknowns";

const equation = (factors: Record<number, number>) => new Map(Object.entries(factors).map(([u, f]) => [Number(u), f]));

describe("dependentUnknowns", () => {
  it("gives pairs, chains of them and zeros in terms of what is left", () => {
    // x1 = x0, x2 = -x1, x3 = -x3.
    const known = dependentUnknowns([equation({ 0: 1, 1: -1 }), equation({ 1: 1, 2: 1 }), equation({ 3: 2 })]);
    expect([...known.keys()].sort()).toEqual([1, 2, 3]);
    expect(known.get(1)).toEqual(equation({ 0: 1 }));
    expect(known.get(2)).toEqual(equation({ 0: -1 }));
    expect(known.get(3)).toEqual(new Map());
  });
  it("solves for the equal currents of a star, whose last end takes all of them", () => {
    // n unknowns of n + 1 equal ends, one of which carries minus the sum of all: nothing is left but zero.
    const n = 40;
    const all = Object.fromEntries(Array.from({ length: n }, (_, u) => [u, 1]));
    const known = dependentUnknowns(Array.from({ length: n }, (_, u) => equation({ ...all, [u]: 2 })));
    expect(known.size).toBe(n);
    for (const sum of known.values()) expect(sum.size).toBe(0);
  });
  it("leaves every equation met by what it says", () => {
    const equations = [
      equation({ 0: 1, 1: -1, 4: 0.25 }),
      equation({ 1: 2, 2: -1, 3: 1 }),
      equation({ 0: 1, 3: -1, 5: 1 }),
      equation({ 2: 1, 5: 1 }),
    ];
    const known = dependentUnknowns(equations);
    const free = [0, 1, 2, 3, 4, 5].filter((u) => !known.has(u));
    expect(free).toHaveLength(2);
    const value = (u: number): number =>
      free.includes(u) ? 1 + u * u : [...known.get(u)!].reduce((sum, [of, share]) => sum + share * value(of), 0);
    for (const row of equations) {
      const left = [...row].reduce((sum, [u, factor]) => sum + factor * value(u), 0);
      expect(Math.abs(left)).toBeLessThan(1e-12);
    }
  });
});
