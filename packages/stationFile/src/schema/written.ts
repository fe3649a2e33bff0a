/** A text read by a parser as a zod schema. */
import * as z from "zod";
import { limits } from "../reading/limits";
import type { Parsed } from "../units/fault";
import { fault, push } from "./faults";

/** A text that a parser reads. `base` is the JSON Schema side: pattern, description, examples. */
export function written<T>(base: z.ZodString, read: (text: string) => Parsed<T>, longest: number = limits.value) {
  return base.transform((text, context): T => {
    const result =
      text.length > longest
        ? ({
            ok: false,
            fault: fault(`This value has ${text.length} characters; at most ${longest} are read.`, "a shorter value"),
          } as const)
        : read(text);
    if (result.ok) return result.value;
    push(context.issues, [], "value", result.fault, text);
    return z.NEVER;
  });
}
