import { describe, expect, it } from "vitest";
import { airyBelowZero } from "./airy";
import { add, complex, magnitude, multiply, scale, subtract } from "./complex";

describe("Airy function", () => {
  it("has its tabulated values", () => {
    // Abramowitz and Stegun 1964, table 10.11: Ai(-1), Ai'(-1); table 10.13: first zeros of Ai and Ai'.
    expect(airyBelowZero(complex(-1)).ai.re).toBeCloseTo(0.53556088, 8);
    expect(airyBelowZero(complex(-1)).slope.re).toBeCloseTo(-0.01016057, 8);
    expect(Math.abs(airyBelowZero(complex(-2.33810741)).ai.re)).toBeLessThan(1e-8);
    expect(airyBelowZero(complex(-2.33810741)).slope.re).toBeCloseTo(0.70121082, 8);
    expect(Math.abs(airyBelowZero(complex(-1.01879297)).slope.re)).toBeLessThan(1e-8);
  });
  // Differences over 1e-3 of values good to 1e-9.
  it("obeys Ai'' = z Ai on both sides of the change of series", () => {
    for (const z of [
      complex(-3, 1),
      complex(-7.5, 2),
      complex(-7.9, 0),
      complex(-8.3, 1),
      complex(-30, 4),
      complex(-90, -9),
    ]) {
      const h = 1e-3;
      const at = (n: number) => airyBelowZero(add(z, complex(n * h))).slope;
      const second = scale(add(scale(subtract(at(1), at(-1)), 8), scale(subtract(at(2), at(-2)), -1)), 1 / (12 * h));
      const { ai } = airyBelowZero(z);
      expect(magnitude(subtract(second, multiply(z, ai))) / magnitude(multiply(z, ai)), JSON.stringify(z)).toBeLessThan(
        1e-6,
      );
    }
  });
  it("is the same from both series where they meet", () => {
    for (const angle of [-1, -0.4, 0, 0.7]) {
      const [inside, outside] = [8 - 1e-9, 8 + 1e-9].map((r) =>
        airyBelowZero(complex(-r * Math.cos(angle), r * Math.sin(angle))),
      );
      expect(magnitude(subtract(inside!.ai, outside!.ai)) / magnitude(inside!.slope)).toBeLessThan(1e-8);
      expect(magnitude(subtract(inside!.slope, outside!.slope)) / magnitude(inside!.slope)).toBeLessThan(3e-8);
    }
  });
  it("refuses what its series do not reach", () => {
    expect(() => airyBelowZero(complex(1))).toThrow("60 degrees");
  });
});
