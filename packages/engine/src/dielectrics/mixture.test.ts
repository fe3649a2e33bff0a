import { describe, expect, it } from "vitest";
import { complex, one } from "../numerics/complex";
import {
  bruggeman,
  depolarisation,
  foamSpread,
  gasFraction,
  gasFractionOfVelocity,
  looyenga,
  mixture,
} from "./mixture";

const polyethylene = complex(2.26, -2.26 * 3e-4);

describe("mixtures", () => {
  it.each([
    ["bodies", (a: typeof one, b: typeof one, s: number) => mixture(a, b, s, 1 / 3)],
    ["looyenga", looyenga],
    ["bruggeman", bruggeman],
  ])("%s: end at the pure materials", (_, rule) => {
    for (const other of [one, complex(80, -20)]) {
      expect(rule(polyethylene, other, 0).re).toBeCloseTo(2.26, 12);
      expect(rule(polyethylene, other, 1).re).toBeCloseTo(other.re, 10);
      expect(rule(polyethylene, other, 1).im).toBeCloseTo(other.im, 10);
    }
  });

  it("lie between the bounds, and in their order", () => {
    for (const gas of [0.1, 0.3, 0.55, 0.8]) {
      const spread = foamSpread(2.26, gas);
      const rules = [spread.cells, spread.looyenga, spread.bruggeman];
      for (const rule of rules) {
        expect(rule).toBeGreaterThanOrEqual(spread.isotropic[0]);
        expect(rule).toBeLessThanOrEqual(spread.isotropic[1] + 1e-12);
      }
      expect(spread.any[0]).toBeLessThan(spread.isotropic[0]);
      expect(spread.any[1]).toBeGreaterThan(spread.isotropic[1]);
      // Wiener: 1/(g + (1 - g)/eps) and g + (1 - g) eps.
      expect(spread.any[0]).toBeCloseTo(1 / (gas + (1 - gas) / 2.26), 12);
      expect(spread.any[1]).toBeCloseTo(gas + (1 - gas) * 2.26, 12);
    }
  });

  it("solve Bruggeman's equation", () => {
    const water = complex(80, -5);
    const e = bruggeman(polyethylene, water, 0.2);
    const term = (part: typeof one, share: number) => {
      const [nr, ni, dr, di] = [part.re - e.re, part.im - e.im, part.re + 2 * e.re, part.im + 2 * e.im];
      return (share * (nr * dr + ni * di)) / (dr * dr + di * di);
    };
    expect(term(polyethylene, 0.8) + term(water, 0.2)).toBeCloseTo(0, 12);
  });

  it("keep the loss of a foam below that of its solid", () => {
    const foam = mixture(polyethylene, one, 0.55, depolarisation.round);
    expect(-foam.im / foam.re).toBeGreaterThan(0);
    expect(-foam.im / foam.re).toBeLessThan(3e-4);
  });

  it("find the gas of a foam again", () => {
    expect(gasFraction(2.26, foamSpread(2.26, 0.55).cells)).toBeCloseTo(0.55, 12);
    expect(gasFraction(2.26, 2.26)).toBe(0);
    expect(gasFraction(2.26, 1)).toBeCloseTo(1, 12);
    // checks/values mat.foampe: velocity factor 0.82; the other rules within 0.02 of the share.
    const gas = gasFractionOfVelocity(2.26, 0.82);
    for (const rule of ["looyenga", "bruggeman"] as const) {
      expect(foamSpread(2.26, gas - 0.02)[rule]).toBeGreaterThan(1 / 0.82 ** 2);
      expect(foamSpread(2.26, gas + 0.02)[rule]).toBeLessThan(1 / 0.82 ** 2);
    }
    expect(() => gasFraction(2.26, 2.5)).toThrow(/1 to that of the solid/);
    expect(() => mixture(one, one, 1.1, 0)).toThrow(/0 to 1/);
  });
});
