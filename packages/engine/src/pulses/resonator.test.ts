import { describe, expect, it } from "vitest";
import { complex } from "../numerics/complex";
import { fitResonator, oneReactance } from "./resonator";
import { impedanceOf, openEnd, resistor, shortedEnd, type Termination } from "./termination";

const f0 = 7.1e6;
const sampled = (one: Termination, frequency: number) => ({
  frequency,
  impedance: complex(...(Object.values(impedanceOf(one, 2 * Math.PI * frequency)!) as [number, number])),
});
const fitOf = (one: Termination) => fitResonator(sampled(one, f0), [sampled(one, 0.99 * f0), sampled(one, 1.01 * f0)]);

describe("an impedance as coil, capacitor and resistor", () => {
  it.each([
    { form: "in series", resistance: 70, inductance: 15e-6, capacitance: 33e-12 },
    { form: "side by side", resistance: 3000, inductance: 1e-6, capacitance: 480e-12 },
  ] as const)("finds what it was made of: %j", (one) => {
    const { termination, worstDeviation } = fitOf(one);
    expect(termination.form).toBe(one.form);
    // The slope is taken over 2 %: the parts come out nearly, the impedance at the frequency exactly.
    expect(termination.inductance! / one.inductance).toBeCloseTo(1, 2);
    expect(termination.capacitance! / one.capacitance).toBeCloseTo(1, 2);
    expect(worstDeviation).toBeLessThan(1e-3);
    const [there, here] = [impedanceOf(termination, 2 * Math.PI * f0)!, sampled(one, f0).impedance];
    expect(there.re).toBeCloseTo(here.re, 9);
    expect(there.im).toBeCloseTo(here.im, 9);
  });

  it("never makes a negative part, and stays exact at the frequency, whatever the slope", () => {
    const at = { frequency: f0, impedance: complex(40, 25) };
    const falling = [
      { frequency: 0.99 * f0, impedance: complex(40, 60) },
      { frequency: 1.01 * f0, impedance: complex(40, -10) },
    ];
    const { termination } = fitResonator(at, falling);
    for (const part of [termination.resistance, termination.inductance ?? 0, termination.capacitance ?? 0]) {
      expect(part).toBeGreaterThanOrEqual(0);
    }
    const { re, im } = impedanceOf(termination, 2 * Math.PI * f0)!;
    expect(re).toBeCloseTo(40, 9);
    expect(im).toBeCloseTo(25, 9);
  });

  it("takes one reactance where nothing beside the frequency is known, and refuses a negative resistance", () => {
    expect(fitResonator({ frequency: f0, impedance: complex(50, -20) }, []).quality).toBeNull();
    expect(impedanceOf(oneReactance(complex(50, -20), 1e7), 1e7)).toEqual({ re: 50, im: -20 });
    expect(() => fitResonator({ frequency: f0, impedance: complex(-1, 0) }, [])).toThrow(/0 or more/);
  });

  it("knows an open end and a short", () => {
    expect(impedanceOf(openEnd, 1e7)).toBeNull();
    expect(impedanceOf(shortedEnd, 1e7)).toEqual({ re: 0, im: 0 });
    expect(resistor(Number.POSITIVE_INFINITY)).toEqual(openEnd);
  });
});
