import { describe, expect, it } from "vitest";
import { skinDepth, solidWireImpedance, surfaceResistance } from "./solidWire";

const copper = 58e6;
const directResistance = (radius: number): number => 1 / (Math.PI * radius ** 2 * copper);
/** Angular frequency at which copper's skin depth is `depth` metres. */
const frequencyOfDepth = (depth: number): number => 2 / (depth ** 2 * 4e-7 * Math.PI * copper);

describe("solid round wire", () => {
  // R/Rdc and X/Rdc of (ka/2) J0(ka)/J1(ka), independent evaluation by scipy of the closed form (Schelkunoff 1934).
  it.each([
    [0.5, 1.001300729, 0.06245935576],
    [1, 1.020492389, 0.2474419983],
    [2, 1.264642906, 0.8704825956],
    [5, 2.768107601, 2.476724788],
    [10, 5.259301858, 4.989627525],
  ])("has the published ratio to direct current at radius/delta = %f", (ratio, resistance, reactance) => {
    const radius = 1e-3;
    const found = solidWireImpedance(radius, copper, 1, frequencyOfDepth(radius / ratio));
    expect(found.re / directResistance(radius) / resistance - 1).toBeCloseTo(0, 9);
    expect(found.im / directResistance(radius) / reactance - 1).toBeCloseTo(0, 9);
  });

  it("joins the direct-current resistance and the internal inductance mu/(8 pi) at the low end", () => {
    const omega = 2 * Math.PI;
    const found = solidWireImpedance(1e-3, copper, 1, omega);
    expect(found.re / directResistance(1e-3)).toBeCloseTo(1, 8);
    expect(found.im / ((omega * 4e-7 * Math.PI) / (8 * Math.PI))).toBeCloseTo(1, 8);
    const direct = solidWireImpedance(1e-3, copper, 1, 0);
    expect(direct.re / directResistance(1e-3)).toBeCloseTo(1, 14);
    expect(direct.im).toBe(0);
  });

  it("tends to the flat conductor with the first curvature term when the wire is thick", () => {
    const omega = 2 * Math.PI * 1e9;
    const flat = surfaceResistance(copper, 1, omega) / (2 * Math.PI * 5e-3);
    const curvature = skinDepth(copper, 1, omega) / (2 * 5e-3);
    expect(solidWireImpedance(5e-3, copper, 1, omega).re / flat).toBeCloseTo(1 + curvature, 6);
  });

  it("is zero for a perfect conductor and refuses what is no wire", () => {
    expect(solidWireImpedance(1e-3, Number.POSITIVE_INFINITY, 1, 1e7)).toEqual({ re: 0, im: 0 });
    expect(() => solidWireImpedance(0, copper, 1, 1e7)).toThrow(/expected the first three positive/);
  });

  it("has copper's skin depth of 66.09 um and surface resistance of 0.2609 mohm at 1 MHz", () => {
    // Source: delta = 66.09 um/sqrt(f/MHz), Rs = 0.2609 mohm sqrt(f/MHz) for 58 MS/m; common textbook values, 0.1 %.
    expect(skinDepth(copper, 1, 2e6 * Math.PI)).toBeCloseTo(66.09e-6, 8);
    expect(surfaceResistance(copper, 1, 2e6 * Math.PI)).toBeCloseTo(0.2609e-3, 7);
  });
});
