import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decibelsPerNeper, lineConstants } from "../lines/lineConstants";
import type { DataSheetLine } from "../lines/lineModel";
import { magnitude, multiply, subtract } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { lineTwoPort } from "./lineTwoPort";
import { cascade, seriesImpedance, shuntAdmittance, type TwoPort } from "./twoPort";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const sheet = (impedance: number, loss: number): DataSheetLine => ({
  kind: "data sheet",
  side: "coaxial",
  impedance: exactly(impedance),
  velocityFactor: exactly(0.7),
  loss: [{ frequency: 1e7, decibelsPerMetre: exactly(loss) }],
});

/** Lengths of up to 20 dB: beyond, the entries grow and the determinant is lost in rounding. */
const lines: fc.Arbitrary<TwoPort> = fc
  .tuple(number(20, 600), number(0.001, 0.3), number(5, 9), number(0.01, 60))
  .map(([impedance, loss, power, length]) => {
    const constants = lineConstants(sheet(impedance, loss), 10 ** power);
    return lineTwoPort(constants, Math.min(length, 20 / (constants.gamma.re * decibelsPerNeper)));
  });
const parts = fc.oneof(
  lines,
  fc.tuple(number(0, 300), number(-900, 900)).map(([re, im]) => seriesImpedance({ re, im })),
  fc.tuple(number(0, 0.05), number(-0.05, 0.05)).map(([re, im]) => shuntAdmittance({ re, im })),
);

const entries = (m: TwoPort) => [m.a, m.b, m.c, m.d];
/** Ohm that make the entries comparable. */
const weights = [1, 1 / 100, 100, 1];

describe("lines in a chain", () => {
  it("are reciprocal: a d - b c = 1, alone and together", () => {
    fc.assert(
      fc.property(parts, parts, (m, n) => {
        for (const part of [m, n, cascade(m, n)]) {
          const [ad, bc] = [multiply(part.a, part.d), multiply(part.b, part.c)];
          const determinant = subtract(ad, bc);
          expect(Math.hypot(determinant.re - 1, determinant.im)).toBeLessThan(1e-11 * (1 + magnitude(ad)));
        }
      }),
      { numRuns: 100 },
    );
  });

  it("may be taken together in any grouping", () => {
    fc.assert(
      fc.property(parts, parts, parts, (k, m, n) => {
        const [left, right] = [cascade(cascade(k, m), n), cascade(k, cascade(m, n))];
        const size = Math.max(...entries(left).map((x, i) => magnitude(x) * weights[i]!));
        entries(left).forEach((x, i) => {
          expect(magnitude(subtract(x, entries(right)[i]!)) * weights[i]!).toBeLessThan(1e-10 * size);
        });
      }),
      { numRuns: 100 },
    );
  });

  it("make one line of two lengths of it", () => {
    fc.assert(
      fc.property(number(20, 600), number(5, 8), number(0.1, 10), number(0.1, 10), (z, power, first, second) => {
        const constants = lineConstants(sheet(z, 0.02), 10 ** power);
        const [whole, both] = [
          lineTwoPort(constants, first + second),
          cascade(lineTwoPort(constants, first), lineTwoPort(constants, second)),
        ];
        entries(whole).forEach((x, i) => {
          expect(magnitude(subtract(x, entries(both)[i]!)) * weights[i]!).toBeLessThan(1e-10);
        });
      }),
      { numRuns: 100 },
    );
  });
});
