/** Sentences as phrases: text and numbers that can be opened. */
import type { Phrase } from "../answer/answer";

/** A number in a sentence, linked to an entry of `values`. */
export const linked = (text: string, value: string): Phrase => ({ text, value });
export const said = (text: string): Phrase => ({ text });
export const sentence = (phrases: readonly Phrase[]): string => phrases.map((p) => p.text).join("");

/** "a, b, c" as phrases. */
export function listed(items: readonly (readonly Phrase[])[]): Phrase[] {
  return items.flatMap((item, i) => (i === 0 ? item : [said(", "), ...item]));
}
