import { describe, expect, it } from "vitest";
import { bandsOf } from "./tableBands";

const reach = { smallestSum: 1, largestSum: 20, largestDistance: 10, steep: true };

describe("bands of height sums", () => {
  it("cover a range without gaps, none wider than fourfold", () => {
    const bands = bandsOf(reach);
    expect(bands[0]!.from).toBe(1);
    expect(bands.at(-1)!.to).toBeCloseTo(20, 12);
    bands.forEach(({ from, to, sums }, b) => {
      expect(to / from).toBeLessThanOrEqual(4);
      expect(sums).toBeNull();
      if (b > 0) expect(from).toBeCloseTo(bands[b - 1]!.to, 12);
    });
  });

  it("give few height sums columns of their own, and leave out what lies between them", () => {
    const bands = bandsOf({ ...reach, sums: Float64Array.of(1, 2, 4, 15, 20) });
    expect(bands.map(({ from, to, sums }) => [from, to, sums && [...sums]])).toEqual([
      [1, 4, [1, 2, 4]],
      [15, 20, [15, 20]],
    ]);
  });

  it("take polynomials where height sums are many", () => {
    const sums = Float64Array.from({ length: 20 }, (_, i) => 1 + i / 10);
    expect(bandsOf({ ...reach, largestSum: 2.9, sums })).toEqual([{ from: 1, to: 2.9, sums: null }]);
  });

  it("are one column at one height", () => {
    const bands = bandsOf({ ...reach, largestSum: 1 });
    expect(bands).toEqual([{ from: 1, to: 1, sums: Float64Array.of(1) }]);
  });
});
