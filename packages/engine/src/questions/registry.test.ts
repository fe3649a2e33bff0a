import { describe, expect, it } from "vitest";
import { askedAs } from "../words/asking";
import { loadableQuestions, loadQuestion } from "./loading";
import { findQuestion, questions } from "./registry";

describe("questions", () => {
  it("are pointed to by the words in which they are asked", () => {
    for (const [id, words] of Object.entries(askedAs)) expect(questions.find((q) => q.id === id)?.asked).toBe(words);
  });

  it("can each be loaded by itself, and are then the same", async () => {
    expect([...loadableQuestions].sort()).toEqual(questions.map(({ id }) => id).sort());
    for (const id of loadableQuestions) expect(await loadQuestion(id)).toBe(findQuestion(id));
    expect(await loadQuestion("nothing")).toBeUndefined();
  });
});
