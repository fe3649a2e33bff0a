import { describe, expect, it } from "vitest";
import { complex, divide, hyperbolicCosine, hyperbolicSine, multiply } from "../numerics/complex";
import { lineFromOpenAndShort } from "./fromOpenAndShort";

describe("a line from its open and its short", () => {
  it.each([
    [complex(50, -0.5), complex(0.15, 1.2)],
    [complex(75, -1), complex(0.02, 2.9)],
    [complex(600, -20), complex(1.5, 0.4)],
  ])("is found again: %j, %j", (z0, theta) => {
    const coth = divide(hyperbolicCosine(theta), hyperbolicSine(theta));
    const found = lineFromOpenAndShort(multiply(z0, coth), divide(z0, coth));
    expect(Math.hypot(found.z0.re - z0.re, found.z0.im - z0.im)).toBeLessThan(1e-11 * z0.re);
    expect(Math.hypot(found.gammaLength.re - theta.re, found.gammaLength.im - theta.im)).toBeLessThan(1e-11);
  });

  it("refuses what no line can show", () => {
    expect(() => lineFromOpenAndShort(complex(-1, 5), complex(1, 1))).toThrow(/resistances of 0 or more/);
  });
});
