import { createSolutionMemory, type Progress, requestKey } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { noting, raised } from "./ahead.fixture";
import { type AheadPlace, solveAhead } from "./solveAhead";

const announce = (lifts: readonly number[]): Progress => ({ done: 0, of: 1, what: "", ahead: lifts.map(raised) });

function place(worthwhile = 0) {
  const { pool, jobs } = noting();
  const told: Progress[] = [];
  const at: AheadPlace = { pool, memory: createSolutionMemory(), worthwhile, breathe: async () => undefined };
  const lifts = () => jobs.map((job) => job.map(({ lift }) => lift));
  return { at, told, lifts, solve: (progress: Progress) => solveAhead(progress, at, (p) => told.push(p)) };
}

describe("what a question announces", () => {
  it("is handed out in portions of neighbours, each request once, and its solutions are kept", async () => {
    const { at, solve, lifts, told } = place();
    const wanted = Array.from({ length: 20 }, (_, i) => i / 10);
    expect(await solve(announce([...wanted, ...wanted]))).toBe("done");
    expect(lifts().flat()).toEqual(wanted);
    expect(lifts().map((job) => job.length)).toEqual([3, 3, 3, 3, 3, 3, 2]);
    for (const lift of wanted) expect(at.memory.get(requestKey(raised(lift)))).toHaveProperty("admittance");
    expect(told.at(-1)).toEqual({ done: 20, of: 20, what: "antennas solved" });
  });

  it("is not handed out again while it is kept", async () => {
    const { solve, lifts } = place();
    await solve(announce([0, 1]));
    await solve(announce([0, 1, 2, 3]));
    expect(lifts()).toEqual([[0], [1], [2], [3]]);
  });

  it("stays with the question where it is one solve, little work, or there is no further worker", async () => {
    const { at, solve, lifts } = place();
    await solve(announce([0]));
    await solve({ done: 0, of: 1, what: "" });
    await solveAhead(announce([0, 1]), { ...at, pool: { ...at.pool, size: 0 } }, () => undefined);
    await solveAhead(announce([0, 1]), { ...at, worthwhile: 1e9 }, () => undefined);
    expect(lifts()).toEqual([]);
  });
});
