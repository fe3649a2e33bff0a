import type { Progress } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { drive } from "./drive";

function* counting(of: number, onEnd = () => {}): Generator<Progress, string> {
  try {
    for (let done = 1; done <= of; done += 1) yield { done, of, what: "heights" };
    return "result";
  } finally {
    onEnd();
  }
}

/** A clock that goes on by `step` ms at every look. */
function driver(step: number, stopAfter = Number.POSITIVE_INFINITY) {
  let time = 0;
  let breaths = 0;
  const seen: number[] = [];
  return {
    seen,
    now: () => {
      time += step;
      return time;
    },
    breathe: async () => {
      breaths += 1;
    },
    stopped: () => breaths >= stopAfter,
    report: ({ done }: Progress) => void seen.push(done),
    solveAhead: async (_: Progress): Promise<"done" | "cancelled"> => "done",
  };
}

describe("drive", () => {
  it("brings the work to its end", async () => {
    expect(await drive(counting(5), driver(1))).toEqual({ result: "result" });
  });

  it("lets messages through about every 20 ms and reports how far it is", async () => {
    const slow = driver(6);
    await drive(counting(20), slow);
    expect(slow.seen.length).toBeGreaterThan(3);
    expect(slow.seen.length).toBeLessThan(8);
    expect(slow.seen).toEqual([...slow.seen].sort((a, b) => a - b));
  });

  it("has solved ahead what is announced before it goes on, and stops where that was cancelled", async () => {
    const steps: string[] = [];
    function* announcing(): Generator<Progress, string> {
      for (const done of [1, 2]) {
        yield { done, of: 2, what: "heights", ahead: [] };
        steps.push(`step ${done}`);
      }
      return "result";
    }
    const solving = (outcome: "done" | "cancelled") => ({
      ...driver(1),
      solveAhead: async ({ done }: Progress) => {
        steps.push(`solved ${done}`);
        return outcome;
      },
    });
    expect(await drive(announcing(), solving("done"))).toEqual({ result: "result" });
    expect(steps.splice(0)).toEqual(["solved 1", "step 1", "solved 2", "step 2"]);
    expect(await drive(announcing(), solving("cancelled"))).toBe("stopped");
    expect(steps).toEqual(["solved 1"]);
  });

  it("stops between slices and lets the work put its things away", async () => {
    let ended = false;
    const outcome = await drive(
      counting(1000, () => {
        ended = true;
      }),
      driver(30, 2),
    );
    expect(outcome).toBe("stopped");
    expect(ended).toBe(true);
  });
});
