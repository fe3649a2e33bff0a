import { describe, expect, it } from "vitest";
import { type Complex, complex, divide, multiply } from "./complex";
import { divideInto, lowerRootInto } from "./complexInto";

const out = new Float64Array(4);
const result = (): Complex => complex(out[2]!, out[3]!);
const apart = (a: Complex, b: Complex): number => Math.hypot(a.re - b.re, a.im - b.im);
const numbers = [
  complex(3, 4),
  complex(-2, 1),
  complex(-5, -0.3),
  complex(0, 2),
  complex(-4),
  complex(7),
  complex(1, -9),
];

describe("complex arithmetic without allocation", () => {
  it("divides", () => {
    for (const a of numbers) {
      for (const b of numbers) {
        divideInto(out, 2, a.re, a.im, b.re, b.im);
        expect(apart(result(), divide(a, b))).toBeLessThan(1e-14);
      }
    }
  });

  it("takes the root that decays downwards", () => {
    for (const a of [...numbers, complex(0)]) {
      lowerRootInto(out, 2, a.re, a.im);
      expect(out[3]).toBeLessThanOrEqual(0);
      expect(apart(multiply(result(), result()), a)).toBeLessThan(1e-14);
    }
  });
});
