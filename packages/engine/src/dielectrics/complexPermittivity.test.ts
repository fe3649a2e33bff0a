import { describe, expect, it } from "vitest";
import { relativePermittivity } from "./complexPermittivity";
import type { Dielectric } from "./dielectric";
import { fitLossPoints } from "./lossPoints";

const at = (d: Dielectric, f: number) => relativePermittivity(d, 2 * Math.PI * f);
const tangent = (d: Dielectric, f: number) => -at(d, f).im / at(d, f).re;

const plain: Dielectric = { name: "plain", permittivity: 2.26, lossTangent: 3e-4 };
const stated: Dielectric = { ...plain, statedAt: 1e8 };
const lossy: Dielectric = { name: "lossy", permittivity: 3.2, lossTangent: 0.06, statedAt: 1e6 };
const pointed: Dielectric = {
  name: "pointed",
  permittivity: 3,
  lossTangent: 0.05,
  statedAt: 1e7,
  lossPoints: [
    { frequency: 1e4, lossTangent: 0.08 },
    { frequency: 1e6, lossTangent: 0.06 },
    { frequency: 1e8, lossTangent: 0.02 },
    { frequency: 1e9, lossTangent: 0.012 },
  ],
};
const polar: Dielectric = {
  name: "polar",
  permittivity: 5,
  lossTangent: 0,
  relaxations: [{ strength: 75, frequency: 17e9 }],
};
const mixed: Dielectric = { ...pointed, relaxations: [{ strength: 0.3, frequency: 3e7 }] };

/**
 * eps'(f1) - eps'(f2) from eps'' alone: Kramers-Kronig with one subtraction, principal value by the midpoint rule about both
 * poles on a common grid in ln f.
 */
function fromLoss(d: Dielectric, f1: number, f2: number): number {
  const step = Math.log(f1 / f2) / 160;
  const [low, high] = [-40_000, 40_000].map((n) => Math.round((n * 0.001) / Math.abs(step)));
  let sum = 0;
  for (let k = low!; k < high!; k++) {
    const f = f2 * Math.exp((k + 0.5) * Math.abs(step));
    const kernel = (pole: number) => 1 / (1 - (pole / f) ** 2);
    sum += -at(d, f).im * (kernel(f1) - kernel(f2));
  }
  return (2 / Math.PI) * sum * Math.abs(step);
}

describe("relativePermittivity", () => {
  it("is constant without a stated frequency, loss counted as -j", () => {
    expect(at(plain, 1e3)).toEqual({ re: 2.26, im: -2.26 * 3e-4 });
    expect(at(plain, 1e9)).toEqual(at(plain, 1e3));
  });

  it("holds the stated numbers at the stated frequency exactly and stays near them", () => {
    expect(at(stated, 1e8).re).toBeCloseTo(2.26, 13);
    expect(tangent(stated, 1e8)).toBeCloseTo(3e-4, 15);
    expect(tangent(stated, 1e4) / 3e-4).toBeCloseTo(1, 2);
    expect(at(stated, 1e4).re).toBeGreaterThan(at(stated, 1e9).re);
    expect(tangent(lossy, 1e6)).toBeCloseTo(0.06, 13);
  });

  it("meets the loss points, and the permittivity where it is stated", () => {
    expect(fitLossPoints(pointed).worstDeviation).toBeLessThan(1e-9);
    for (const p of pointed.lossPoints!) expect(tangent(pointed, p.frequency)).toBeCloseTo(p.lossTangent, 11);
    expect(at(pointed, 1e7).re).toBeCloseTo(3, 12);
  });

  it("tells by how much points miss that no passive material can follow", () => {
    const steep = {
      ...pointed,
      lossPoints: [
        { frequency: 1e6, lossTangent: 1e-5 },
        { frequency: 2e6, lossTangent: 1e-2 },
        { frequency: 4e6, lossTangent: 1e-5 },
      ],
    };
    expect(fitLossPoints(steep).worstDeviation).toBeGreaterThan(0.3);
    expect(tangent(steep, 3e6)).toBeGreaterThanOrEqual(0);
  });

  it("takes more points than bands", () => {
    const lossPoints = Array.from({ length: 15 }, (_, k) => ({ frequency: 10 ** (3 + k / 2), lossTangent: 0.01 }));
    expect(fitLossPoints({ ...pointed, lossPoints }).worstDeviation).toBeLessThan(1e-3);
  });

  it("adds Debye relaxations: half the strength at their frequency", () => {
    expect(at(polar, 17e9).re).toBeCloseTo(5 + 37.5, 10);
    expect(at(polar, 17e9).im).toBeCloseTo(-37.5, 10);
  });

  it("adds conductivity as sigma over omega eps0", () => {
    const dirty = { ...polar, relaxations: [], conductivity: 0.01 };
    // 1/(2 pi eps0) = 17.9751e9, published-values ground.complex.
    expect(at(dirty, 1e6).im).toBeCloseTo(-0.01 * 17975.1, 1);
  });

  it.each([
    ["power law", stated],
    ["lossy power law", lossy],
    ["loss points", pointed],
    ["relaxation", polar],
    ["loss points and relaxation", mixed],
  ])("is causal: %s", (_, d) => {
    for (const [f1, f2] of [
      [1e8, 1e6],
      [3e9, 1e7],
    ] as const) {
      const difference = at(d, f1).re - at(d, f2).re;
      expect(Math.abs(fromLoss(d, f1, f2) / difference - 1)).toBeLessThan(1e-6);
    }
  });

  it("refuses what no material does", () => {
    expect(() => at({ ...plain, permittivity: 0.9 }, 1e6)).toThrow(/permittivity of 1 or more/);
    expect(() => at({ ...plain, lossTangent: -1 }, 1e6)).toThrow(/negative loss/);
    expect(() => at(plain, 0)).toThrow(/above 0/);
    const falling = { ...pointed, lossPoints: [...pointed.lossPoints!].reverse() };
    expect(() => at(falling, 1e6)).toThrow(/rising/);
    const impossible = { ...pointed, lossPoints: [{ frequency: 1e6, lossTangent: 0.6 }] };
    expect(() => at(impossible, 1e6)).toThrow(/falls below 1/);
  });
});
