import { describe, expect, it } from "vitest";
import { magnitude } from "../numerics/complex";
import { braidAngle, coverageOfFill, fillOfCoverage, knownBraid } from "./braidGeometry";
import { braidResistance, braidSurfaceFactor, rowFactor } from "./braidSurface";
import { braidDiffusion, braidInductances } from "./braidTransfer";
import { corrugationFactor } from "./corrugation";
import { outerConductorImpedance } from "./outerConductor";
import type { Braid } from "./shield";
import { shieldedConductor } from "./shieldedConductor";
import { shieldImpedances, transferImpedance } from "./shieldImpedances";
import { strandRing } from "./strandRing";
import { tubeImpedances } from "./tubeImpedances";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const aluminium = { name: "aluminium", conductivity: 35.4e6, permeability: 1 };
const tin = { name: "tin", conductivity: 8.7e6, permeability: 1 };
const radius = 1.475e-3;
const braid: Braid = {
  coverage: null,
  carriers: 16,
  ends: 7,
  wire: 0.127e-3,
  angle: (28 * Math.PI) / 180,
  layers: 1,
};
const braided = (change: Partial<Braid> = {}) =>
  shieldedConductor({ innerRadius: radius, metal: copper, shield: { form: "braid", braid: { ...braid, ...change } } });
const hertz = (f: number): number => 2 * Math.PI * f;

describe("geometry of a braid", () => {
  it("gives fill and coverage of its wires: F = N C d/(2 pi (D + 2 d) cos a), K = 2 F - F^2", () => {
    // Arithmetic of the formula: 7 * 16 * 0.127/(2 pi * 3.204 * cos 28 degrees).
    const known = knownBraid(radius, braid)!;
    expect(known.fill).toBeCloseTo(0.80023, 4);
    expect(known.coverage).toBeCloseTo(0.9601, 4);
    expect(coverageOfFill(fillOfCoverage(0.95))).toBeCloseTo(0.95, 14);
    expect(braidAngle(radius, 0.127e-3, Math.PI * 3.204e-3)).toBeCloseTo(Math.PI / 4, 12);
  });

  it("refuses more wires than fit, with the numbers and what would fit", () => {
    expect(() => knownBraid(radius, { ...braid, ends: 9 })).toThrow(/16 carriers of 9 wires .* fill 1.029 .* 8 ends/);
    expect(() => braided({ coverage: 95 })).toThrow(/95 % is 0.95/);
    expect(() => braided({ angle: 2 })).toThrow(/expected 0 up to 90/);
    expect(() => braided({ layers: 3 })).toThrow(/1 or 2 layers/);
  });

  it("is not known while one of its wires' numbers is missing", () => {
    expect(knownBraid(radius, { ...braid, wire: null })).toBeNull();
    expect(transferImpedance(braided({ wire: null }), 1e6)).toBeNull();
  });
});

describe("resistance of a braid", () => {
  it("is that of its wires at direct current, and half of it for two layers", () => {
    const wires = braidResistance(knownBraid(radius, braid)!, copper);
    // Arithmetic: 112 wires of 0.127 mm, each longer by 1/cos(28 degrees).
    expect(wires * 112 * copper.conductivity * Math.PI * 0.0635e-3 ** 2 * Math.cos(braid.angle!)).toBeCloseTo(1, 12);
    expect(outerConductorImpedance(braided(), 0).re / wires).toBeCloseTo(1, 12);
    expect(outerConductorImpedance(braided({ layers: 2 }), 0).re / wires).toBeCloseTo(0.5, 12);
    expect(transferImpedance(braided(), 0)!.re / wires).toBeCloseTo(1, 12);
    expect(transferImpedance(braided({ layers: 2 }), 0)!.re / wires).toBeCloseTo(0.5, 12);
  });

  it("has a surface factor between a row of wires and common practice's 2 to 3", () => {
    const flat = strandRing(400, 1 / Math.sin(Math.PI / 400)).surfaceFactor;
    expect(Math.abs(rowFactor / flat - 1)).toBeLessThan(1e-3);
    // Straight wires, all covered: two layers of half the current each, 1 + 1/4 + 1/4.
    expect(braidSurfaceFactor(1, 0)).toBeCloseTo(1.5 * rowFactor, 12);
    expect(braidSurfaceFactor(0.8, 0.5)).toBeGreaterThan(1.8);
    expect(braidSurfaceFactor(0.8, 0.5)).toBeLessThan(2.5);
    expect(braidSurfaceFactor(0.8, 0.9)).toBeGreaterThan(braidSurfaceFactor(0.8, 0.4));
  });

  it("is more under tin, by no more than the tin's own surface", () => {
    const tinned = { ...braided(), coating: { metal: tin, thickness: 2e-6 } };
    const ratio = outerConductorImpedance(tinned, hertz(1e9)).re / outerConductorImpedance(braided(), hertz(1e9)).re;
    expect(ratio).toBeGreaterThan(1.05);
    expect(ratio).toBeLessThan(Math.sqrt(58 / 8.7));
  });
});

