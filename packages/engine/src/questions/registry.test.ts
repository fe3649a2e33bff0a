import { describe, expect, it } from "vitest";
import { askedAs } from "../words/asking";
import { questions } from "./registry";

describe("questions", () => {
  it("are pointed to by the words in which they are asked", () => {
    for (const [id, words] of Object.entries(askedAs)) expect(questions.find((q) => q.id === id)?.asked).toBe(words);
  });
});
