import { type Context, findQuestion, type Refusal } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { station } from "./ahead.fixture";
import { type Asked, createAnswerMemory } from "./answerMemory";

const context: Context = { program: "1", catalogue: "1", fileHash: "abc" };
const asked: Asked = { question: findQuestion("watts")!, station, parameters: { elevation: 10 }, context };
const answer = { refused: { why: "a stand-in" } } as unknown as Refusal;

describe("answers kept", () => {
  it("are found again by content", () => {
    const memory = createAnswerMemory();
    memory.set(asked, answer);
    expect(memory.get({ ...asked, station: structuredClone(station) })).toBe(answer);
  });

  it.each<[string, Partial<Asked>]>([
    ["question", { question: findQuestion("band")! }],
    ["parameter", { parameters: { elevation: 11 } }],
    ["program", { context: { ...context, program: "2" } }],
    ["catalogue", { context: { ...context, catalogue: "2" } }],
    ["file", { context: { ...context, fileHash: "abd" } }],
    [
      "assumption of the same file",
      { station: { ...station, assumptions: [{ place: "ground", name: "soil", value: "average", reason: "" }] } },
    ],
  ])("are told apart by %s", (_, change) => {
    const memory = createAnswerMemory();
    memory.set(asked, answer);
    expect(memory.get({ ...asked, ...change })).toBeUndefined();
  });

  it("take no more room than allowed", () => {
    const memory = createAnswerMemory(3 * JSON.stringify(station).length);
    memory.set(asked, answer);
    memory.set({ ...asked, parameters: {} }, answer);
    expect(memory.get(asked)).toBeUndefined();
    expect(memory.get({ ...asked, parameters: {} })).toBe(answer);
  });
});
