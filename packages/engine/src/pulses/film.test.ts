import { describe, expect, it } from "vitest";
import { inputImpedance } from "../lines/alongLine";
import { lineConstants } from "../lines/lineConstants";
import type { CoaxialLine, DataSheetLine } from "../lines/lineModel";
import {
  add,
  type Complex,
  complex,
  divide,
  hyperbolicCosine,
  hyperbolicSine,
  magnitude,
  multiply,
  scale,
} from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { coaxialBuild } from "../testing/coaxialBuild";
import { echoLattice, powerOf, sourceVoltage, sumOfWaves } from "./echoes";
import { film } from "./film";
import { bendExactAt, steppedLine } from "./steppedLine";
import { impedanceOf, openEnd, resistor, type Termination } from "./termination";

const sheet: DataSheetLine = {
  kind: "data sheet",
  side: "coaxial",
  impedance: exactly(50),
  velocityFactor: exactly(0.66),
  loss: [
    { frequency: 1e6, decibelsPerMetre: exactly(0.006) },
    { frequency: 10e6, decibelsPerMetre: exactly(0.02) },
    { frequency: 100e6, decibelsPerMetre: exactly(0.07) },
  ],
};
const built = coaxialBuild({ inner: 0.45e-3, outer: 1.475e-3 });

const frequency = 7.1e6;
const omega = 2 * Math.PI * frequency;
const length = 28;

const lineOf = (model: CoaxialLine | DataSheetLine, sections: number, metres = length) =>
  steppedLine({ constantsAt: (f) => lineConstants(model, f), length: metres, frequency, sections, lowest: 1e4 });

const carrier = (steps: number, timeStep: number, peak: number): Float64Array =>
  Float64Array.from({ length: steps }, (_, n) => peak * Math.sin(omega * n * timeStep));

const resonator: Termination = { form: "in series", resistance: 80, inductance: 20e-6, capacitance: 25e-12 };

function run(
  model: CoaxialLine | DataSheetLine,
  sections: number,
  passes: number,
  load: Termination,
  source = resistor(10),
) {
  const line = lineOf(model, sections);
  const voltage = carrier(sections * passes, line.timeStep, 1);
  const bend = bendExactAt(omega, line.timeStep);
  const moments = Array.from({ length: passes }, (_, k) => sections * (k + 1) - 1);
  const places = Array.from({ length: sections / 2 + 1 }, (_, k) => 2 * k);
  return { line, made: film({ line, source, load, voltage, bend, moments, places }) };
}

/** Phasor (peak) of the last whole periods of a record, by projection. */
function phasorOf(record: Float64Array, timeStep: number, periods: number) {
  const steps = periods / frequency / timeStep;
  const rows: number[][] = [];
  const wanted: number[] = [];
  for (let n = record.length - Math.floor(steps); n < record.length; n++) {
    rows.push([Math.sin(omega * n * timeStep), Math.cos(omega * n * timeStep)]);
    wanted.push(record[n]!);
  }
  const [ss, sc, cc] = rows.reduce(([a, b, c], [s, k]) => [a! + s! * s!, b! + s! * k!, c! + k! * k!], [0, 0, 0]);
  const [ws, wc] = rows.reduce(([a, b], [s, k], i) => [a! + s! * wanted[i]!, b! + k! * wanted[i]!], [0, 0]);
  const det = ss! * cc! - sc! * sc!;
  return complex((ws! * cc! - wc! * sc!) / det, (wc! * ss! - ws! * sc!) / det);
}

