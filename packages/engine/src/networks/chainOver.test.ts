import { describe, expect, it } from "vitest";
import { lineConstantsOver } from "../lines/constantsOver";
import { lineConstants } from "../lines/lineConstants";
import type { CoaxialLine, DataSheetLine } from "../lines/lineModel";
import { exactly } from "../quantity/quantity";
import type { Part } from "../station/path";
import { chainOver, chainSize } from "./chainOver";
import { partTwoPort } from "./partTwoPort";
import { cascade, through } from "./twoPort";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const steel = { name: "steel", conductivity: 5.8e6, permeability: 200 };

/** Clad steel: its skin effect is the least smooth of all lines. */
const clad: CoaxialLine = {
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [
      { metal: steel, outerRadius: 0.479e-3 },
      { metal: copper, outerRadius: 0.512e-3 },
    ],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: { innerRadius: 2.3e-3, wall: 1e-4, metal: copper, resistanceFactor: 1 },
  dielectric: { name: "foam", permittivity: 1.49, lossTangent: 2e-4 },
};
const sheet: DataSheetLine = {
  kind: "data sheet",
  side: "coaxial",
  impedance: exactly(50),
  velocityFactor: exactly(0.66),
  loss: [
    { frequency: 1e7, decibelsPerMetre: exactly(0.02) },
    { frequency: 1e8, decibelsPerMetre: exactly(0.07) },
  ],
};
const part = { note: "", state: "in line" } as const;
const lineOf = (name: string, model: CoaxialLine | DataSheetLine, length: number): Part => ({
  ...part,
  kind: "line",
  name,
  line: { designation: name, model, build: null, sources: [] },
  length: exactly(length),
  route: [],
  condition: "dry",
  excessLoss: exactly(0.001),
  temperature: null,
});
const path: readonly Part[] = [
  lineOf("first", sheet, 28),
  { ...part, kind: "connector", name: "plugs", series: "N", count: 2, loss: exactly(0.05) },
  lineOf("second", clad, 12),
  {
    ...part,
    kind: "arrestor",
    name: "tube",
    form: "gas tube",
    capacitance: exactly(1e-12),
    sparkover: null,
    earth: null,
  },
  lineOf("third", sheet, 0.5),
];
const around = { measured: {}, reference: 50 };
const frequencies = Float64Array.from({ length: 1500 }, (_, i) => 1e5 * 1.006 ** i);

describe("constants of a line at many frequencies", () => {
  it("are those of one frequency within 1e-10, from where steel carries the current to where copper does", () => {
    const { z0, gamma } = lineConstantsOver(clad, frequencies);
    for (let i = 0; i < frequencies.length; i += 13) {
      const exact = lineConstants(clad, frequencies[i]!);
      const size = Math.hypot(exact.gamma.re, exact.gamma.im);
      expect(Math.abs(z0[2 * i]! - exact.z0.re)).toBeLessThan(1e-10 * exact.z0.re);
      expect(Math.hypot(gamma[2 * i]! - exact.gamma.re, gamma[2 * i + 1]! - exact.gamma.im)).toBeLessThan(1e-10 * size);
    }
  });

  it("are exact where they are few, or all the same", () => {
    const same = lineConstantsOver(clad, new Float64Array(100).fill(7e6));
    const exact = lineConstants(clad, 7e6);
    expect([same.z0[0], same.gamma[199]]).toEqual([exact.z0.re, exact.gamma.im]);
  });
});

describe("chain matrices at many frequencies", () => {
  it("are the cascade of the parts", () => {
    const chains = chainOver(path, frequencies, around);
    for (let i = 0; i < frequencies.length; i += 37) {
      const exact = path.reduce((sum, one) => {
        const result = partTwoPort(one, frequencies[i]!, around);
        if (result.kind !== "two-port") throw new Error(result.reason);
        return cascade(sum, result.twoPort);
      }, through);
      const found = chains.subarray(chainSize * i, chainSize * (i + 1));
      const wanted = [exact.a, exact.b, exact.c, exact.d].flatMap((z) => [z.re, z.im]);
      // The constants hold within 1e-10: so much of its turns the phase may be off.
      const turns = (1e-10 * (2 * Math.PI * frequencies[i]! * 41)) / 2e8;
      const scales = [1, 1, 50, 50, 0.02, 0.02, 1, 1].map(
        (s) => s * Math.hypot(exact.a.re, exact.a.im, exact.d.re, exact.d.im, exact.b.re / 50, exact.b.im / 50),
      );
      wanted.forEach((value, k) => {
        expect(Math.abs(found[k]! - value)).toBeLessThan((1e-9 + turns) * scales[k]!);
      });
    }
  });

  it("name the part that cannot be computed", () => {
    const broken: Part = { ...part, kind: "two-port", name: "box", file: "none.s2p" };
    expect(() => chainOver([broken], frequencies, around)).toThrow(/two-port "box" at 100000 Hz: the file "none.s2p"/);
  });
});
