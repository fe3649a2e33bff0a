import { describe, expect, it } from "vitest";
import { complex } from "../../numerics/complex";
import { fieldOfWires } from "./mirroredWires";
import { barePairCapacitance, sleevedPairCapacitance } from "./sleevedPair";
import { webbedCapacitance } from "./webbedCapacitance";
import { webbedField } from "./webbedPair";

const opposite = { alongX: -1, alongY: 1, sign: -1 } as const;

describe("fieldOfWires", () => {
  it.each([1.05, 1.5, 3, 75])("gives two wires %d diameters apart the exact capacitance and crowding", (ratio) => {
    const field = fieldOfWires({ radius: 1e-3, x: ratio * 1e-3, y: 0, images: [opposite], shield: null });
    expect(field.potential / Math.acosh(ratio)).toBeCloseTo(1, 12);
    expect(field.crowding * Math.sqrt(1 - ratio ** -2)).toBeCloseTo(1, 12);
  });

  it("gives an eccentric wire in a shield its exact capacitance", () => {
    const [a, b, e] = [0.5e-3, 4e-3, 2e-3];
    const field = fieldOfWires({ radius: a, x: e, y: 0, images: [], shield: b });
    expect(field.potential / Math.acosh((a * a + b * b - e * e) / (2 * a * b))).toBeCloseTo(1, 12);
  });

  it("spreads the current evenly in a coaxial line", () => {
    const field = fieldOfWires({ radius: 0.5e-3, x: 0, y: 0, images: [], shield: 4e-3 });
    expect(field.crowding).toBeCloseTo(1, 12);
    expect(field.shieldHarmonics[0]).toBeCloseTo(1, 12);
    expect(field.shieldHarmonics.slice(1).reduce((sum, h) => sum + h, 0)).toBeLessThan(1e-12);
  });

  it("puts the charge on the shield that its own field there asks for", () => {
    // Thin wires of opposite charge at +-e: 2 (e/R)^m of each by Poisson's kernel, even orders cancel; squared and averaged, 8 (e/R)^2m.
    const [e, b] = [1.5e-3, 4e-3];
    const { shieldHarmonics } = fieldOfWires({ radius: 1e-7, x: e, y: 0, images: [opposite], shield: b });
    for (const m of [1, 3, 5]) expect(shieldHarmonics[m]! / (8 * (e / b) ** (2 * m))).toBeCloseTo(1, 6);
    for (const m of [0, 2, 4]) expect(shieldHarmonics[m]!).toBeLessThan(1e-12);
  });

  it("nears two wires alone as their shield grows", () => {
    const inShield = (shield: number) =>
      fieldOfWires({ radius: 0.5e-3, x: 1.5e-3, y: 0, images: [opposite], shield }).potential;
    expect(inShield(4e-3)).toBeLessThan(inShield(8e-3));
    expect(inShield(4) / Math.acosh(3)).toBeCloseTo(1, 6);
  });

  it("refuses wires that touch", () => {
    expect(() => fieldOfWires({ radius: 1e-3, x: 1e-3, y: 0, images: [opposite], shield: null })).toThrow(
      /touch nothing/,
    );
    expect(() => fieldOfWires({ radius: 1e-3, x: 3e-3, y: 0, images: [opposite], shield: 3.9e-3 })).toThrow(/shield/);
  });
});

describe("sleevedPairCapacitance", () => {
  const pair = { radius: 0.5e-3, outerRadius: 1e-3, spacing: 6e-3 };

  it("is that of bare wires where the sleeve is air, or metal", () => {
    expect(sleevedPairCapacitance(pair, complex(1)).re / barePairCapacitance(0.5e-3, 6e-3)).toBeCloseTo(1, 12);
    expect(sleevedPairCapacitance(pair, complex(1e12)).re / barePairCapacitance(1e-3, 6e-3)).toBeCloseTo(1, 9);
  });

  it("is a sleeve and air in series where the wires lie far apart", () => {
    const far = { ...pair, spacing: 1 };
    const series = Math.PI / (Math.log(2) / 2.26 + Math.log(1 / 1e-3));
    expect(sleevedPairCapacitance(far, complex(2.26)).re / series).toBeCloseTo(1, 5);
  });

  it("is analytic in the permittivity: its loss is the slope times the loss", () => {
    const at = (k: number, loss: number) => sleevedPairCapacitance(pair, complex(k, -loss));
    const slope = (at(2.27, 0).re - at(2.25, 0).re) / 0.02;
    expect(-at(2.26, 1e-4).im / (slope * 1e-4)).toBeCloseTo(1, 4);
  });

  it("takes sleeves that touch, refuses sleeves that overlap", () => {
    expect(sleevedPairCapacitance({ ...pair, spacing: 2e-3 }, complex(2.26)).re).toBeGreaterThan(3);
    expect(() => sleevedPairCapacitance({ ...pair, spacing: 1.9e-3 }, complex(2.26))).toThrow(/overlap/);
  });
});

describe("webbedField", () => {
  const noWeb = { radius: 0.5e-3, outerRadius: 1e-3, spacing: 6e-3, thickness: 0 };

  it.each([1, 2.26, 5])("meets the exact pair in sleeves where there is no web, permittivity %d", (k) => {
    const exact = sleevedPairCapacitance(noWeb, complex(k, -1e-3 * k));
    const found = webbedField(noWeb, complex(k, -1e-3 * k)).capacitance;
    expect(Math.abs(found.re / exact.re - 1)).toBeLessThan(5e-4);
    expect(Math.abs(found.im / exact.im - 1)).toBeLessThan(1e-2);
  });

  it("needs no web where it is air, and the more of it the more it holds", () => {
    const thickness = [0, 0.5e-3, 1e-3, 2e-3];
    const held = (k: number) =>
      thickness.map((t) => webbedField({ ...noWeb, thickness: t }, complex(k)).capacitance.re);
    for (const c of held(1)) expect(c / barePairCapacitance(0.5e-3, 6e-3)).toBeCloseTo(1, 3);
    expect(held(2.26)).toEqual([...held(2.26)].sort((a, b) => a - b));
  });

  it("is asked over permittivity without a further solution", () => {
    const pair = { ...noWeb, thickness: 1e-3 };
    const capacitance = webbedCapacitance(pair);
    expect(capacitance(complex(1)).re / barePairCapacitance(0.5e-3, 6e-3)).toBeCloseTo(1, 12);
    for (const k of [complex(2.26, -0.01), complex(4.5), complex(9)]) {
      const solved = webbedField(pair, k).capacitance;
      expect(Math.abs(capacitance(k).re / solved.re - 1)).toBeLessThan(3e-4);
    }
  });

  it("has the surface field that a sleeve grown a little asks for", () => {
    const k = 2.26;
    const { alongSurface, acrossSurface } = webbedField(noWeb, complex(k));
    const at = (outerRadius: number) => sleevedPairCapacitance({ ...noWeb, outerRadius }, complex(k)).re;
    const grown = (at(1.001e-3) - at(0.999e-3)) / 2e-6;
    // Energy for 2 V: (k - 1) of the field along the surface, (1 - 1/k) of that across it.
    expect((alongSurface * (k - 1) + acrossSurface * (1 - 1 / k)) / 4 / grown).toBeCloseTo(1, 2);
  });

  it("refuses a web thicker than its sleeves", () => {
    expect(() => webbedField({ ...noWeb, thickness: 3e-3 }, complex(2))).toThrow(/no thicker/);
  });
});
