import * as z from "zod";
import { answerSchema, problemsSchema, refusalSchema } from "./answerSchema";

const printed = z.union([answerSchema, refusalSchema, problemsSchema]).meta({
  title: "Feedpath answer, version 1",
  description: "The one JSON document that `feedpath ask ... --json` prints: an answer, a refusal, or problems.",
});

/** JSON Schema (draft 2020-12) of what `--json` prints, as a plain object. */
export function answerJsonSchema(): object {
  return z.toJSONSchema(printed, { target: "draft-2020-12" });
}

/** The text of the shipped file answer.schema.json. */
export const answerJsonSchemaText = (): string => `${JSON.stringify(answerJsonSchema(), null, 2)}\n`;
