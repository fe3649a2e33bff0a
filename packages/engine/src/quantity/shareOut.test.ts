import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareOut } from "./shareOut";

describe("shares that add up", () => {
  it("keeps the first number and the small ones as they are read elsewhere", () => {
    expect(shareOut([46.4, 36.4, 15.4, 1.4, 0.4], 100, 0)).toEqual([46, 37, 16, 1, 0]);
  });

  it("adds up to the rounded whole, whatever the parts", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 8 }), (parts) => {
        const whole = parts.reduce((a, b) => a + b, 0);
        const told = shareOut(parts, whole, 0);
        expect(told.reduce((a, b) => a + b, 0)).toBeCloseTo(Math.round(whole), 9);
        expect(told.every((t) => t >= 0)).toBe(true);
      }),
    );
  });

  it("tells no part a step or more away from what it is while another can be moved", () => {
    expect(shareOut([32.3, 43.7, 22.2, 1.3, 0.48], 100, 0)).toEqual([32, 44, 23, 1, 0]);
  });
});
