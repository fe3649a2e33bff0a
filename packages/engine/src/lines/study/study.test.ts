import { describe, expect, it } from "vitest";
import {
  conductorLoss,
  impedanceOfRatio,
  ratioOfGreatestPower,
  ratioOfGreatestVoltage,
  ratioOfImpedance,
  ratioOfLeastLoss,
  surfaceRatio,
} from "./coaxialRatios";
import { flatSpan, impedanceOfLeast } from "./optima";
import {
  impedanceOfPair,
  pairConductorLoss,
  pairFieldFactor,
  pairOfGreatestPower,
  pairOfGreatestVoltage,
  pairOfLeastLoss,
  ratioOfPair,
} from "./pairRatios";
import { amountOf, type StudyInput, studyPoint } from "./studyPoint";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const aluminium = { name: "aluminium", conductivity: 35.38e6, permeability: 1 };
const study: StudyInput = {
  dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
  breakdown: 3e6,
  inner: copper,
  outer: copper,
  shape: "coaxial",
  held: { by: "size", size: 10e-3 },
  frequency: 1e9,
};
const leastLoss = (input: StudyInput): number => impedanceOfLeast(input, (p) => p.attenuation) ?? Number.NaN;
const atOptimum = (r: number, permittivity: number) => impedanceOfRatio(ratioOfLeastLoss(r), permittivity);

describe("impedance study", () => {
  // r, D/d, Z0 in air, Z0 at permittivity 2.25. Source: stationary point of (x + r)/ln x, by mpmath; the like-conductor
  // values 3.59 and 77 ohm are those of Chipman, Transmission Lines (Schaum, 1968).
  it.each([
    [1, 3.59112147666862, 76.6548055480377, 51.1032036986918],
    [0.5, 3.18096608663894, 69.3830641931887, 46.2553761287924],
    [1.28036, 3.80550708011354, 80.1314810830955, 53.4209873887304],
    [10, 8.64402556873365, 129.322575640746, 86.2150504271641],
  ])("finds the least conductor loss at r = %f", (r, ratio, air, filled) => {
    expect(ratioOfLeastLoss(r) / ratio).toBeCloseTo(1, 9);
    expect(atOptimum(r, 1) / air).toBeCloseTo(1, 9);
    expect(atOptimum(r, 2.25) / filled).toBeCloseTo(1, 9);
  });

  it("takes copper inside aluminium as r = 1.28036", () => {
    // sqrt(58/35.38), printed to five decimals.
    expect(Math.abs(surfaceRatio({ ...study, outer: aluminium }) - 1.28036)).toBeLessThan(1e-5);
  });

  // Z0 in air, conductor loss, voltage and power over their best. Source: closed forms by mpmath; +10 % at 50 ohm: Chipman.
  it.each([
    [30, 1.4744470671707, 0.824645833718844, 0.999999760480894],
    [50, 1.1027259924129, 0.984580370170367, 0.855300161006779],
    [75, 1.0003016933694, 0.973332275110705, 0.557246305823393],
    [93, 1.02628983446172, 0.893931556320582, 0.379063353675251],
  ])("gives away at %f ohm what the books say", (impedance, loss, voltage, power) => {
    const best = (ratio: number) => studyPoint(study, impedanceOfRatio(ratio, 1));
    const here = studyPoint(study, impedance);
    const least = conductorLoss(ratioOfLeastLoss(1), 1);
    expect(conductorLoss(ratioOfImpedance(impedance, 1), 1) / least / loss).toBeCloseTo(1, 9);
    expect(here.peakVoltage / best(ratioOfGreatestVoltage).peakVoltage / voltage).toBeCloseTo(1, 9);
    expect(here.peakPower / best(ratioOfGreatestPower).peakPower / power).toBeCloseTo(1, 9);
  });

  it.each([
    [10, 50, 295186.097896387, 5433.10314549969],
    [10, 75, 192320.041644281, 5371.03400162782],
    [7.25, 50, 155157.192706788, 3938.99978048728],
  ])("reaches 3 MV/m in %f mm and %f ohm at the published power and voltage", (size, impedance, power, voltage) => {
    // Source: P = pi E^2 a^2 ln(b/a)/eta0 by mpmath.
    const found = studyPoint({ ...study, held: { by: "size", size: size / 1e3 } }, impedance);
    expect(found.peakPower / power).toBeCloseTo(1, 9);
    expect(found.peakVoltage / voltage).toBeCloseTo(1, 9);
  });

  it("has its exact optimum where the stationary equation puts it once the skin depth is small, and moves it when not", () => {
    expect(Math.abs(leastLoss({ ...study, frequency: 1e13 }) - atOptimum(1, 1))).toBeLessThan(0.05);
    const slow = { ...study, frequency: 1e5 };
    const found = leastLoss(slow);
    const at = (z: number) => studyPoint(slow, z).attenuation;
    expect(at(found)).toBeLessThan(at(found * 1.01));
    expect(at(found)).toBeLessThan(at(found * 0.99));
    expect(Math.abs(found - atOptimum(1, 1))).toBeGreaterThan(0.5);
  });

  it("knows how flat its optimum is: a tenth more loss at both ends of the span", () => {
    const best = leastLoss(study);
    const { from, to } = flatSpan(study, (p) => p.attenuation, best, 0.1);
    const least = studyPoint(study, best).attenuation;
    for (const z of [from, to]) expect(studyPoint(study, z).attenuation / least).toBeCloseTo(1.1, 5);
    expect([from < best, to > best]).toEqual([true, true]);
  });

  it("holds weight or cost instead of size", () => {
    const stuff = { inner: 8940, outer: 8940, dielectric: 920, wall: 2e-4 };
    const held = { ...study, held: { by: "weight" as const, perMetre: 0.1, stuff } };
    for (const z of [30, 50, 93]) {
      const { innerSize, outerSize } = studyPoint(held, z);
      expect(amountOf("coaxial", stuff, innerSize, outerSize)).toBeCloseTo(0.1, 12);
    }
    // Of one weight a thin inner conductor leaves more for the outer one: least loss lies above that of one size.
    expect(leastLoss(held)).toBeGreaterThan(leastLoss(study));
    expect(() => studyPoint({ ...held, held: { ...held.held, perMetre: 1e-4 } }, 50)).toThrow(/outer conductor alone/);
  });

  it("refuses conductors without a least loss", () => {
    expect(() => ratioOfLeastLoss(Number.NaN)).toThrow(/expected a finite number/);
  });
});

