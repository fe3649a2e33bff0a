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

/** First letter as a capital, for the start of a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A part by its name in a sentence: "the field tuner", but "tuner 2". */
export const theName = (name: string): string => (/\d$/.test(name) ? name : `the ${name}`);

/** With a full stop at its end. */
export const ended = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

/** A remark as a whole sentence: a capital at its start, a full stop at its end. */
export const asSentence = (text: string): string => ended(capital(text));
