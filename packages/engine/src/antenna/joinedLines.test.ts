import { describe, expect, it } from "vitest";
import { inputImpedance } from "../lines/alongLine";
import { lineConstants } from "../lines/lineConstants";
import {
  add,
  type Complex,
  complex,
  conjugate,
  magnitude,
  multiply,
  reciprocal,
  subtract,
  zero,
} from "../numerics/complex";
import { exactly } from "../quantity/quantity";
import { plainLine } from "../testing/plainStation";
import { joinedAdmittance } from "./joinedLines";

const frequency = 7.1e6;
const line = plainLine(75);
const apart = (a: Complex, b: Complex) => magnitude(subtract(a, b));
const between = (length: number, crossed = false) =>
  joinedAdmittance(
    [{ line, length: exactly(length), from: "one", farEnd: { feed: "two", crossed } }],
    ["one", "two"],
    frequency,
  );
/** Ohm into the first port when the second is closed with `load`: by the current that leaves it. */
const seen = (y: readonly (readonly Complex[])[], load: Complex): Complex => {
  const far = multiply(multiply(y[0]![1]!, y[1]![0]!), reciprocal(add(y[1]![1]!, reciprocal(load))));
  return reciprocal(subtract(y[0]![0]!, far));
};

describe("lines between feeds", () => {
  const load = complex(30, 40);

  it.each([3.1, 7, 13.9])("of %d m transform a load like the telegrapher's equations", (length) => {
    const expected = inputImpedance(lineConstants(line.model, frequency), length, load);
    expect(apart(seen(between(length), load), expected)).toBeLessThan(1e-9);
    expect(apart(seen(between(length, true), load), expected)).toBeLessThan(1e-9);
  });

  it("turn the phase of the far end round when they are crossed", () => {
    const [straight, crossed] = [between(5), between(5, true)];
    expect(apart(straight[0]![1]!, complex(-crossed[0]![1]!.re, -crossed[0]![1]!.im))).toBeLessThan(1e-15);
    // A short length holds both ends together: in phase it takes no power, against each other it is a short.
    const heat = (y: readonly (readonly Complex[])[], far: number): number => {
      const v = [complex(1), complex(far)];
      const current = y.map((row) => row.reduce((sum, x, k) => add(sum, multiply(x, v[k]!)), zero));
      return v.reduce((sum, x, i) => sum + multiply(x, conjugate(current[i]!)).re, 0);
    };
    expect(heat(between(0.01), 1)).toBeLessThan(1e-6);
    expect(heat(between(0.01), -1)).toBeGreaterThan(heat(between(0.01), 1) * 1e3);
    expect(heat(between(0.01, true), -1)).toBeCloseTo(heat(between(0.01), 1), 12);
  });

  it("take power from every pair of voltages", () => {
    const y = between(9, true);
    for (const phase of [0, 1, 2, 3]) {
      const v = [complex(1), complex(Math.cos(phase), Math.sin(phase))];
      const current = y.map((row) => row.reduce((sum, x, k) => add(sum, multiply(x, v[k]!)), zero));
      expect(v.reduce((sum, x, i) => sum + multiply(x, conjugate(current[i]!)).re, 0)).toBeGreaterThan(0);
    }
  });

  it("are stubs across one feed where they end by themselves", () => {
    const constants = lineConstants(line.model, frequency);
    const quarter = Math.PI / 2 / constants.gamma.im;
    const stub = (farEnd: "open" | "shorted") =>
      joinedAdmittance([{ line, length: exactly(quarter), from: "two", farEnd }], ["one", "two"], frequency);
    expect(stub("shorted")[0]![0]).toEqual(zero);
    // A quarter wave shorted is nearly open; open it is nearly a short, each by its loss.
    expect(magnitude(stub("shorted")[1]![1]!)).toBeLessThan(1e-3);
    expect(magnitude(stub("open")[1]![1]!)).toBeGreaterThan(0.1);
  });

  it("are joined by networks: components one after the other between feeds, beside each other across one", () => {
    const w = 2 * Math.PI * frequency;
    const component = {
      coil: exactly(1e-6),
      capacitor: null,
      resistor: exactly(20),
      q: exactly(Number.POSITIVE_INFINITY),
    };
    const farEnd = { feed: "two", crossed: false };
    const y = joinedAdmittance([{ component, from: "one", farEnd }], ["one", "two"], frequency);
    // Closed with a load behind them they are their sum.
    expect(apart(seen(y, load), add(load, complex(20, w * 1e-6)))).toBeLessThan(1e-9);
    const across = joinedAdmittance([{ component, from: "two", farEnd: "across" }], ["one", "two"], frequency);
    expect(apart(across[1]![1]!, complex(1 / 20, -1 / (w * 1e-6)))).toBeLessThan(1e-12);
    expect(across[0]![1]).toEqual(zero);
  });

  it("must name feeds", () => {
    const one = { line, length: exactly(1), from: "one", farEnd: "open" } as const;
    expect(() => joinedAdmittance([one], ["two"], frequency)).toThrow('no feed is called "one"');
  });
});