describe("pairs of one spacing", () => {
  const pair: StudyInput = { ...study, shape: "pair", held: { by: "size", size: 0.15 } };
  // x and Z0 in air. Source: stationary points by mpmath, with the slope taken numerically.
  it.each([
    ["loss", pairOfLeastLoss(), 2.27588399851409, 175.477576714364],
    ["voltage", pairOfGreatestVoltage(), 2.92547639812249, 208.178703665528],
    ["power", pairOfGreatestPower(), 2.14540531994319, 167.537299242317],
  ])("have their best %s where the slope is zero", (_, found, ratio, impedance) => {
    expect(found / ratio).toBeCloseTo(1, 9);
    expect(impedanceOfPair(found, 1) / impedance).toBeCloseTo(1, 9);
    expect(ratioOfPair(impedance, 1) / ratio).toBeCloseTo(1, 9);
  });

  it("agree with the exact line in the limit of small skin depth", () => {
    const at = impedanceOfPair(pairOfLeastLoss(), 1);
    expect(Math.abs(leastLoss({ ...pair, frequency: 1e11 }) / at - 1)).toBeLessThan(1e-3);
    const [a, b] = [300, 600].map((z) => studyPoint({ ...pair, frequency: 1e11 }, z));
    const closed = pairConductorLoss(a!.ratio) / pairConductorLoss(b!.ratio);
    expect(Math.abs(a!.attenuation / b!.attenuation / closed - 1)).toBeLessThan(1e-3);
  });

  it("have the field of two line charges where the wires face", () => {
    // 2 mm wires 6 mm apart at 1 V: by mpmath.
    expect(pairFieldFactor(3) / 2e-3 / 401.139080862239).toBeCloseTo(1, 9);
  });
});
