import { describe, expect, it } from "vitest";
import { interleaved, median, ratioTo, roundsWithin, timingOf } from "./interleaved";

describe("interleaved", () => {
  it("takes turns, and counts no round of the warm-up", async () => {
    const order: string[] = [];
    const told = (name: string) => {
      let round = 0;
      const run = async () => {
        order.push(name);
        round += 1;
        return round;
      };
      return { name, run };
    };
    const timings = await interleaved([told("a"), told("b")], 2, 1);
    expect(order).toEqual(["a", "b", "a", "b", "a", "b"]);
    expect(timings.map(({ times }) => times)).toEqual([
      [2, 3],
      [2, 3],
    ]);
  });

  it("compares the fastest rounds, so that load that comes and goes counts little", () => {
    expect(ratioTo(timingOf("a", [2, 50, 3]), timingOf("b", [70, 1, 1]))).toBe(2);
  });

  it("finds the middle of odd and even counts", () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });

  it("takes fewer rounds of what takes long, and always one", () => {
    expect(roundsWithin(6, 1)).toBe(9);
    expect(roundsWithin(6, 2000)).toBe(3);
    expect(roundsWithin(6, 60_000)).toBe(1);
  });
});
