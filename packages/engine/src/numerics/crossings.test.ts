import { describe, expect, it } from "vitest";
import { leastBetween, rootBetween, signChanges } from "./crossings";

describe("roots and minima of smooth curves", () => {
  it("finds roots of straight, curved and flat functions", () => {
    expect(rootBetween((x) => 2 * x - 1, 0, 3, 1e-12)).toBeCloseTo(0.5, 10);
    expect(rootBetween((x) => Math.cos(x), 0, 3, 1e-12)).toBeCloseTo(Math.PI / 2, 10);
    expect(rootBetween((x) => (x - 0.3) ** 9, 0, 1, 1e-9)).toBeCloseTo(0.3, 2);
    expect(rootBetween((x) => Math.expm1(40 * (x - 0.9)), 0, 1, 1e-12)).toBeCloseTo(0.9, 8);
  });

  it("asks a smooth curve only a few times", () => {
    let calls = 0;
    rootBetween(
      (x) => {
        calls++;
        return x * x - 2;
      },
      1,
      2,
      1e-9,
    );
    expect(calls).toBeLessThan(14);
  });

  it("finds minima and sign changes", () => {
    expect(leastBetween((x) => (x - 1.3) ** 2, 0, 5, 1e-9)).toBeCloseTo(1.3, 6);
    expect(signChanges([-1, -2, 3, 4, -1])).toEqual([1, 3]);
  });

  it("calls once a step of a minimum, and keeps its tolerance over many steps and at either end", () => {
    for (const least of [0, 0.1, 1.3, Math.PI, 4.999, 5]) {
      let calls = 0;
      const found = leastBetween(
        (x) => {
          calls++;
          return Math.abs(x - least);
        },
        0,
        5,
        1e-9,
      );
      expect(Math.abs(found - least)).toBeLessThan(1e-9);
      // Steps of the golden section, and the one place that comes first.
      expect(calls).toBe(2 + Math.ceil(Math.log(5 / 1e-9) / Math.log((1 + Math.sqrt(5)) / 2)));
    }
  });
});
