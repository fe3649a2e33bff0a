import { describe, expect, it } from "vitest";
import type { Reach } from "../ground/spectralNodes";
import type { KernelPoints } from "../kernels/reflected";
import { tablesFor, wholeReach } from "./tableReaches";

/** Points at places (m), level ones along x, the others upright. */
const points = (
  list: readonly { at: readonly [number, number, number]; up?: boolean; low?: boolean }[],
): KernelPoints => ({
  count: list.length,
  position: Float64Array.from(list.flatMap(({ at }) => at)),
  direction: Float64Array.from(list.flatMap(({ up }) => (up ? [0, 0, 1] : [1, 0, 0]))),
  low: Uint8Array.from(list, ({ low }) => (low ? 1 : 0)),
});

const reaches = (all: KernelPoints): Record<"lessImages" | "whole", Reach | null> => tablesFor(all, (reach) => reach);

describe("reaches of tables", () => {
  it("of wires high up are one, with the height sums that occur", () => {
    const all = points([{ at: [0, 0, 10] }, { at: [3, 0, 10 * (1 + 1e-12)] }, { at: [3, 4, 12], up: true }]);
    expect(reaches(all)).toEqual({
      lessImages: null,
      whole: {
        ...{ smallestSum: 20, largestSum: 24, largestDistance: 5, steep: true, lessImages: false },
        sums: Float64Array.of(20, 22, 24),
      },
    });
  });

  it("of low wires are apart, and pairs of a low and a high one belong to the others", () => {
    const all = points([{ at: [0, 0, 0.01], low: true }, { at: [1, 0, 0.02], low: true }, { at: [0, 0, 5] }]);
    const { lessImages, whole } = reaches(all);
    expect([lessImages!.smallestSum, lessImages!.largestSum, lessImages!.largestDistance]).toEqual([0.02, 0.04, 1]);
    expect([...lessImages!.sums!]).toEqual([0.02, 0.03, 0.04]);
    expect(whole!.smallestSum).toBeCloseTo(5.01, 12);
    expect([...whole!.sums!].map((s) => s.toFixed(6))).toEqual(["5.010000", "5.020000", "10.000000"]);
    expect([lessImages!.steep, whole!.steep, lessImages!.lessImages]).toEqual([false, false, true]);
  });

  it("of low wires alone need no other table", () => {
    expect(reaches(points([{ at: [0, 0, 0.01], low: true }])).whole).toBeNull();
  });

  it("do not list height sums where they are many", () => {
    const all = points(Array.from({ length: 80 }, (_, i) => ({ at: [0, 0, 1 + i / 7] as const, up: true })));
    expect(reaches(all).whole!.sums).toBeUndefined();
    expect(wholeReach(all).largestSum).toBeCloseTo(2 + 158 / 7, 12);
  });
});
