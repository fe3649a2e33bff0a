import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { examineDataSheet, impliedImpedance, type SheetPoint } from "./fitFindings";

/** [MHz, dB/100 m]. */
const sheet = (...points: readonly (readonly [number, number])[]): SheetPoint[] =>
  points.map(([megahertz, loss]) => ({ frequency: megahertz * 1e6, decibelsPerMetre: loss / 100 }));

// MIL-DTL-17 sheet M17/74 and handbook tables, from memory.
const rg213 = [
  [10, 2.03],
  [50, 4.92],
  [100, 6.89],
  [400, 15.42],
  [1000, 26.25],
] as const;
const rg213Facts = { impedance: 50, velocityFactor: 0.659, capacitance: 101e-12, outerSize: 7.24e-3 };
const scaled = (factor: number) => sheet(...rg213.map(([f, loss]) => [f, loss * factor] as const));

describe("what physics cannot give", () => {
  it("finds nothing in a line made from the parameters, and nothing in a sheet of the standard", () => {
    const made = [1, 3, 10, 30, 100, 300, 1000].map((f) => [f, 0.6 * Math.sqrt(f) + 0.004 * f + 0.1] as const);
    expect(examineDataSheet(sheet(...made), { impedance: 50, velocityFactor: 0.66 })).toEqual([]);
    expect(examineDataSheet(sheet(...rg213), rg213Facts)).toEqual([]);
  });

  it("sees a loss that falls, is negative, or rises faster than frequency", () => {
    const falls = examineDataSheet(sheet([10, 3], [100, 2], [1000, 20]));
    expect(falls.map((f) => f.says).join(" ")).toMatch(/From 10 MHz to 100 MHz the loss falls/);
    const [negative] = examineDataSheet(sheet([10, -2], [100, 7]));
    expect(negative).toMatchObject({ about: "loss", point: 0, suggestion: expect.stringMatching(/positive/) });
    expect(
      examineDataSheet(sheet([10, 1], [100, 30]))
        .map((f) => f.says)
        .join(),
    ).toMatch(/power 1\.5 of frequency/);
  });

  it("sees a loss that grows less steep than it was", () => {
    const found = examineDataSheet(sheet([10, 2], [100, 12], [1000, 20]));
    expect(found.map((f) => f.says).join()).toMatch(/power 0\.22 of frequency, below it already as the power 0\.78/);
  });
});

describe("what a line can give", () => {
  const share = (most: number) => fc.double({ min: 0, max: most, noNaN: true });

  it("is never found fault with, whatever its conductors and insulation", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        share(0.05),
        share(2),
        fc.integer({ min: 2, max: 7 }),
        (a, b, c, n) => {
          const frequencies = [1, 5, 10, 55, 100, 400, 1000].slice(0, n);
          const points = frequencies.map((f) => [f, a * Math.sqrt(f) + b * f + c] as const);
          expect(examineDataSheet(sheet(...points))).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("is found out where one point of five is off by a hundred, whichever it is", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        share(0.01),
        fc.integer({ min: 0, max: 4 }),
        (a, b, i) => {
          const points = sheet(...[10, 50, 100, 400, 1000].map((f) => [f, a * Math.sqrt(f) + b * f] as const));
          points[i] = { ...points[i]!, decibelsPerMetre: points[i]!.decibelsPerMetre / 100 };
          expect(examineDataSheet(points)).toMatchObject([
            { point: i, suggestion: expect.stringMatching(/per metre and read per 100 m/) },
          ]);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe("slips of units", () => {
  it("tells one point out of line, and what was meant, in whatever order the points stand", () => {
    const points = [...scaled(1)].reverse();
    points[3] = { ...points[3]!, decibelsPerMetre: 100 * points[3]!.decibelsPerMetre };
    const found = examineDataSheet(points, rg213Facts);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      point: 3,
      suggestion: expect.stringMatching(/per 100 m and read per metre: 4\.92/),
    });
  });

  it.each([
    [100, /meant per 100 m and read per metre: then it is 2\.03/],
    [1 / 100, /meant per metre and read per 100 m: then it is 2\.03/],
    [0.3048, /meant per 100 ft and read per 100 m: then it is 2\.03/],
    [1 / 0.3048, /meant per 100 m and read per 100 ft: then it is 2\.03/],
    [30.48, /meant per 100 ft and read per metre/],
    [100 / 0.3048, /meant per 100 m and read per foot/],
  ])("tells a whole sheet %f times off from the size of the line", (factor, suggestion) => {
    const found = examineDataSheet(scaled(factor), rg213Facts);
    expect(found).toHaveLength(1);
    expect(found[0]!.suggestion).toMatch(suggestion);
  });

  it("tells a hundredfold slip of a usual line without its size", () => {
    expect(examineDataSheet(scaled(100))[0]?.suggestion).toMatch(/per 100 m and read per metre/);
    expect(examineDataSheet(scaled(1 / 100))[0]?.suggestion).toMatch(/per metre and read per 100 m/);
  });

  it("tells per cent taken for a factor, and capacitance per foot", () => {
    expect(examineDataSheet([], { velocityFactor: 66 })[0]?.suggestion).toMatch(/per cent\? That is 0\.66/);
    const perFoot = examineDataSheet([], { ...rg213Facts, capacitance: 30.8e-12 });
    expect(perFoot[0]?.suggestion).toMatch(/meant per foot and read per metre: 101 pF\/m/);
    expect(examineDataSheet([], { ...rg213Facts, velocityFactor: 0.85 })[0]?.says).toMatch(/give 38\.9 Ω, not 50 Ω/);
  });

  it("tells a direct-current resistance that leaves no room for skin effect", () => {
    const facts = { ...rg213Facts, loopResistance: 10 };
    expect(examineDataSheet(scaled(1), facts)[0]).toMatchObject({ about: "loop resistance" });
    expect(examineDataSheet(scaled(1), { ...facts, loopResistance: 0.01 })).toEqual([]);
  });
});

it("gives the impedance of velocity and capacitance as the US form does", () => {
  // MIL-DTL-28830E, 4.7.10.2: 101670/(VP% C), C in pF/ft, within 0.01 %.
  expect(impliedImpedance(0.659, 30.8e-12 / 0.3048) / (101670 / (65.9 * 30.8))).toBeCloseTo(1, 4);
});