describe("transfer of shields", () => {
  it("has both models of a braid at its direct-current resistance below, and an inductance above", () => {
    const known = knownBraid(radius, braid)!;
    for (const model of ["Vance 1975", "Tyni 1976"] as const) {
      expect(transferImpedance(braided(), hertz(10), model)!.re / braidResistance(known, copper)).toBeCloseTo(1, 5);
      const high = transferImpedance(braided(), hertz(1e9), model)!;
      const { vance, tyni } = braidInductances(known);
      expect(high.im / hertz(1e9) / (model === "Vance 1975" ? vance : tyni)).toBeCloseTo(1, 9);
    }
  });

  it("falls by diffusion as x/sinh(x) of the wires", () => {
    const known = knownBraid(radius, braid)!;
    // |x/sinh x| at x = 3 (1 + j): 3 sqrt(2)/sqrt(sinh^2 3 + sin^2 3), arithmetic.
    const depth = braid.wire! / 3;
    const omega = 2 / (depth ** 2 * 4e-7 * Math.PI * copper.conductivity);
    const expected = (3 * Math.SQRT2) / Math.hypot(Math.sinh(3), Math.sin(3));
    expect(magnitude(braidDiffusion(known, copper, omega)) / braidResistance(known, copper)).toBeCloseTo(expected, 9);
  });

  it("lets less through holes at more coverage, none at full coverage", () => {
    const vance = (ends: number) => braidInductances(knownBraid(radius, { ...braid, ends })!).vance;
    expect(vance(7)).toBeLessThan(vance(6));
    const full = { ...knownBraid(radius, braid)!, coverage: 1 };
    expect(braidInductances(full).vance).toBe(0);
  });

  it("has Vance's holes join at 45 degrees and end at straight carriers", () => {
    const at = (angle: number) => braidInductances({ ...knownBraid(radius, braid)!, angle }).vance;
    const [below, above] = [at(Math.PI / 4 - 1e-4), at(Math.PI / 4 + 1e-4)];
    expect(below / above).toBeCloseTo(1, 3);
    expect(at(Math.PI / 4) / below).toBeCloseTo(1, 3);
    expect(at(1e-6) / at(0)).toBeCloseTo(1, 6);
  });

  it("takes foil for a tube of its metal, and foil with braid for both in parallel at direct current", () => {
    const foil = { metal: aluminium, thickness: 9e-6 };
    const alone = shieldedConductor({ innerRadius: radius, metal: copper, shield: { form: "foil", foil } });
    const tube = tubeImpedances(radius, 9e-6, aluminium, hertz(1e6));
    expect(transferImpedance(alone, hertz(1e6))).toEqual(tube.transfer);
    const both = shieldedConductor({
      innerRadius: radius,
      metal: copper,
      shield: { form: "foil and braid", foil, braid },
    });
    const parallel = 1 / (1 / transferImpedance(alone, 0)!.re + 1 / transferImpedance(braided(), 0)!.re);
    expect(transferImpedance(both, 0)!.re / parallel).toBeCloseTo(1, 10);
    expect(outerConductorImpedance(both, 0).re / parallel).toBeCloseTo(1, 10);
    expect(magnitude(transferImpedance(both, hertz(1e8))!)).toBeLessThan(
      0.1 * magnitude(transferImpedance(braided(), hertz(1e8))!),
    );
  });

  it("makes no power: the resistance inside and outside hold the transfer's between them", () => {
    for (const f of [0, 1e3, 1e5, 1e6, 1e7]) {
      const z = shieldImpedances(braided(), hertz(f))!;
      expect(z.transfer.re ** 2).toBeLessThanOrEqual(z.inside.re * z.outside.re * (1 + 1e-9));
    }
  });
});

describe("corrugated tube", () => {
  it("is longer by the arc of a sine", () => {
    expect(corrugationFactor(0, 1)).toBe(1);
    // pi depth = pitch: (2/pi) sqrt(2) E(1/sqrt 2) = 1.216006..., E from Abramowitz and Stegun, table 17.2.
    expect(corrugationFactor(1 / Math.PI, 1)).toBeCloseTo((2 / Math.PI) * Math.SQRT2 * 1.350643881047675, 12);
    // Shallow: 1 + (pi depth/pitch)^2/4.
    expect(corrugationFactor(0.01, 1)).toBeCloseTo(1 + (0.01 * Math.PI) ** 2 / 4, 6);
    expect(() => corrugationFactor(1, 0)).toThrow(/expected a positive pitch/);
  });
});
