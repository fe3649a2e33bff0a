import { describe, expect, it } from "vitest";
import { alongLine, type PortState } from "../lines/alongLine";
import { fromImmittance, type LineConstants } from "../lines/lineConstants";
import { complex, magnitude } from "../numerics/complex";
import { greatestAlong, squaresAt, standingWave } from "./standingWave";

const frequency = 14.2e6;
const omega = 2 * Math.PI * frequency;

/** 50 ohm, velocity factor 2/3: 250 nH and 100 pF a metre. */
const line = (resistance: number, conductance: number): LineConstants =>
  fromImmittance(
    { series: complex(resistance, omega * 250e-9), shunt: complex(conductance, omega * 100e-12), notes: [] },
    frequency,
    0,
  );

const load = (re: number, im: number, watts: number): PortState => {
  const current = Math.sqrt(watts / re);
  return { voltage: complex(current * re, current * im), current: complex(current) };
};

describe("standing wave", () => {
  it("is what the telegrapher's equations give, at every place", () => {
    const constants = line(0.8, 2e-6);
    const end = load(12, -85, 100);
    const wave = standingWave(constants, 23, end);
    const along = alongLine(constants, 23, end, 50);
    along.voltage.forEach((v, i) => {
      const found = squaresAt(wave, 23 * (1 - i / 50));
      expect(Math.sqrt(found.voltage) / magnitude(v)).toBeCloseTo(1, 9);
      expect(Math.sqrt(found.current) / magnitude(along.current[i]!)).toBeCloseTo(1, 9);
    });
  });

  it("on a line without loss: largest voltage √(P Z0 S), largest current √(P S/Z0), mean square × (S + 1/S)/2", () => {
    const wave = standingWave(line(0, 0), 40, load(150, 0, 100));
    expect(greatestAlong(wave, (s) => s.voltage).value).toBeCloseTo(100 * 50 * 3, 4);
    expect(greatestAlong(wave, (s) => s.current).value).toBeCloseTo((100 * 3) / 50, 8);
    expect(squaresAt(wave, 7, 0).current).toBeCloseTo(((100 / 50) * (3 + 1 / 3)) / 2, 8);
  });

  it("finds the largest of all places, however long the line and whatever it ends in", () => {
    for (const [re, im] of [
      [5, 0],
      [900, 300],
      [50, 0],
      [20, -200],
    ] as const) {
      for (const length of [0.4, 3, 17, 160]) {
        const wave = standingWave(line(1.5, 1e-5), length, load(re, im, 100));
        const places = Array.from({ length: 40_001 }, (_, i) => (length * i) / 40_000);
        for (const of of [
          (s: { voltage: number }) => s.voltage,
          (s: { voltage: number; current: number }) => 2 * s.current + 1e-3 * s.voltage,
        ]) {
          const sampled = Math.max(...places.map((d) => of(squaresAt(wave, d))));
          const found = greatestAlong(wave, of);
          expect(found.value).toBeGreaterThanOrEqual(sampled * (1 - 1e-12));
          expect(found.value / sampled).toBeLessThan(1 + 1e-4);
          expect(found.distance).toBeLessThanOrEqual(length);
        }
      }
    }
  });
});
