import type { Phrase } from "@feedpath/engine";
import type { Inline } from "../document/document";

const unit =
  "(?:dB\\/100\\s?m|dB\\/m|dBi|dBd|dBm|dB|[kMG]?Hz|[µmkMG]?W(?:\\/m²|\\/m)?|[mkM]?V(?:\\/c?m)?|[pnµm]?J|[mµ]?A(?:\\/m)?|[mkM]?Ω|[kM]?ohm|[mk]?S\\/m|[cmk]?m²?|ft|in|[pn]F|[nµ]H|°C|µs|ns|kg|%|°|S-units?)";
const amount = new RegExp(
  `(?<![\\p{L}\\d./_-])[−-]?\\d+(?:[.,]\\d+)*(?: × 10\\^?[−-]?\\d+)?(?: [−+±] j?\\d+(?:\\.\\d+)?)?(?:[\\s\\u00A0]?${unit}(?![\\p{L}\\d]))?(?![\\p{L}\\d]|-\\p{L})`,
  "gu",
);

/** A sentence with its numbers apart, so that each is set in the number face and never broken from its unit. */
export function inlinesOf(text: string): readonly Inline[] {
  const pieces: Inline[] = [];
  let from = 0;
  for (const match of text.matchAll(amount)) {
    if (match.index > from) pieces.push({ kind: "text", text: text.slice(from, match.index) });
    pieces.push({ kind: "number", text: match[0] });
    from = match.index + match[0].length;
  }
  if (from < text.length) pieces.push({ kind: "text", text: text.slice(from) });
  return pieces;
}

/** Phrases of an answer; a number that a step of the working explains carries that step's number. */
export function inlinesOfPhrases(
  phrases: readonly Phrase[],
  stepOf: (valueName: string) => number | undefined,
): readonly Inline[] {
  return phrases.flatMap((phrase): readonly Inline[] => {
    if (phrase.value === undefined) return inlinesOf(phrase.text);
    const step = stepOf(phrase.value);
    const kind = /\d/.test(phrase.text) ? "number" : "text";
    return [{ kind, text: phrase.text, ...(step === undefined ? {} : { step }) }];
  });
}

export const plainOf = (inlines: readonly Inline[]): string => inlines.map((inline) => inline.text).join("");

/** The same text with spaces inside an amount ("12 W") made unbreakable. */
export const gluedAmounts = (text: string): string =>
  text.replaceAll(amount, (found) => found.replaceAll(" ", "\u00A0"));
