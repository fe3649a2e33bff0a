import { readFileSync } from "node:fs";
import { chooseKernels, findQuestion } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { readStation } from "@feedpath/station-file";
import { type AheadPlace, solveAhead } from "@feedpath/workers";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { drive } from "./drive";
import { openSolverThreads } from "./solverThreads";

const stationOf = (example: string) => {
  const text = readFileSync(new URL(`../../../../examples/${example}.yaml`, import.meta.url), "utf8");
  const { station } = readStation(text, { fileName: example, readFile: () => null });
  if (!station) throw new Error(`${example} is no station`);
  return station;
};

const asked = [
  ["watts", "orchard-doublet"],
  ["watts", "attic-coils"],
  ["height", "orchard-doublet"],
  ["band", "harbour-school-club"],
] as const;

/** The answer as bytes. */
async function answer(question: string, example: string, threads: AheadPlace): Promise<string> {
  const context = { program: "", catalogue: "", fileHash: "", kept: threads.memory };
  const work = findQuestion(question)!.run(stationOf(example), {}, context);
  return JSON.stringify(await drive(work, () => undefined, threads));
}

const opened: AheadPlace[] = [];
const open = (size: number): AheadPlace => {
  const threads = openSolverThreads(size, 0);
  opened.push(threads);
  return threads;
};

describe("threads that solve ahead", () => {
  const alone: string[] = [];
  beforeAll(async () => {
    chooseKernels(fastKernels);
    const threads = open(0);
    for (const [question, example] of asked) alone.push(await answer(question, example, threads));
  });
  afterAll(() => {
    for (const { pool } of opened) pool.close();
  });

  it.each([1, 2, 3])("give the same bytes as none of them: %i", async (size) => {
    const threads = open(size);
    for (const [i, [question, example]] of asked.entries())
      expect(await answer(question, example, threads)).toBe(alone[i]);
    threads.pool.close();
  });

  it("do the work while the thread that asks does nothing", async () => {
    const { pool, memory, ...place } = open(1);
    const station = stationOf("orchard-doublet");
    const ahead = [0, 1, 2].map((lift) => ({ station, frequency: 3.65e6, lift, mesh: undefined }));
    const idle: AheadPlace = {
      ...place,
      memory,
      pool: { ...pool, run: ({ own: _, ...batch }) => pool.run(batch) },
    };
    expect(await solveAhead({ done: 0, of: 1, what: "", ahead }, idle, () => undefined)).toBe("done");
    expect(memory.held()).toBeGreaterThan(10_000);
  });
});
