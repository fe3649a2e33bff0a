import { describe, expect, it } from "vitest";
import { lineConstants } from "./lineConstants";
import type { CoaxialLine } from "./lineModel";
import { coaxialCutOff, greatestFrequency, te11Root } from "./te11";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };

const coaxial = (d: number, D: number, permittivity: number): CoaxialLine => ({
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: copper, outerRadius: d / 2 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: { innerRadius: D / 2, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 1 },
  dielectric: { name: "own", permittivity, lossTangent: 0 },
});

describe("TE11 mode", () => {
  // Exact roots by mpmath, 15 digits.
  it.each([
    [1.1, 0.952739998221638],
    [2, 0.677336005136584],
    [3.591121, 0.448041713550706],
    [7, 0.252400293584189],
    [20, 0.0915783845264437],
  ])("has the exact root at D/d = %f", (ratio, root) => {
    expect(Math.abs(te11Root(ratio) / root - 1)).toBeLessThan(1e-12);
  });

  it("becomes the TE11 mode of the empty tube when the inner conductor is thin", () => {
    // First root of J1', Abramowitz and Stegun 1964, table 9.5: 1.8411837813.
    expect(te11Root(3000) * 3000).toBeCloseTo(1.8411837813, 5);
  });

  it("gives the cut-off of a 7 mm air line and of a line of RG-213/U's size", () => {
    expect(coaxialCutOff(coaxial(3.04e-3, 7e-3, 1)).frequency / 19.4043511701654e9).toBeCloseTo(1, 11);
    const found = coaxialCutOff(coaxial(2.26e-3, 7.25e-3, 2.25));
    expect(found.frequency / 13.7545372924051e9).toBeCloseTo(1, 11);
    expect(found.usualEstimate / 13.379166236907e9).toBeCloseTo(1, 11);
    expect(greatestFrequency(coaxial(2.26e-3, 7.25e-3, 2.25))).toBe(found.frequency);
  });

  it("says above the cut-off that the constants do not describe the line, and only there", () => {
    const cutOff = 13.7545372924051e9;
    const line = coaxial(2.26e-3, 7.25e-3, 2.25);
    expect(lineConstants(line, 0.999 * cutOff).notes).toEqual([]);
    expect(lineConstants(line, 1.001 * cutOff).notes.join()).toMatch(/Above 13.75 GHz/);
  });

  it("refuses a ratio that is none", () => {
    expect(() => te11Root(1)).toThrow(/expected more than 1/);
  });
});
