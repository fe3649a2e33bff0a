import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import { dipole, testFrequency, wire } from "./antennas.fixture";
import { nextRefinement } from "./nextRefinement";
import { type Refinement, refinementOf } from "./refinement";
import { solveAntenna } from "./solveAntenna";
import type { Soil, Structure } from "./structure";

const free: Soil = { kind: "free space" };

/** 20 m of wire fed 3.4 m from its middle. */
const offCentre: Structure = {
  wires: [wire([0, 3.4, 10], [0, -10, 10], 1e-3), wire([0, 3.4, 10], [0, 10, 10], 1e-3)],
  feeds: [{ name: "feed", at: [0, 3.4, 10], from: [0], into: [1] }],
  loads: [],
};
const [long, short] = offCentre.wires.map((w) => w.name) as [string, string];

const solve = (structure: Structure, refinement: Refinement, frequency = testFrequency) =>
  solveAntenna(structure, free, frequency, undefined, { refinement });

const sum = (values: readonly number[]): number => values.reduce((total, x) => total + x, 0);

describe("where the error sits", () => {
  it.each([
    ["a level dipole", dipole(20, 1e-3, 10), testFrequency],
    ["a wire fed off its middle, second harmonic", offCentre, 2 * testFrequency],
  ])(
    "%s: all wires together come to the difference of the meshes, at most a quarter above it",
    (_, structure, frequency) => {
      const { errorByWire, errorOverGoal } = solve(structure, 1, frequency);
      const difference = 3 * errorOverGoal;
      expect(sum(errorByWire)).toBeGreaterThan(difference);
      expect(sum(errorByWire)).toBeLessThan(1.25 * difference);
    },
  );

  it("refining one wire takes away three quarters of what was on it and nothing elsewhere", () => {
    const at = 2 * testFrequency;
    const before = solve(offCentre, 1, at).errorByWire;
    for (const [w, name] of [long, short].entries()) {
      const after = solve(offCentre, { wires: { [name]: 2 }, others: 1 }, at).errorByWire;
      expect(after[w]! / before[w]!).toBeGreaterThan(0.15);
      expect(after[w]! / before[w]!).toBeLessThan(0.35);
      expect(after[1 - w]! / before[1 - w]!).toBeCloseTo(1, 1);
    }
  });
});

describe("refining by itself", () => {
  it("takes no more elements than the mesh refined everywhere to the same error, and meets the goal asked for", () => {
    const accuracy = { ohms: 0.1, share: 0.001 };
    const at = 2 * testFrequency;
    const local = solveAntenna(offCentre, free, at, chosenKernels(), { accuracy });
    expect(local.goalMet).toBe(true);
    const everywhere = [1.2, 1.5, 1.8, 2.1, 2.4, 2.7, 3].map((refinement) => solve(offCentre, refinement, at));
    const asGood = everywhere.find((one) => one.errorEstimate <= local.errorEstimate);
    expect(local.unknowns).toBeLessThanOrEqual(asGood?.unknowns ?? Number.POSITIVE_INFINITY);
  });

  it("spends elements where the error is, none where there is none", () => {
    const solved = solve(offCentre, 1, 2 * testFrequency);
    const next = nextRefinement({ ...solved, errorOverGoal: 2, errorByWire: [1, 0] })!;
    expect(refinementOf(next, long)).toBeGreaterThan(Math.SQRT2);
    expect(refinementOf(next, short)).toBe(1);
  });

  it("gives wires alike in shape the same mesh", () => {
    const solved = solve(dipole(20, 1e-3, 10), 1);
    const next = nextRefinement({ ...solved, errorOverGoal: 2 })!;
    const [a, b] = solved.model.structure.wires.map((w) => refinementOf(next, w.name));
    expect(a).toBe(b);
  });

  it("stops where no step is worth taking", () => {
    const finest = solve(offCentre, 3.2);
    expect(nextRefinement({ ...finest, errorOverGoal: 2 })).toBeNull();
  });
});
