import { describe, expect, it } from "vitest";
import { barycentricWeights, lagrangeRow } from "./barycentric";
import { gaussLegendre } from "./gaussLegendre";

describe("Gauss-Legendre rule", () => {
  it("integrates every power up to 2n - 1", () => {
    for (const n of [1, 2, 3, 4, 6, 8, 10, 24]) {
      const { points, weights } = gaussLegendre(n);
      for (let power = 0; power < 2 * n; power++) {
        let sum = 0;
        for (let i = 0; i < n; i++) sum += weights[i]! * points[i]! ** power;
        expect(Math.abs(sum - (power % 2 === 0 ? 2 / (power + 1) : 0))).toBeLessThan(1e-14);
      }
    }
  });
});

describe("barycentric interpolation", () => {
  it("reproduces a polynomial from Gauss points", () => {
    const f = (x: number) => 1 - 2 * x + 3 * x ** 5;
    const { points } = gaussLegendre(8);
    const weights = barycentricWeights(points);
    const row = new Float64Array(8);
    for (const x of [-1, -0.31, 0.5, 1]) {
      lagrangeRow(points, weights, x, row);
      const value = row.reduce((sum, l, i) => sum + l * f(points[i]!), 0);
      expect(Math.abs(value - f(x))).toBeLessThan(1e-13);
    }
  });
});
