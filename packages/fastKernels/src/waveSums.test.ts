import { referenceKernels } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";

/** Numbers from -1 to 1 that look random. */
const scattered = (count: number, seed: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => Math.sin(seed + 7919 * i));

describe("fast sums of waves", () => {
  it.each([
    { count: 16, waves: 7 },
    { count: 1, waves: 1 },
    { count: 33, waves: 0 },
    { count: 200, waves: 64 },
  ])("are those of the readable twin: $count points, $waves waves", ({ count, waves }) => {
    const unit = scattered(3 * count, 2);
    for (let p = 0; p < count; p++) {
      const length = Math.hypot(...unit.subarray(3 * p, 3 * p + 3));
      for (let c = 0; c < 3; c++) unit[3 * p + c]! /= length;
    }
    const moments = { re: scattered(count, 4), im: scattered(count, 5) };
    const points = { count, position: scattered(3 * count, 1).map((x) => 30 * x), direction: unit, moments };
    const radius = scattered(count, 3).map((x) => 0.02 + 0.01 * x);
    const asked = {
      radial: scattered(waves, 6).map((x) => 0.5 + 0.4 * x),
      phi: scattered(waves, 7).map((x) => 7 * x),
      upright: scattered(waves, 8),
    };
    const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => twin.sumWaves({ ...points, radius }, asked));
    expect(ours!.length).toBe(6 * waves);
    // As many terms as points, none above 1, with phases of some 60 rad each known to 60 times the rounding.
    const tolerance = 100 * Number.EPSILON * count;
    ours!.forEach((x, i) => {
      expect(Math.abs(x - theirs![i]!)).toBeLessThan(tolerance);
    });
  });
});
