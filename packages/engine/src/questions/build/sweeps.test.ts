import { describe, expect, it } from "vitest";
import { decibelsPerNeper, lineConstants } from "../../lines/lineConstants";
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  multiply,
  one,
  scale,
  subtract,
} from "../../numerics/complex";
import { exactly } from "../../quantity/quantity";
import type { MeasuredNetwork, Station } from "../../station/station";
import { linePart, plainLine, plainStation } from "../../testing/plainStation";
import { sweptLine } from "./sweeps";

const length = 20;
const part = linePart("reel", length, {
  ...plainLine(),
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: exactly(75),
    velocityFactor: exactly(0.82),
    loss: [{ frequency: 10e6, decibelsPerMetre: exactly(0.03) }],
  },
});

/** Reflection of the line with its far end open (+1) or shorted (-1), by the wave that comes back: written apart from the code's. */
function sweep(end: 1 | -1): MeasuredNetwork {
  const frequencies = Array.from({ length: 200 }, (_, i) => 1e6 + 0.1e6 * i);
  const scattering = frequencies.map((f) => {
    const { z0, gamma } = lineConstants(part.line.model, f);
    const back: Complex = scale(exponential(scale(gamma, -2 * length)), end);
    const impedance = multiply(z0, divide(add(one, back), subtract(one, back)));
    const s = divide(subtract(impedance, complex(50)), add(impedance, complex(50)));
    return [s.re, s.im];
  });
  return { ports: 1, reference: 50, frequencies, scattering };
}

const station = (at = "transmitter"): Station => ({
  ...plainStation(),
  path: { parts: [part], end: { kind: "feed", feed: "antenna" } },
  readings: (["open", "shorted"] as const).map((farEnd) => ({
    at,
    frequency: null,
    swr: null,
    file: `${farEnd}.s1p`,
    taken: null,
    farEnd,
  })),
  measured: { "open.s1p": sweep(1), "shorted.s1p": sweep(-1) },
});
const found = (frequency: number, at?: string) =>
  sweptLine(station(at), { entry: part.line, part }, part.line.model, frequency, length);

describe("a line from two sweeps", () => {
  it.each([2e6, 7.1e6, 19e6])(
    "has the constants it was made with, near %f Hz, whole half waves counted",
    (frequency) => {
      const line = found(frequency)!;
      const made = lineConstants(part.line.model, line.frequency);
      expect(Math.abs(Math.log(line.frequency / frequency))).toBeLessThan(0.3);
      expect(line.z0.re).toBeCloseTo(made.z0.re, 7);
      expect(line.z0.im).toBeCloseTo(made.z0.im, 7);
      expect(line.attenuation / (made.gamma.re * decibelsPerNeper)).toBeCloseTo(1, 7);
      expect(line.velocityFactor).toBeCloseTo(made.velocityFactor, 9);
    },
  );

  it("is not told from sweeps taken elsewhere, nor for a line of the catalogue", () => {
    expect(found(7e6, "feed point")).toBeNull();
    expect(sweptLine(station(), { entry: part.line, part: null }, part.line.model, 7e6, length)).toBeNull();
  });
});
