import { describe, expect, it } from "vitest";
import { chosenKernels } from "../kernels/chosen";
import type { Kernels } from "../kernels/door";
import { solveAntenna } from "./solveAntenna";
import type { Point, Soil, Structure } from "./structure";

const frequency = 7.1e6;
const average: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };
const poor: Soil = { kind: "homogeneous", relativePermittivity: 5, conductivity: 0.001 };

/** An inverted vee with sleeved legs; nothing about it is level, so that every height has tables of its own. */
function vee(lift: number, permittivity = 3): Structure {
  const leg = (from: Point, to: Point) => ({
    name: "leg",
    from,
    to,
    radius: 1e-3,
    conductivity: 58e6,
    permeability: 1,
    insulation: { outerRadius: 2e-3, permittivity },
  });
  const apex: Point = [0.1, 0.2, 11.3 + lift];
  return {
    wires: [leg([-7.7, 0.2, 5.1 + lift], apex), leg(apex, [7.9, 0.2, 5.3 + lift])],
    feeds: [{ name: "apex", at: apex, from: [0], into: [1] }],
    loads: [],
  };
}

/** The chosen kernels under another name, so that nothing is kept for them yet, counting how often each is called. */
function counting(name: string): { kernels: Kernels; calls: () => Record<string, number> } {
  const twin = chosenKernels();
  let counts: Record<string, number> = {};
  const count = <T extends (...args: never[]) => unknown>(key: string, work: T): T =>
    ((...args: Parameters<T>) => {
      counts[key] = (counts[key] ?? 0) + 1;
      return work(...args);
    }) as T;
  const operations = Object.entries(twin).map(([key, work]) => [
    key,
    typeof work === "function" ? count(key, work as never) : work,
  ]);
  return {
    kernels: { ...(Object.fromEntries(operations) as Kernels), name },
    calls: () => {
      const seen = counts;
      counts = {};
      return seen;
    },
  };
}

describe("what is kept between solves", () => {
  it("at another height: mesh and direct terms", () => {
    const { kernels, calls } = counting("counting heights");
    solveAntenna(vee(0), average, frequency, kernels, { refinement: 1 });
    expect(calls()).toMatchObject({ nearMoments: 1, addPairTerms: 1 });
    solveAntenna(vee(0.37), average, frequency, kernels, { refinement: 1 });
    const again = calls();
    expect([again.nearMoments, again.addPairTerms]).toEqual([undefined, undefined]);
    expect(again.solveSymmetric).toBe(2);
  });

  it("over another soil: the same; with another sleeve: all but the solve", () => {
    const { kernels, calls } = counting("counting soils");
    solveAntenna(vee(0), average, frequency, kernels, { refinement: 1 });
    calls();
    solveAntenna(vee(0), poor, frequency, kernels, { refinement: 1 });
    const overPoor = calls();
    expect([overPoor.nearMoments, overPoor.addPairTerms]).toEqual([undefined, undefined]);
    solveAntenna(vee(0, 4), poor, frequency, kernels, { refinement: 1 });
    expect(Object.keys(calls())).toEqual(["solveSymmetric"]);
  });

  it("on a finer mesh of the same wires: the tables of what the soil reflects", () => {
    const { kernels, calls } = counting("counting meshes");
    solveAntenna(vee(0), average, frequency, kernels, { refinement: 1 });
    expect(calls().sumSpectrum).toBeGreaterThan(0);
    solveAntenna(vee(0), average, frequency, kernels, { refinement: 1.3 });
    expect(calls().sumSpectrum).toBeUndefined();
  });

  it("never changes a number: whatever was solved before", () => {
    const solved = (order: readonly number[], name: string) => {
      const { kernels } = counting(name);
      const all = new Map(
        order.map((lift) => [lift, solveAntenna(vee(lift), average, frequency, kernels, { refinement: 1 })]),
      );
      return all.get(0.37)!;
    };
    const [alone, after] = [solved([0.37], "first"), solved([0, 2.91, 0.37], "later")];
    expect(after.admittance).toEqual(alone.admittance);
    expect(after.model.currents).toEqual(alone.model.currents);
  });
});
