import { describe, expect, it } from "vitest";
import {
  add,
  type Complex,
  complex,
  exponential,
  magnitude,
  multiply,
  negate,
  one,
  reciprocal,
  scale,
  subtract,
} from "./complex";
import { faddeeva } from "./faddeeva";

/** Series sum of (jz)^n/Gamma(n/2 + 1), Abramowitz and Stegun 7.1.8. */
function series(z: Complex): Complex {
  const gamma = [1, Math.sqrt(Math.PI) / 2];
  let sum = complex(0);
  let power = one;
  for (let n = 0; n < 120; n++) {
    if (n >= 2) gamma[n] = (n / 2) * gamma[n - 2]!;
    sum = add(sum, scale(power, 1 / gamma[n]!));
    power = multiply(power, multiply(complex(0, 1), z));
  }
  return sum;
}

/** Laplace's continued fraction, for large z in the upper half plane. */
function fraction(z: Complex): Complex {
  let tail = z;
  for (let n = 60; n >= 1; n--) tail = subtract(z, scale(reciprocal(tail), n / 2));
  return multiply(complex(0, 1 / Math.sqrt(Math.PI)), reciprocal(tail));
}

describe("faddeeva", () => {
  it("agrees with its power series near zero, in all four quadrants", () => {
    for (const r of [0.01, 0.3, 0.7, 1.1, 1.7, 2.2]) {
      for (let i = 0; i < 16; i++) {
        const z = complex(r * Math.cos((i * Math.PI) / 8 + 0.05), r * Math.sin((i * Math.PI) / 8 + 0.05));
        const exact = series(z);
        expect(magnitude(subtract(faddeeva(z), exact)) / magnitude(exact), JSON.stringify(z)).toBeLessThan(1e-11);
      }
    }
  });
  it("agrees with the continued fraction far off", () => {
    for (const r of [7, 12, 40]) {
      for (const angle of [0.3, 0.9, 1.5, 2.1, 2.8]) {
        const z = complex(r * Math.cos(angle), r * Math.sin(angle));
        expect(magnitude(subtract(faddeeva(z), fraction(z))) / magnitude(fraction(z))).toBeLessThan(1e-13);
      }
    }
  });
  it("keeps w(-z) = 2 e^{-z^2} - w(z) and is 1 at 0", () => {
    expect(faddeeva(complex(0))).toEqual(one);
    const z = complex(0.8, 3.1);
    const other = subtract(scale(exponential(negate(multiply(z, z))), 2), faddeeva(z));
    expect(magnitude(subtract(faddeeva(negate(z)), other))).toBeLessThan(1e-12 * magnitude(other));
  });
});
