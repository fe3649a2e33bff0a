import type { Answer, Refusal } from "@feedpath/engine";
import { answerSchema, type ProblemsDocument, problemsSchema, refusalSchema } from "./answerSchema";

/** A text is not an answer of this version; the message names the first places that do not fit. */
export class AnswerFormatError extends Error {
  constructor(what: string) {
    super(`this is not a Feedpath answer: ${what}. Expected the text that "feedpath ask ... --json" printed`);
    this.name = "AnswerFormatError";
  }
}

const mostPlacesTold = 3;

/** Reads back what `--json` printed. Throws AnswerFormatError where the text is anything else. */
export function parseAnswer(text: string): Answer | Refusal | ProblemsDocument {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw new AnswerFormatError(`it is no JSON (${error instanceof Error ? error.message : String(error)})`);
  }
  if (typeof data !== "object" || data === null) throw new AnswerFormatError("it holds no JSON object");
  const schema = "problems" in data ? problemsSchema : "refused" in data ? refusalSchema : answerSchema;
  const read = schema.safeParse(data);
  if (read.success) return read.data;
  const places = read.error.issues.map((issue) => `${issue.path.join(".") || "the whole"}: ${issue.message}`);
  const more = places.length > mostPlacesTold ? `; and ${places.length - mostPlacesTold} more` : "";
  throw new AnswerFormatError(places.slice(0, mostPlacesTold).join("; ") + more);
}
