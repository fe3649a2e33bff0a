import { describe, expect, it } from "vitest";
import { ellipticIntegrals } from "./ellipticIntegrals";

describe("complete elliptic integrals", () => {
  // Abramowitz and Stegun 1964, tables 17.1 and 17.2, m = k^2.
  it.each([
    [0, 1.570796326794897, 1.570796326794897],
    [0.5, 1.854074677301372, 1.350643881047675],
    [0.9, 2.578092113348173, 1.104774732704073],
  ])("have the tabled values at m = %f", (m, first, second) => {
    const found = ellipticIntegrals(Math.sqrt(m));
    expect(found.first).toBeCloseTo(first, 13);
    expect(found.second).toBeCloseTo(second, 13);
  });

  it("obey Legendre's relation", () => {
    for (const k of [0.1, 0.6, 0.99]) {
      const [a, b] = [ellipticIntegrals(k), ellipticIntegrals(Math.sqrt(1 - k * k))];
      expect(a.second * b.first + b.second * a.first - a.first * b.first).toBeCloseTo(Math.PI / 2, 12);
    }
  });

  it("refuse a modulus of 1", () => {
    expect(() => ellipticIntegrals(1)).toThrow(/up to but not 1/);
  });
});
