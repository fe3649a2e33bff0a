import { questions } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { findQuestions, saidWords } from "./saidWords";

const ids = (said: string) => findQuestions(questions, said).map(({ id }) => id);

describe("finding a question by what was noticed", () => {
  it("has words for exactly the questions there are", () => {
    expect(Object.keys(saidWords).sort()).toEqual(questions.map(({ id }) => id).sort());
  });

  it("puts the question first that shares most words", () => {
    expect(ids("my SWR is high at the band edge")[0]).toBe("band");
    expect(ids("raise the tower")[0]).toBe("height");
    expect(ids("75 ohm television cable")[0]).toBe("line");
    expect(ids("weak signal")[0]).toBe("watts");
  });

  it("finds all for nothing said, and none for words nobody knows", () => {
    expect(ids("")).toHaveLength(questions.length);
    expect(ids("is it my")).toHaveLength(questions.length);
    expect(ids("xyzzy")).toEqual([]);
  });
});
