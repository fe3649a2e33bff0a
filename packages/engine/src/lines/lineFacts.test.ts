import { describe, expect, it } from "vitest";
import { within } from "../quantity/quantity";
import { lineFacts, lineSide } from "./lineFacts";
import type { CoaxialLine, DataSheetLine, LineEntry } from "./lineModel";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const sheet: DataSheetLine = {
  kind: "data sheet",
  side: "coaxial",
  impedance: within(50, 2),
  velocityFactor: within(0.66, 0.01),
  loss: [{ frequency: 1e7, decibelsPerMetre: within(0.02, 0.004) }],
};
/** 2.26 mm in 7.24 mm of polyethylene: its next mode begins near 13.5 GHz. */
const build: CoaxialLine = {
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: copper, outerRadius: 1.13e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: { innerRadius: 3.62e-3, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 1 },
  dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 3e-4 },
};
const entry = (model: LineEntry["model"], built: LineEntry["build"] = null): LineEntry => ({
  designation: "a line",
  model,
  build: built,
  sources: [],
});

describe("facts of a line", () => {
  it("gives a sheet's own numbers at its point, with their ranges", () => {
    const facts = lineFacts(entry(sheet), 1e7)!;
    expect(facts.loss.value).toBeCloseTo(0.02, 9);
    expect(facts.loss.low).toBeCloseTo(0.016, 9);
    expect(facts.loss.high).toBeCloseTo(0.024, 9);
    // The conductors' reactance lifts what is read at 10 MHz a little above the limit of high frequency.
    expect(Math.abs(facts.impedance.value - 50)).toBeLessThan(0.5);
    expect(facts.impedance.high - facts.impedance.low).toBeGreaterThan(3.9);
    expect(facts.velocityFactor.low).toBeLessThan(0.65);
  });

  it("has no spread where nothing is uncertain, and stops at the next mode", () => {
    const { impedance, loss } = lineFacts(entry(build), 1e8)!;
    expect([impedance.low, impedance.high]).toEqual([impedance.value, impedance.value]);
    expect([loss.low, loss.high]).toEqual([loss.value, loss.value]);
    expect(lineFacts(entry(build), 15e9)).toBeNull();
    expect(lineFacts(entry(sheet), 15e9)).not.toBeNull();
    expect(lineFacts(entry(sheet, build), 15e9)).toBeNull();
  });

  it("tells coaxial from balanced", () => {
    expect(lineSide(build)).toBe("coaxial");
    expect(lineSide({ ...sheet, side: "balanced" })).toBe("balanced");
  });
});
