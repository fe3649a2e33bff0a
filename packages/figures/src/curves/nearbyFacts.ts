/** What the figures of `nearby` read from its answer. */
import type { Answer } from "@feedpath/engine";

/** Names of the things near by, the one that changes most first. */
export function thingsOf(answer: Answer): string[] {
  const { things } = answer.parameters;
  return typeof things === "string" && things !== "" ? things.split("; ") : [];
}
