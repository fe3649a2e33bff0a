import { describe, expect, it } from "vitest";
import { coronaOnsetField, gapBreakdown, paschenMinimum, paschenVoltage, uniformFieldVoltage } from "./airBreakdown";
import { airProperties, gapReference, peekReference, relativeDensity, standardAir } from "./standardAir";

const torrCentimetre = (pd: number): number => (pd * 101_325) / 760 / 100;
const seaLevel20 = { pressure: 101_325, temperature: gapReference };

describe("air with altitude", () => {
  // ISO 2533, computed by an independent script with the constants rounded to six figures.
  it.each([
    [0, 101_325, 1.034_704_147],
    [2000, 79_495.1974, 0.850_138_289],
    [5000, 54_019.88, 0.621_764_639],
  ])("at %d m", (altitude, pressure, density) => {
    expect(standardAir(altitude).pressure / pressure - 1).toBeCloseTo(0, 6);
    expect(relativeDensity(standardAir(altitude), peekReference)).toBeCloseTo(density, 6);
  });

  it("refuses heights where the law does not hold", () => {
    expect(() => standardAir(20_000)).toThrow(/11000/);
  });

  it("carries heat as tables of dry air at 300 K and 1 atmosphere have it", () => {
    // 0.0263 W/(m K), 15.9e-6 m²/s, 0.71: Incropera, table A.4 (from memory), two figures or more.
    const air = airProperties({ pressure: 101_325, temperature: 300 });
    expect(air.conductivity).toBeCloseTo(0.0263, 3);
    expect(air.kinematicViscosity * 1e6).toBeCloseTo(15.8, 0);
    expect(air.prandtl).toBeCloseTo(0.71, 1);
  });
});

describe("gaps", () => {
  // Independent script, A = 15, B = 365, gamma = 0.01.
  it.each([
    [0.5, 375.850_782_960_63],
    [1, 309.659_978_079_722],
    [76, 5034.989_401_353_16],
    [760, 35_509.333_275_249],
  ])("Paschen at %f Torr cm", (pd, volts) => {
    expect(paschenVoltage(torrCentimetre(pd)) / volts).toBeCloseTo(1, 10);
  });

  it("has no breakdown left of Paschen's pole, and takes the minimum for gaps that short", () => {
    expect(paschenVoltage(torrCentimetre(0.2))).toBe(Number.POSITIVE_INFINITY);
    expect(gapBreakdown(1e-6, seaLevel20)).toBe(paschenVoltage(paschenMinimum));
    for (const factor of [0.97, 1.03]) {
      expect(paschenVoltage(factor * paschenMinimum)).toBeGreaterThan(paschenVoltage(paschenMinimum));
    }
  });

  it("stands 3 MV/m within 5 % at 1 cm (textbooks, from memory), more a metre in shorter gaps", () => {
    expect(Math.abs(gapBreakdown(0.01, seaLevel20) / 30_000 - 1)).toBeLessThan(0.05);
    expect(gapBreakdown(1e-3, seaLevel20) / 1e-3).toBeGreaterThan(3.5e6);
    expect(uniformFieldVoltage(0.01, 1)).toBeCloseTo(30_300, -2);
  });

  it("stands less the higher it is and the hotter the air, more the wider it is", () => {
    const at = (altitude: number, gap: number) => gapBreakdown(gap, standardAir(altitude));
    for (const gap of [1e-4, 1e-3, 1e-2]) {
      expect(at(2000, gap)).toBeLessThan(at(0, gap));
      expect(at(0, 1.1 * gap)).toBeGreaterThan(at(0, gap));
      expect(gapBreakdown(gap, { ...seaLevel20, temperature: 313.15 })).toBeLessThan(gapBreakdown(gap, seaLevel20));
    }
  });
});

describe("glow on wires", () => {
  // Peek's law by an independent script, kV/cm.
  it.each([
    [0.05, 70.383_387_673_646_2, 73.699_954_098_336],
    [0.5, 42.770_348_468_229, 44.502_911_093_538_3],
    [1, 39.03, 40.548],
  ])("radius %f cm", (radius, parallel, coaxial) => {
    expect(coronaOnsetField(radius / 100, 1, "parallel wires") / 1e5).toBeCloseTo(parallel, 9);
    expect(coronaOnsetField(radius / 100, 1, "coaxial") / 1e5).toBeCloseTo(coaxial, 9);
  });

  it("starts at less field in thin air and on strands", () => {
    const plain = coronaOnsetField(1e-3, 1, "parallel wires");
    expect(coronaOnsetField(1e-3, 0.82, "parallel wires")).toBeLessThan(plain);
    expect(coronaOnsetField(1e-3, 1, "parallel wires", 0.85)).toBeCloseTo(0.85 * plain, 3);
  });
});
