import { describe, expect, it } from "vitest";
import { chebyshevTransform, chebyshevZeros } from "./chebyshevTransform";

describe("Chebyshev coefficients", () => {
  it("of polynomials are theirs, several functions at once", () => {
    // x^5 = (10 T1 + 5 T3 + T5)/16 and x^2 = (T0 + T2)/2: Abramowitz and Stegun 1964, table 22.3.
    const n = 8;
    const values = Float64Array.from([...chebyshevZeros(n)].flatMap((x) => [x ** 5, x ** 2]));
    const expected = [0, 0.5, 10 / 16, 0, 0, 0.5, 5 / 16, 0, 0, 0, 1 / 16, 0, 0, 0, 0, 0];
    chebyshevTransform(values, n, 2).forEach((c, i) => {
      expect(Math.abs(c - expected[i]!)).toBeLessThan(1e-15);
    });
  });

  it("of one value are that value", () => {
    expect([...chebyshevTransform(Float64Array.of(3), 1, 1)]).toEqual([3]);
  });
});
