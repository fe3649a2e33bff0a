/**
 * Characters that change how text is shown without being seen: control characters (terminal sequences start with
 * one), and the marks that turn the reading direction. A station file may come from a stranger, so they are written out.
 */
const unseen = /(?![\n\t])\p{Cc}|[\u061C\u200B\u200E\u200F\u2028-\u202E\u2060-\u2069\uFEFF\uFFF9-\uFFFB]/gu;

/** Text in which every control or direction character stands as "‹U+202E›"; line feeds and tabs stay. */
export function visibleText(text: string): string {
  return text
    .replaceAll(/\p{Surrogate}/gu, "\uFFFD")
    .replaceAll("\r\n", "\n")
    .replaceAll(unseen, (c) => `‹U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}›`);
}

/** The same on one line: for titles and names, which must not start lines of their own. */
export const visibleLine = (text: string): string => visibleText(text).replaceAll(/[\n\t]+/g, " ");
