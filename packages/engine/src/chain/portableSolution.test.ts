import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../answer/answer";
import { exactly, within } from "../quantity/quantity";
import type { Context, Progress, Question } from "../questions/common/question";
import { height } from "../questions/height/run";
import { watts } from "../questions/watts/run";
import type { Load } from "../station/antennaDescription";
import { antennaOf, levelDipole, plainStation } from "../testing/plainStation";
import { adoptSolution, openRequests, solvePortable } from "./portableSolution";
import { createSolutionMemory, type SolutionMemory } from "./solutionMemory";

const coil: Load = {
  kind: "coil",
  component: { coil: within(8e-6, 4e-7, "measured"), capacitor: null, resistor: null, q: exactly(200) },
  hat: null,
  on: "both legs",
  fromFeed: exactly(2),
  length: null,
};
const station = plainStation({ antennas: [{ ...antennaOf(levelDipole(15, 8)), loads: [coil] }] });
const context: Context = { program: "", catalogue: "", fileHash: "" };

function finish(work: Generator<Progress, Answer | Refusal>, onProgress: (p: Progress) => void): Answer | Refusal {
  let step = work.next();
  while (!step.done) {
    onProgress(step.value);
    step = work.next();
  }
  return step.value;
}

/** Solves everything announced as another thread would, and counts what the question still had to solve itself. */
function askAhead(question: Question, memory: SolutionMemory, parameters = {}) {
  let ownSolves = 0;
  let ahead = 0;
  const set: SolutionMemory["set"] = (...kept) => {
    ownSolves += 1;
    memory.set(...kept);
  };
  const answer = finish(question.run(station, parameters, { ...context, kept: { ...memory, set } }), (progress) => {
    for (const request of openRequests(memory, progress.ahead ?? [])) {
      ahead += 1;
      adoptSolution(memory, request, structuredClone(solvePortable(structuredClone(request))));
    }
  });
  return { answer, ownSolves, ahead };
}

describe("solves done ahead, elsewhere", () => {
  it("give the same answer to the last bit, and leave watts nothing to solve", () => {
    const memory = createSolutionMemory();
    const { answer, ownSolves, ahead } = askAhead(watts, memory);
    expect("refused" in answer).toBe(false);
    expect(answer).toEqual(finish(watts.run(station, {}, context), () => undefined));
    expect(ahead).toBeGreaterThan(2);
    expect(ownSolves).toBe(0);
    expect(memory.held()).toBeGreaterThan(0);
    expect(askAhead(watts, memory)).toEqual({ answer, ownSolves: 0, ahead: 0 });
  });

  it("leave height only the heights it finds on the way", () => {
    const { answer, ownSolves, ahead } = askAhead(height, createSolutionMemory());
    expect(answer).toEqual(finish(height.run(station, {}, context), () => undefined));
    expect(ahead).toBeGreaterThan(75);
    expect(ownSolves).toBeLessThan(25);
  });

  it("are told apart by all that they hang on", () => {
    const memory = createSolutionMemory();
    const request = { station, frequency: 7.1e6, lift: 0, mesh: undefined };
    adoptSolution(memory, request, solvePortable(request));
    const mesh = { refinement: 1, meshFrequency: 7.2e6 };
    const otherSoil = plainStation({ ...station, ground: { kind: "perfect" } });
    const all = [
      request,
      { ...request, frequency: 7.2e6 },
      { ...request, lift: 1 },
      { ...request, mesh },
      { ...request, station: otherSoil },
    ];
    expect(openRequests(memory, [...all, ...all])).toEqual(all.slice(1));
  });

  it("refuse alike", () => {
    const low = { station, frequency: 7.1e6, lift: -7.9999, mesh: undefined };
    expect(structuredClone(solvePortable(low))).toHaveProperty("refused.why");
  });
});
