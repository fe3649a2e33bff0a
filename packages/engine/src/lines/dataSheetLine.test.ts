import { describe, expect, it } from "vitest";
import { solidWireImpedance } from "../conductors/solidWire";
import { exactly } from "../quantity/quantity";
import { fitLoss } from "./dataSheetLine";
import { decibelsPerNeper, lineConstants } from "./lineConstants";
import type { DataSheetLine } from "./lineModel";

const sheet = (points: readonly (readonly [number, number])[]): DataSheetLine => ({
  kind: "data sheet",
  side: "coaxial",
  impedance: exactly(50),
  velocityFactor: exactly(0.659),
  loss: points.map(([megahertz, per100m]) => ({
    frequency: megahertz * 1e6,
    decibelsPerMetre: exactly(per100m / 100),
  })),
});

const per100m = (line: DataSheetLine, megahertz: number): number =>
  lineConstants(line, megahertz * 1e6).gamma.re * decibelsPerNeper * 100;

describe("fit of loss points", () => {
  it("recovers the parameters a line was made with, exact attenuation included", () => {
    const made = { rootResistance: 1.2e-4, lossTangent: 5e-4, steadyResistance: 0.03 };
    const points = [1, 10, 100, 1000].map((megahertz) => {
      const omega = 2e6 * Math.PI * megahertz;
      const resistance = made.rootResistance * Math.sqrt(megahertz * 1e6);
      const c = 1 / (50 * 0.659 * 299_792_458);
      // |gamma|^2 and the angle of Z Y, written out: an evaluation apart from the code's.
      const zRe = resistance + made.steadyResistance;
      const zIm = resistance + omega * 2500 * c;
      const yRe = omega * c * made.lossTangent;
      const yIm = omega * c;
      const re = zRe * yRe - zIm * yIm;
      const im = zRe * yIm + zIm * yRe;
      const alpha = Math.sqrt((Math.hypot(re, im) + re) / 2);
      return [megahertz, alpha * decibelsPerNeper * 100] as const;
    });
    const fit = fitLoss(sheet(points));
    expect(fit.rootResistance / made.rootResistance).toBeCloseTo(1, 6);
    expect(fit.lossTangent / made.lossTangent).toBeCloseTo(1, 5);
    expect(fit.steadyResistance / made.steadyResistance).toBeCloseTo(1, 5);
    expect(fit.worstDeviation).toBeLessThan(1e-6);
  });

  it("meets a single point exactly and grows as the square root of frequency around it", () => {
    const line = sheet([[145, 9]]);
    expect(per100m(line, 145)).toBeCloseTo(9, 7);
    expect(per100m(line, 580) / 9).toBeCloseTo(2, 2);
  });

  it("gives insulation no negative loss where the points rise more slowly than the square root", () => {
    const fit = fitLoss(
      sheet([
        [10, 4],
        [100, 10],
        [1000, 28],
      ]),
    );
    expect(fit.lossTangent).toBe(0);
    expect(fit.rootResistance).toBeGreaterThan(0);
  });

  it("says so outside the points and where it fits badly", () => {
    const line = sheet([
      [10, 2],
      [100, 20],
      [1000, 30],
    ]);
    const outside = lineConstants(line, 1.8e6).notes.join(" ");
    expect(outside).toMatch(/1\.8 MHz.*listed points, 10 MHz to 1000 MHz/);
    expect(outside).toMatch(/follow conductor and insulation loss only within \d+ %/);
    expect(
      lineConstants(
        sheet([
          [10, 2],
          [100, 7],
        ]),
        5e7,
      ).notes,
    ).toEqual([]);
  });

  it("has an impedance that turns capacitive and a velocity that falls at low frequency, as skin effect demands", () => {
    const line = sheet([
      [10, 2],
      [100, 7],
    ]);
    const [low, high] = [lineConstants(line, 1e5), lineConstants(line, 1e9)];
    expect(low.z0.im).toBeLessThan(high.z0.im);
    expect(low.velocityFactor).toBeLessThan(high.velocityFactor);
    expect(high.velocityFactor).toBeCloseTo(0.659, 3);
  });

  it("ends at the direct-current resistance where the sheet gives one, and leaves the points as they are", () => {
    const points = [
      [10, 2.03],
      [100, 6.89],
      [1000, 26.25],
    ] as const;
    const line: DataSheetLine = { ...sheet(points), loopResistance: exactly(0.01) };
    const low = lineConstants(line, 10);
    expect(low.resistance).toBeCloseTo(0.01, 6);
    // Z0 of a line of resistance and capacitance alone: sqrt(R/(omega C)) at -45 degrees.
    const capacitance = 1 / (50 * 0.659 * 299_792_458);
    expect(low.z0.re / Math.sqrt(0.005 / (20 * Math.PI * capacitance))).toBeCloseTo(1, 2);
    expect(low.z0.im / low.z0.re).toBeCloseTo(-1, 1);
    for (const [megahertz] of points)
      expect(per100m(line, megahertz) / per100m(sheet(points), megahertz)).toBeCloseTo(1, 2);
  });

  it("meets a solid wire's resistance within a fifth at every frequency, from points at high frequency and direct current", () => {
    const at = (f: number) => solidWireImpedance(1e-3, 58e6, 1, 2 * Math.PI * f).re;
    const points = [10, 30, 100, 300, 1000].map(
      (megahertz) => [megahertz, (100 * decibelsPerNeper * at(megahertz * 1e6)) / 100] as const,
    );
    const line: DataSheetLine = { ...sheet(points), loopResistance: exactly(at(0)) };
    for (let f = 100; f < 1e7; f *= 1.5) {
      expect(Math.abs(lineConstants(line, f).resistance / at(f) - 1)).toBeLessThan(0.2);
    }
  });

  it("refuses points that are no loss", () => {
    expect(() => fitLoss(sheet([]))).toThrow(/at least one loss point/);
    expect(() => fitLoss(sheet([[10, 0]]))).toThrow(/above zero/);
  });
});
