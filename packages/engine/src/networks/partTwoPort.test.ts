import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netPower } from "../lines/alongLine";
import type { LineEntry } from "../lines/lineModel";
import { complex, magnitude, multiply, subtract } from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import type { Lumped, Part } from "../station/path";
import { isTunerAtWork, partTwoPort } from "./partTwoPort";
import { cascade, type TwoPort, towardsTransmitter, transformedImpedance } from "./twoPort";

const base = { name: "it", note: "", state: "in line" as const };
const q = exactly;
const line = (impedance: number, lossAt10: number): LineEntry => ({
  designation: "some line",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: q(impedance),
    velocityFactor: q(0.66),
    loss: [
      { frequency: 1e7, decibelsPerMetre: q(lossAt10) },
      { frequency: 1e9, decibelsPerMetre: q(lossAt10 * 12) },
    ],
  },
  build: null,
  sources: [],
});
const lumped = (parts: Partial<Lumped>): Lumped => ({
  coil: null,
  capacitor: null,
  resistor: null,
  q: q(200),
  ...parts,
});

const parts: readonly Part[] = [
  {
    ...base,
    kind: "line",
    line: line(50, 0.02),
    length: q(28),
    route: [],
    condition: "dry",
    excessLoss: q(0.015),
    temperature: null,
  },
  { ...base, kind: "stub", line: line(75, 0.02), length: q(3.1), farEnd: "open" },
  { ...base, kind: "stub", line: line(50, 0.03), length: q(3.1), farEnd: "shorted" },
  { ...base, kind: "connector", series: "N", count: 4, loss: q(0.05) },
  { ...base, kind: "meter", directivity: null },
  { ...base, kind: "filter", response: "low-pass", loss: q(0.15), file: null },
  { ...base, kind: "arrestor", form: "gas tube", capacitance: q(1.5e-12), sparkover: null, earth: null },
  { ...base, kind: "bond", earth: "rod", strap: null },
  {
    ...base,
    kind: "balun",
    form: "current",
    transmitterSide: q(50),
    antennaSide: q(200),
    choking: null,
    loss: q(0.2),
    heatLimit: null,
  },
  {
    ...base,
    kind: "transformer",
    transmitterSide: q(50),
    antennaSide: q(2450),
    loss: q(0.7),
    windingInductance: q(8e-6),
    leakageInductance: q(80e-9),
    capacitor: q(100e-12),
    sides: "joined",
    heatLimit: null,
  },
  { ...base, kind: "series", component: lumped({ coil: q(2e-6), capacitor: q(50e-12) }) },
  { ...base, kind: "across", component: lumped({ coil: q(0.6e-6), resistor: q(5000) }) },
];

const around = { measured: {}, reference: 50 };
const networkOf = (part: Part, frequency = 7.1e6): TwoPort => {
  const made = partTwoPort(part, frequency, around);
  if (made.kind !== "two-port") throw new Error(made.reason);
  return made.twoPort;
};
const loss = (network: TwoPort, r: number, x: number): number => {
  const load = { voltage: complex(r, x), current: complex(1) };
  return netPower(towardsTransmitter(network, load)) - netPower(load);
};

describe("parts as two-ports", () => {
  it.each(parts.map((part) => [part.kind, part] as const))("%s is reciprocal and makes no power", (_, part) => {
    const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(amount(1e6, 5e8), amount(1e-3, 1e4), amount(-1e4, 1e4), (frequency, r, x) => {
        const network = networkOf(part, frequency);
        const { a, b, c, d } = network;
        const determinant = subtract(multiply(a, d), multiply(b, c));
        // Rounding of the two products, which grow with the loss of a long line, bounds what the difference can be.
        const rounding = 1e-13 * (1 + magnitude(multiply(a, d)) + magnitude(multiply(b, c)));
        expect(magnitude(subtract(determinant, complex(1)))).toBeLessThan(rounding);
        expect(loss(network, r, x)).toBeGreaterThanOrEqual(-1e-12 * Math.hypot(r, x));
      }),
      { numRuns: 60 },
    );
  });

  it("adds the heat of parts in a chain to the difference of power in and out", () => {
    const chain = parts.map((part) => networkOf(part));
    let state = { voltage: complex(60, -25), current: complex(0.4, 0.1) };
    const out = netPower(state);
    let heat = 0;
    for (const network of [...chain].reverse()) {
      const before = towardsTransmitter(network, state);
      heat += netPower(before) - netPower(state);
      state = before;
    }
    const whole = towardsTransmitter(cascade(...chain), { voltage: complex(60, -25), current: complex(0.4, 0.1) });
    expect((netPower(whole) - out) / heat).toBeCloseTo(1, 10);
  });

  it("takes the stated loss of four connectors and of a transformer into the rated resistance", () => {
    const decibels = (network: TwoPort, r: number): number => 10 * Math.log10(1 + loss(network, r, 0) / r);
    expect(decibels(networkOf(parts[3]!), 50)).toBeCloseTo(0.2, 12);
    expect(decibels(networkOf(parts[8]!), 200)).toBeCloseTo(0.2, 12);
    expect(decibels(networkOf(parts[9]!), 2450)).toBeCloseTo(0.7, 12);
    expect(transformedImpedance(networkOf(parts[8]!), complex(200)).re).toBeCloseTo(50, 10);
  });

  it("turns a shorted quarter wave into next to nothing across the line", () => {
    const quarter: Part = {
      ...base,
      kind: "stub",
      line: line(50, 1e-4),
      length: q((0.66 * 299.792458) / 7.1 / 4),
      farEnd: "shorted",
    };
    const found = transformedImpedance(networkOf(quarter), complex(50));
    expect(found.re).toBeCloseTo(50, 0);
    const open = transformedImpedance(networkOf({ ...quarter, farEnd: "open" }), complex(50));
    expect(magnitude(open)).toBeLessThan(0.1);
  });

  it("passes everything through what is bypassed, a choke, and a tuner; a tuner at work is told apart", () => {
    const tuner: Part = {
      ...base,
      kind: "tuner",
      network: "L",
      capacitors: null,
      coil: null,
      output: "coaxial",
      set: "least loss",
      voltageLimit: null,
    };
    for (const part of [{ ...parts[0]!, state: "bypassed" as const }, tuner]) {
      expect(transformedImpedance(networkOf(part), complex(30, 7))).toEqual(complex(30, 7));
    }
    expect([tuner, { ...tuner, set: "bypassed" as const }, parts[0]!].map(isTunerAtWork)).toEqual([true, false, false]);
  });

  it("says why there is no two-port", () => {
    const reason = (part: Part): string => {
      const made = partTwoPort(part, 7.1e6, around);
      return made.kind === "not computed" ? made.reason : "";
    };
    expect(reason({ ...base, kind: "two-port", file: "box.s2p" })).toMatch(/box\.s2p.*could not be read/);
    expect(reason({ ...base, kind: "filter", response: "low-pass", loss: null, file: null })).toMatch(
      /neither a loss nor a file/,
    );
    expect(reason({ ...parts[1]!, length: q(0) } as Part)).toMatch(/length of 0 m/);
    expect(reason({ ...parts[0]!, length: q(1e9) } as Part)).toMatch(/more than 2000 dB/);
    expect(reason({ ...parts[1]!, length: q(1e9) } as Part)).toBe("");
  });
});