describe("waves stepped along a line", () => {
  it.each([
    ["a resonator", resonator],
    ["25 ohm", resistor(25)],
    ["an open end", openEnd],
    [
      "a coil beside a resistor",
      { form: "side by side", resistance: 200, inductance: 3e-6, capacitance: 1e-10 } as const,
    ],
  ])("account for every joule to rounding, with %s", (_, load) => {
    for (const model of [sheet, built]) {
      const { made } = run(model, 60, 12, load);
      for (const { energy } of made.moments) {
        expect(Math.abs(energy.residue)).toBeLessThan(1e-12 * energy.delivered);
        expect(energy.heatInLine).toBeGreaterThan(0);
      }
    }
  });

  it("let nothing arrive before the length over the velocity in the limit of high frequency", () => {
    const { line, made } = run(built, 80, 2, resistor(25));
    expect(made.loadVoltage.slice(0, 81).every((v) => v === 0)).toBe(true);
    expect(made.loadVoltage[81]).not.toBe(0);
    const highest = 1e12;
    const fastest = (length * lineConstants(built, highest).gamma.im) / (2 * Math.PI * highest);
    // Above the fitted span the conductors' inner inductance counts whole: waves come a little late, never early.
    const slower = (line.sections * line.timeStep) / fastest - 1;
    expect(slower).toBeGreaterThan(0);
    expect(slower).toBeLessThan(3e-3);
  });

  it("end in the phasor answer, by the square of the step", () => {
    const deviation = (sections: number): number => {
      const { line, made } = run(sheet, sections, 60, resonator);
      const load = impedanceOf(resonator, omega)!;
      const constants = lineConstants(sheet, frequency);
      const exact = inputImpedance(constants, length, load);
      const found = divide(
        phasorOf(made.inputVoltage, line.timeStep, 3),
        phasorOf(made.inputCurrent, line.timeStep, 3),
      );
      return magnitude({ re: found.re - exact.re, im: found.im - exact.im }) / magnitude(exact);
    };
    const [coarse, fine] = [deviation(40), deviation(80)];
    expect(coarse).toBeLessThan(1e-3);
    expect(fine).toBeLessThan(coarse / 3.5);
  });

  it("meet the line's loss with passive ladders over four decades within a few percent", () => {
    expect(lineOf(sheet, 100).worstDeviation).toBeLessThan(0.03);
    expect(lineOf(built, 100).worstDeviation).toBeLessThan(0.03);
  });

  it("carry a pulse as the sum over the line's true constants does", () => {
    const line = lineOf(built, 160, 200);
    const { sections, timeStep } = line;
    const steps = 3 * sections;
    const wide = sections / 4;
    const voltage = Float64Array.from({ length: steps }, (_, n) =>
      n < wide ? (1 - Math.cos((2 * Math.PI * n) / wide)) / 2 : 0,
    );
    const end = resistor(50);
    const made = film({ line, source: end, load: end, voltage, bend: 2 / timeStep, moments: [], places: [] });
    // The exact route: Fourier series over a window so long that what wraps round it is nothing to speak of.
    const window = 40 * sections * timeStep;
    const wanted = Array.from({ length: 41 }, (_, i) => sections + 2 * i);
    const exact = wanted.map(() => 0);
    for (let k = 1; k / window < 0.15 / timeStep; k++) {
      const w = (2 * Math.PI * k) / window;
      const { z0, gamma } = lineConstants(built, k / window);
      const theta = scale(gamma, line.length);
      const [c, sh] = [hyperbolicCosine(theta), hyperbolicSine(theta)];
      // Load voltage for 1 V behind 50 ohm: 50 / (2 * 50 cosh + (Z0 + 50² / Z0) sinh).
      const across = add(z0, divide(complex(2500), z0));
      const transfer = divide(complex(50), add(scale(c, 100), multiply(across, sh)));
      const spectrum = voltage
        .slice(0, wide)
        .reduce<Complex>(
          (sum, v, n) => ({ re: sum.re + v * Math.cos(w * n * timeStep), im: sum.im - v * Math.sin(w * n * timeStep) }),
          complex(0),
        );
      const at = multiply(transfer, spectrum);
      wanted.forEach((n, i) => {
        const angle = w * n * timeStep;
        exact[i]! += (2 * (at.re * Math.cos(angle) - at.im * Math.sin(angle)) * timeStep) / window;
      });
    }
    // What a series without its mean is short of: the same at every time.
    const mean = exact[0]!;
    const peak = Math.max(...exact) - mean;
    expect(peak).toBeGreaterThan(0.3);
    // The pulse loses less than one neper: it can be off by no more than the loss is.
    wanted.forEach((n, i) => {
      expect(Math.abs(made.loadVoltage[n]! - (exact[i]! - mean)) / peak).toBeLessThan(line.worstDeviation);
    });
  });

  it("refuse an odd number of sections", () => {
    const line = { ...lineOf(sheet, 40), sections: 41 };
    const request = {
      line,
      source: resistor(50),
      load: openEnd,
      voltage: new Float64Array(3),
      bend: 1,
      moments: [],
      places: [],
    };
    expect(() => film(request)).toThrow(/even number/);
  });
});

describe("the lattice of echoes", () => {
  const constants = lineConstants(sheet, frequency);
  const request = { constants, length, source: complex(10, 5), load: complex(80, -30), voltage: complex(1) };

  it("sums to the phasor answer", () => {
    const lattice = echoLattice(request, 400);
    for (const distance of [0, 9, length]) {
      const [many, all] = [sumOfWaves(lattice, 399, distance), sumOfWaves(lattice, null, distance)];
      expect(magnitude({ re: many.voltage.re - all.voltage.re, im: many.voltage.im - all.voltage.im })).toBeLessThan(
        1e-13,
      );
    }
    const start = sumOfWaves(lattice, null, 0);
    const seen = divide(start.voltage, start.current);
    const exact = inputImpedance(constants, length, request.load);
    expect(seen.re).toBeCloseTo(exact.re, 9);
    expect(seen.im).toBeCloseTo(exact.im, 9);
  });

  it("gives the same steady state for any source that delivers the same power", () => {
    const target = sumOfWaves(echoLattice(request, 1), null, 0);
    for (const source of [complex(50), complex(500, -100)]) {
      const voltage = sourceVoltage(source, target.voltage, target.current);
      const end = sumOfWaves(echoLattice({ ...request, source, voltage }, 1), null, length);
      const other = sumOfWaves(echoLattice(request, 1), null, length);
      expect(powerOf(end.voltage, end.current)).toBeCloseTo(powerOf(other.voltage, other.current), 12);
    }
  });
});
