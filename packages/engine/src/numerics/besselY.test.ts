import { describe, expect, it } from "vitest";
import { besselJ0J1 } from "./besselJ";
import { bessel } from "./besselY";

describe("Bessel functions J and Y", () => {
  // Source: Abramowitz and Stegun 1964, table 9.1, ten to fifteen digits (Y0, Y1).
  it.each([
    [0.1, -1.534238651350367, -6.458951094702027],
    [1, 0.088256964215677, -0.781212821300289],
    [5, -0.308517625249034, 0.147863143391227],
    [10, 0.055671167283599, 0.249015424206954],
  ])("has the tabled Y at %f", (x, y0, y1) => {
    expect(bessel(x).y0).toBeCloseTo(y0, 13);
    expect(bessel(x).y1).toBeCloseTo(y1, 13);
  });

  it("has the J of the other route and the Wronskian 2/(pi x) in every region of its evaluation", () => {
    const other = new Float64Array(2);
    for (const x of [1e-6, 0.03, 0.5, 1.99, 2.01, 3, 7.5, 12, 24.9, 25.1, 80, 1000]) {
      const { j0, j1, y0, y1 } = bessel(x);
      besselJ0J1(x, other);
      expect(Math.abs(j0 - other[0]!)).toBeLessThan(2e-14);
      expect(Math.abs(j1 - other[1]!)).toBeLessThan(2e-14);
      expect(((j1 * y0 - j0 * y1) * Math.PI * x) / 2).toBeCloseTo(1, 12);
    }
  });

  it("refuses what is not positive", () => {
    expect(() => bessel(0)).toThrow(/expected a positive number/);
  });
});
