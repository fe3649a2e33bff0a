import { describe, expect, it } from "vitest";
import { outerRadius, roundConductorImpedance } from "./roundConductor";
import { surfaceResistance } from "./solidWire";
import { strandedConductor } from "./strandedConductor";
import { strandRing } from "./strandRing";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const tin = { name: "tin", conductivity: 8.7e6, permeability: 1 };

describe("field round strands", () => {
  it("is that of two touching wires, which inversion gives in closed form", () => {
    // Two touching cylinders of radius 1 become two lines under 1/z: the field is 1/cosh, capacity radius pi/2,
    // and the mean square of the field over its squared mean on the circle round both 4/3 (elementary).
    const two = strandRing(2, 1);
    expect(two.effectiveRadiusRatio).toBeCloseTo(Math.PI / 4, 6);
    expect(two.surfaceFactor).toBeCloseTo(4 / 3, 5);
  });

  // Cable handbooks, from memory: 0.939, 0.957, 0.970, 0.980.
  it.each([
    [7, 0.939],
    [12, 0.957],
    [19, 0.97],
    [37, 0.98],
  ])("gives the handbooks' effective diameter of %i strands within 0.002", (count, published) => {
    expect(Math.abs(strandedConductor(count, 1e-4, copper).effectiveRadiusRatio - published)).toBeLessThan(0.002);
  });

  it("tends to a smooth cylinder's field when the strands are many", () => {
    expect(strandRing(400, 1 / Math.sin(Math.PI / 400)).effectiveRadiusRatio).toBeGreaterThan(0.999);
  });
});

describe("stranded conductor", () => {
  const seven = strandedConductor(7, 0.752e-3, copper);

  it("is as large as its strands lie: 7 x 0.0296 in is 2.26 mm, 19 x 0.0071 in 0.90 mm (MIL-DTL-17 sheets 74 and 28)", () => {
    expect(2000 * outerRadius(seven)).toBeCloseTo(2.26, 2);
    expect(2000 * outerRadius(strandedConductor(19, 0.1803e-3, copper))).toBeCloseTo(0.9, 2);
  });

  it("has at direct current the resistance of its strands' metal, a few per cent more for the lay", () => {
    const metal = 1 / (7 * Math.PI * 0.376e-3 ** 2 * copper.conductivity);
    const found = roundConductorImpedance(seven, 0).re;
    expect(found / metal).toBeGreaterThan(1);
    expect(found / metal).toBeLessThan(1.03);
    expect(roundConductorImpedance(seven, 2 * Math.PI).re / found).toBeCloseTo(1, 6);
  });

  it("has at high frequency the roughness of its surface on that of a smooth wire", () => {
    const omega = 2e9 * Math.PI;
    const smooth = surfaceResistance(copper.conductivity, 1, omega) / (2 * Math.PI * outerRadius(seven));
    // The rest is curvature, delta/(2 a).
    expect(Math.abs(roundConductorImpedance(seven, omega).re / smooth / seven.resistanceFactor - 1)).toBeLessThan(2e-3);
    expect(seven.resistanceFactor).toBeGreaterThan(1.137);
  });

  it("has at low frequency the internal inductance of its geometric mean radius, 2.177 strand radii", () => {
    // Geometric mean radius of seven strands: handbooks of power lines, from memory; mu0/(2 pi) ln of both radii.
    const internal = 2e-7 * Math.log((3 * seven.effectiveRadiusRatio) / 2.177);
    const omega = 2 * Math.PI;
    expect(Math.abs(roundConductorImpedance(seven, omega).im / omega / internal - 1)).toBeLessThan(0.05);
  });

  it("takes the strand for solid when there is one, and coats each", () => {
    const tinned = strandedConductor(7, 0.752e-3, copper, { coatings: [{ metal: tin, thickness: 2e-6 }] });
    expect(strandedConductor(1, 1e-3, copper).form).toBe("solid");
    expect(roundConductorImpedance(tinned, 0).re).toBeGreaterThan(roundConductorImpedance(seven, 0).re);
    expect(roundConductorImpedance(tinned, 6e9).re).toBeGreaterThan(roundConductorImpedance(seven, 6e9).re);
  });

  it("never has less resistance at a higher frequency", () => {
    let last = 0;
    for (let f = 1; f < 1e10; f *= 1.5) {
      const here = roundConductorImpedance(seven, 2 * Math.PI * f).re;
      expect(here).toBeGreaterThanOrEqual(last * (1 - 1e-12));
      last = here;
    }
  });

  it("refuses strands that cannot be", () => {
    expect(() => strandedConductor(2.5, 1e-3, copper)).toThrow(/whole number of strands/);
    expect(() => strandedConductor(7, 1e-5, copper, { coatings: [{ metal: tin, thickness: 1e-5 }] })).toThrow(
      /thinner/,
    );
    expect(() => strandRing(7, 1)).toThrow(/beside each other/);
  });
});
