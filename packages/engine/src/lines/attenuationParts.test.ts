import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactly } from "../quantity/quantity";
import { attenuationParts } from "./attenuationParts";
import { decibelsPerNeper, lineConstants } from "./lineConstants";
import type { CoaxialLine, LineModel, ParallelWireLine, RoundConductor } from "./lineModel";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const wire = (radius: number): RoundConductor => ({
  form: "solid",
  layers: [{ metal: copper, outerRadius: radius }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
});
const coaxial = (radius: number, ratio: number, lossTangent: number): CoaxialLine => ({
  kind: "coaxial",
  inner: wire(radius),
  outer: { innerRadius: ratio * radius, wall: 1e-4, metal: copper, resistanceFactor: 2 },
  dielectric: { name: "own", permittivity: 2.26, lossTangent },
});
const pair: ParallelWireLine = {
  kind: "parallel-wire",
  wire: wire(1e-3),
  spacing: exactly(0.1),
  dielectric: { name: "air", permittivity: 1, lossTangent: 1e-5 },
};
const sheet: LineModel = {
  kind: "data sheet",
  side: "coaxial",
  impedance: exactly(50),
  velocityFactor: exactly(0.66),
  loss: [10, 100, 1000].map((f) => ({
    frequency: f * 1e6,
    decibelsPerMetre: exactly(0.02 * Math.sqrt(f / 10) + f / 1e4),
  })),
};

function expectSum(model: LineModel, frequency: number, temperature: number): void {
  const options = { temperature, excessDecibelsPerMetre: 0.01 };
  const parts = attenuationParts(model, frequency, options);
  const whole = lineConstants(model, frequency, options).gamma.re;
  expect(Math.abs((parts.conductors + parts.dielectric + parts.excess) / whole - 1)).toBeLessThan(1e-12);
  if (parts.inner !== null) expect(parts.inner + (parts.outer ?? 0)).toBeCloseTo(parts.conductors, 14);
}

describe("parts of the attenuation", () => {
  it("add up to the attenuation for lines of every kind, from 1 Hz to 10 GHz, warm and cold", () => {
    const frequencies = fc.double({ min: 0, max: 10, noNaN: true }).map((x) => 10 ** x);
    const ratios = fc.double({ min: 1.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(frequencies, ratios, fc.double({ min: 0, max: 0.1, noNaN: true }), (frequency, ratio, loss) => {
        expectSum(coaxial(1e-3, ratio, loss), frequency, 320);
        expectSum(pair, frequency, 280);
        expectSum(sheet, frequency, 350);
      }),
      { numRuns: 100 },
    );
  });

  it("share the conductors' loss as their surface resistances over their circumferences", () => {
    const thick = { ...coaxial(1e-3, 3, 0) };
    const line = { ...thick, outer: { ...thick.outer, wall: Number.POSITIVE_INFINITY, resistanceFactor: 1 } };
    const { inner, outer } = attenuationParts(line, 1e9);
    // Curvature of both conductors counts delta/(2 a) and delta/(2 b): 0.1 % and less here.
    expect(Math.abs(inner! / outer! / 3 - 1)).toBeLessThan(2e-3);
  });

  it("leave the dielectric pi f sqrt(eps) tan(delta)/c where it is loss-free otherwise", () => {
    const line = coaxial(1e-3, 3, 1e-3);
    const perfect = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };
    const bare: CoaxialLine = {
      ...line,
      inner: { ...line.inner, layers: [{ metal: perfect, outerRadius: 1e-3 }] },
      outer: { ...line.outer, metal: perfect },
    };
    const parts = attenuationParts(bare, 1e9);
    expect(parts.conductors).toBe(0);
    // Low-loss limit, elementary; the next term is of the order of the square of the loss tangent.
    expect(parts.dielectric / ((Math.PI * 1e9 * Math.sqrt(2.26) * 1e-3) / 299_792_458)).toBeCloseTo(1, 6);
  });

  it("give a data sheet's conductors together, and what was added as excess", () => {
    const parts = attenuationParts(sheet, 1e8, { excessDecibelsPerMetre: 0.05 });
    expect(parts.inner).toBeNull();
    expect(parts.outer).toBeNull();
    expect(parts.excess * decibelsPerNeper).toBeCloseTo(0.05, 12);
  });
});
