import type { Answer, Problem, Refusal } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import type * as z from "zod";
import { exampleAnswer } from "../fixture/exampleAnswer";
import { answerJsonSchema, answerJsonSchemaText } from "./answerJsonSchema";
import type { answerSchema, problemsSchema, refusalSchema } from "./answerSchema";
import { AnswerFormatError, parseAnswer } from "./parseAnswer";

type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } : T;
/** Fails to compile where the two types differ in either direction. */
type Same<A, B> = [A, B] extends [B, A] ? true : never;

const example = JSON.parse(JSON.stringify(exampleAnswer));

describe("answer schema", () => {
  it("has the engine's types, in both directions", () => {
    const same: [
      Same<z.infer<typeof answerSchema>, Writable<Answer>>,
      Same<z.infer<typeof refusalSchema>, Writable<Refusal>>,
      Same<z.infer<typeof problemsSchema>, Writable<{ problems: Problem[] }>>,
    ] = [true, true, true];
    expect(same).toHaveLength(3);
  });

  it("is shipped as it is now (npx vitest run packages/report -u writes it anew)", async () => {
    await expect(answerJsonSchemaText()).toMatchFileSnapshot("../../answer.schema.json");
  });

  it("offers an answer, a refusal and problems, and forbids unknown keys", () => {
    expect(answerJsonSchema()).toMatchObject({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      anyOf: [{ $ref: "#/$defs/answer" }, { $ref: "#/$defs/refusal" }, { $ref: "#/$defs/problems" }],
      $defs: { answer: { additionalProperties: false } },
    });
  });
});

describe("parseAnswer", () => {
  it("reads back what was printed", () => {
    expect(parseAnswer(JSON.stringify(example))).toEqual(example);
    const refusal = {
      schema: "feedpath-answer-1",
      question: "watts",
      asked: "Where does my power go?",
      station: "x",
      refused: { why: "a", wouldMakeItAnswerable: "b" },
    };
    expect(parseAnswer(JSON.stringify(refusal))).toEqual(refusal);
    expect(parseAnswer('{"problems":[]}')).toEqual({ problems: [] });
  });

  it.each([
    ["no JSON at all", "it is no JSON"],
    ["[1]", "expected object, received array"],
    ["7", "no JSON object"],
    [JSON.stringify({ ...example, frequency: "7.1 MHz" }), "frequency: "],
    [JSON.stringify({ ...example, schema: "feedpath-answer-9" }), "schema: "],
    [JSON.stringify({ ...example, colour: "red" }), "colour"],
    [JSON.stringify(example).replace('"frequency":7100000', '"frequency":1e999'), "frequency: "],
  ])("refuses %$", (text, told) => {
    expect(() => parseAnswer(text)).toThrow(AnswerFormatError);
    expect(() => parseAnswer(text)).toThrow(told);
  });
});
