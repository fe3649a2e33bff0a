import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { add, complex, divide, multiply, reciprocal } from "../numerics/complex";
import { quarterWaveBetween, shuntStubMatches, twoElementMatches } from "./closedMatches";

const resistance = fc.double({ min: 1, max: 1e3, noNaN: true });
const reactance = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const reactive = (x: number) => complex(0, x);

describe("matches in closed form", () => {
  it("of two elements show the wanted resistance, whichever is built", () => {
    fc.assert(
      fc.property(resistance, reactance, resistance, (re, im, wanted) => {
        const load = complex(re, im);
        const matches = twoElementMatches(load, wanted);
        expect(matches.length).toBeGreaterThan(0);
        for (const { across, susceptance, reactance: x } of matches) {
          const seen =
            across === "at the load"
              ? add(reciprocal(add(reciprocal(load), reactive(susceptance))), reactive(x))
              : reciprocal(add(reciprocal(add(load, reactive(x))), reactive(susceptance)));
          expect(Math.hypot(seen.re - wanted, seen.im)).toBeLessThan(1e-6 * Math.max(wanted, re, Math.abs(im)));
        }
      }),
    );
  });

  it("of one stub show the line's impedance where it stands", () => {
    fc.assert(
      fc.property(resistance, reactance, (re, im) => {
        for (const { distance, shorted } of shuntStubMatches(complex(re, im), 50)) {
          const tan = complex(Math.tan(2 * Math.PI * distance));
          const turned = divide(
            add(complex(re, im), multiply(complex(0, 50), tan)),
            add(complex(50), multiply(complex(-im, re), tan)),
          );
          const line = multiply(complex(50), turned);
          const stub = reciprocal(reactive(50 * Math.tan(2 * Math.PI * shorted)));
          const seen = reciprocal(add(reciprocal(line), stub));
          expect(Math.hypot(seen.re - 50, seen.im)).toBeLessThan(1e-4);
        }
      }),
    );
  });

  it("of a quarter wave lie at the geometric mean", () => {
    expect(quarterWaveBetween(50, 200)).toBeCloseTo(100, 12);
  });

  it("refuse a load that takes no power", () => {
    expect(() => twoElementMatches(complex(0, 10), 50)).toThrow(/resistances above 0/);
  });
});
