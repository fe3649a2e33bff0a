import type { Progress } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { drive } from "./drive";

function* counting(steps: number): Generator<Progress, string> {
  for (let done = 1; done <= steps; done++) yield { done, of: steps, what: "heights" };
  return "the answer";
}

describe("drive", () => {
  it("returns what the work returns and shows every step", async () => {
    const seen: number[] = [];
    const result = await drive(counting(5), ({ done }) => seen.push(done));
    expect(result).toBe("the answer");
    expect(seen).toEqual([1, 2, 3, 4, 5]);
  });

  it("steps aside after 20 ms of work, so that a signal is heard, and not before", async () => {
    let clock = 0;
    let heardAt = 0;
    let steps = 0;
    setImmediate(() => {
      heardAt = steps;
    });
    await drive(
      counting(20),
      () => {
        steps++;
        clock += 7;
      },
      null,
      () => clock,
    );
    expect(heardAt).toBe(3);
  });

  it("passes on what the work throws", async () => {
    // biome-ignore lint/correctness/useYield: a generator that fails before its first step
    function* failing(): Generator<Progress, never> {
      throw new Error("bound exceeded");
    }
    await expect(drive(failing(), () => undefined)).rejects.toThrow("bound exceeded");
  });
});
