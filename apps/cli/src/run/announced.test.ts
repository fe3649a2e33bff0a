import { readFileSync } from "node:fs";
import {
  adoptSolution,
  chooseKernels,
  createSolutionMemory,
  findQuestion,
  openRequests,
  requestKey,
  type SolutionMemory,
  solvePortable,
} from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { readStation } from "@feedpath/station-file";
import { beforeAll, describe, expect, it } from "vitest";

const stationOf = (example: string) => {
  const text = readFileSync(new URL(`../../../../examples/${example}.yaml`, import.meta.url), "utf8");
  return readStation(text, { fileName: example, readFile: () => null }).station!;
};

describe("what questions announce", () => {
  beforeAll(() => chooseKernels(fastKernels));

  it.each([
    ["watts", "attic-coils", 5],
    ["height", "rooftop-flat", 50],
    ["outside", "coax-as-counterpoise", 10],
    ["nearby", "attic-coils", 20],
  ])("is what they solve: %s", (question, example, least) => {
    const memory = createSolutionMemory();
    const announced = new Set<string>();
    const lookedFor = new Set<string>();
    const get: SolutionMemory["get"] = (key) => {
      lookedFor.add(key);
      return memory.get(key);
    };
    const context = { program: "", catalogue: "", fileHash: "", kept: { ...memory, get } };
    const work = findQuestion(question)!.run(stationOf(example), {}, context);
    for (let step = work.next(); !step.done; step = work.next()) {
      for (const request of openRequests(memory, step.value.ahead ?? [])) {
        announced.add(requestKey(request));
        adoptSolution(memory, request, solvePortable(request));
      }
    }
    expect(announced.size).toBeGreaterThan(least);
    expect([...announced].filter((key) => !lookedFor.has(key))).toEqual([]);
  });
});
