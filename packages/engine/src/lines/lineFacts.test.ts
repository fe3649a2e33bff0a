import { describe, expect, it } from "vitest";
import { within } from "../quantity/quantity";
import { coaxialBuild, copperMetal } from "../testing/coaxialBuild";
import { type LineFacts, lineFacts, lineSide } from "./lineFacts";
import type { DataSheetLine, LineEntry } from "./lineModel";

const sheet: DataSheetLine = {
  kind: "data sheet",
  side: "coaxial",
  impedance: within(50, 2),
  velocityFactor: within(0.66, 0.01),
  loss: [{ frequency: 1e7, decibelsPerMetre: within(0.02, 0.004) }],
};
/** 2.26 mm in 7.24 mm of polyethylene: its next mode begins near 13.5 GHz. */
const build = coaxialBuild({ inner: 1.13e-3, outer: 3.62e-3 });
/** Facts where the entry is a line. */
function factsOf(line: LineEntry, frequency: number): LineFacts {
  const facts = lineFacts(line, frequency);
  if ("noLine" in facts) throw new Error(facts.noLine);
  return facts;
}
const entry = (model: LineEntry["model"], built: LineEntry["build"] = null): LineEntry => ({
  designation: "a line",
  model,
  build: built,
  sources: [],
});

describe("facts of a line", () => {
  it("gives a sheet's own numbers at its point, with their ranges", () => {
    const facts = factsOf(entry(sheet), 1e7);
    expect(facts.loss.value).toBeCloseTo(0.02, 9);
    expect(facts.loss.low).toBeCloseTo(0.016, 9);
    expect(facts.loss.high).toBeCloseTo(0.024, 9);
    // The conductors' reactance lifts what is read at 10 MHz a little above the limit of high frequency.
    expect(Math.abs(facts.impedance.value - 50)).toBeLessThan(0.5);
    expect(facts.impedance.high - facts.impedance.low).toBeGreaterThan(3.9);
    expect(facts.velocityFactor.low).toBeLessThan(0.65);
  });

  it("has no spread where nothing is uncertain, and stops at the next mode", () => {
    const { impedance, loss } = factsOf(entry(build), 1e8);
    expect([impedance.low, impedance.high]).toEqual([impedance.value, impedance.value]);
    expect([loss.low, loss.high]).toEqual([loss.value, loss.value]);
    expect(lineFacts(entry(build), 15e9)).toEqual({ noLine: expect.stringContaining("further modes") });
    expect(lineFacts(entry(sheet), 15e9)).not.toHaveProperty("noLine");
    expect(lineFacts(entry(sheet, build), 15e9)).toHaveProperty("noLine");
  });

  it("ends where a pair would radiate, and says so before", () => {
    // 2 mm wires 150 mm apart: 60 (k s)^2/601 of the power, 2 % at 145 MHz and 18 % at 432 MHz.
    const pair = entry({
      kind: "parallel-wire",
      wire: { ...build.inner, layers: [{ metal: copperMetal, outerRadius: 1e-3 }] },
      spacing: within(0.15, 0.01),
      dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
    });
    expect(factsOf(pair, 14e6).notes).toEqual([]);
    expect(factsOf(pair, 145e6).notes.join()).toContain("2.1 %");
    expect(lineFacts(pair, 432e6)).toEqual({ noLine: expect.stringContaining("radiate") });
  });

  it("tells coaxial from balanced", () => {
    expect(lineSide(build)).toBe("coaxial");
    expect(lineSide({ ...sheet, side: "balanced" })).toBe("balanced");
  });
});
