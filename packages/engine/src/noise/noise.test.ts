import { describe, expect, it } from "vitest";
import { externalNoise, galacticNoise, manMadeNoise, noiseClassNames, sumOfNoise } from "./externalNoise";
import {
  costOfLine,
  decibelsOf,
  factorOf,
  noiseAtReceiver,
  type ReceivingSystem,
  riseNeeded,
  riseOverDummyLoad,
  sUnitsOf,
  systemNoiseFactor,
  wonAtAntenna,
  wonInShack,
} from "./systemNoise";

describe("external noise", () => {
  // ITU-R P.372: c and d of man-made noise, 52 and 23 of galactic noise (from memory). At 1 MHz the logarithm is 0.
  it.each([
    ["city", 76.8, 27.7],
    ["residential", 72.5, 27.7],
    ["rural", 67.2, 27.7],
    ["quiet rural", 53.6, 28.6],
  ] as const)("of a %s place is c - d log f", (place, c, d) => {
    expect(manMadeNoise(place, 1e6)).toBeCloseTo(c, 12);
    expect(manMadeNoise(place, 10e6)).toBeCloseTo(c - d, 12);
    expect(manMadeNoise(place, 7.1e6)).toBeCloseTo(c - d * Math.log10(7.1), 12);
    expect(() => manMadeNoise(place, 0.2e6)).toThrow(/0.3|300000/);
  });

  it("from the galaxy is 52 - 23 log f from 10 MHz on", () => {
    expect(galacticNoise(100e6)).toBeCloseTo(6, 12);
    expect(galacticNoise(20e6)).toBeCloseTo(52 - 23 * Math.log10(20), 12);
    expect(galacticNoise(9.9e6)).toBeNull();
  });

  it("adds as powers, and lies between its deciles", () => {
    expect(sumOfNoise([10, 10])).toBeCloseTo(10 + 10 * Math.log10(2), 12);
    for (const place of noiseClassNames) {
      const { lower, total, upper, manMade, galactic } = externalNoise(place, 28e6);
      expect(total).toBeGreaterThan(Math.max(manMade, galactic!));
      expect(lower).toBeLessThan(total);
      expect(upper).toBeGreaterThan(total);
    }
    expect(externalNoise("quiet rural", 50e6).extended).toBe(true);
    expect(externalNoise("city", 50e6).extended).toBe(false);
  });
});

const system = (more: Partial<ReceivingSystem> = {}): ReceivingSystem => ({
  external: factorOf(40),
  antennaLoss: factorOf(1),
  antennaTemperature: 290,
  lineLoss: factorOf(3),
  lineTemperature: 290,
  receiver: factorOf(10),
  ...more,
});

describe("a receiving system", () => {
  it("all at the reference temperature has f = fa - 1 + lc lt fr (ITU-R P.372)", () => {
    const one = system();
    expect(systemNoiseFactor(one)).toBeCloseTo(one.external - 1 + factorOf(1 + 3 + 10), 8);
  });

  it("is that of attenuators in cascade at any temperature", () => {
    // Friis, stage by stage: an attenuator of loss l at T has noise factor 1 + (l - 1) T/T0 and gain 1/l.
    const one = system({ antennaTemperature: 310, lineTemperature: 270 });
    const stage = (loss: number, kelvin: number) => 1 + ((loss - 1) * kelvin) / 290;
    const cascade =
      stage(one.antennaLoss, 310) +
      one.antennaLoss * (stage(one.lineLoss, 270) - 1) +
      one.antennaLoss * one.lineLoss * (one.receiver - 1);
    expect(systemNoiseFactor(one)).toBeCloseTo(one.external + cascade - 1, 8);
  });

  it("pays the whole loss and more where nothing comes from outside, and nothing where the outside is loud", () => {
    // Nearly no external noise and a cold sky: the line costs its loss times what the receiver makes of it.
    expect(costOfLine(system({ external: 1e-9, antennaLoss: 1, receiver: factorOf(0.5) }))).toBeGreaterThan(3);
    expect(costOfLine(system({ external: factorOf(80) }))).toBeLessThan(1e-3);
    expect(costOfLine(system({ lineLoss: 1 }))).toBe(0);
  });

  it("costs more with more loss, a worse receiver and a quieter place", () => {
    const cost = costOfLine(system());
    expect(costOfLine(system({ lineLoss: factorOf(4) }))).toBeGreaterThan(cost);
    expect(costOfLine(system({ receiver: factorOf(15) }))).toBeGreaterThan(cost);
    expect(costOfLine(system({ external: factorOf(30) }))).toBeGreaterThan(cost);
  });

  it("wins more by a preamplifier at the antenna than by one in the shack", () => {
    const one = system({ external: factorOf(0), antennaLoss: 1, receiver: factorOf(6) });
    const preamplifier = { noise: factorOf(1), gain: factorOf(18) };
    // By hand, all at T0: without 10^0.9; in the shack lt (fp + (fr - 1)/g); at the antenna fp + (lt fr - 1)/g.
    const without = factorOf(9);
    const shack = factorOf(3) * (factorOf(1) + (factorOf(6) - 1) / factorOf(18));
    const antenna = factorOf(1) + (factorOf(9) - 1) / factorOf(18);
    expect(wonInShack(one, preamplifier)).toBeCloseTo(decibelsOf(without / shack), 10);
    expect(wonAtAntenna(one, preamplifier)).toBeCloseTo(decibelsOf(without / antenna), 10);
  });

  it("tells its cost by the rise of noise over a dummy load", () => {
    for (const external of [5, 15, 25, 35]) {
      const one = system({ external: factorOf(external) });
      // A rise just as large as needed for the cost it has.
      expect(riseNeeded(one.lineLoss, costOfLine(one))).toBeCloseTo(riseOverDummyLoad(one), 8);
    }
    expect(riseNeeded(1, 0.5)).toBe(Number.NEGATIVE_INFINITY);
  });

  it("stands at the receiver's input in dBm and S-units", () => {
    // k T0 b is -174 dBm/Hz (-173.98): a lossless system of f = 57.1 dB in 2.4 kHz.
    const one = system({ external: factorOf(57.1), antennaLoss: 1, lineLoss: 1, receiver: 1 });
    expect(noiseAtReceiver(one, 2400)).toBeCloseTo(57.1 + 10 * Math.log10(1.380649e-23 * 290 * 2400) + 30, 10);
    expect(sUnitsOf(-73, 7e6)).toBe(9);
    expect(sUnitsOf(-121, 7e6)).toBe(1);
    expect(sUnitsOf(-93, 145e6)).toBe(9);
  });
});
