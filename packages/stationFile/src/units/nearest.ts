import { distance } from "fastest-levenshtein";
import { wordForSaid } from "./askersWords";

/** Longest word that is compared: the edit distance grows with the product of the lengths. */
const longestWord = 40;
/** Most words that are compared with one. */
const mostWords = 300;

/**
 * The valid word nearest to a written one by edit distance, or null when none is near (more than a third of the
 * letters, at least two, would change). Case counts for nothing here: "mhz" is nearest to "MHz". What people call a
 * thing otherwise is nearest to its word here: "coax" to "line".
 */
export function nearestWord(written: string, words: readonly string[]): string | null {
  if (written === "" || written.length > longestWord || words.length === 0) return null;
  const folded = written.toLowerCase();
  const same = words.find((word) => word.toLowerCase() === folded);
  if (same !== undefined) return same;
  const meant = wordForSaid(written, words);
  if (meant !== null) return meant;
  const allowed = Math.max(written.length > 2 ? 2 : 1, Math.floor(written.length / 3));
  let best: { readonly word: string; readonly steps: number; readonly shared: number } | null = null;
  for (const word of words.slice(0, mostWords)) {
    const steps = distance(folded, word.toLowerCase());
    const shared = sharedStart(folded, word.toLowerCase());
    const nearer = best === null || steps < best.steps || (steps === best.steps && shared > best.shared);
    if (steps <= allowed && steps < word.length && nearer) best = { word, steps, shared };
  }
  return best?.word ?? null;
}

/** Letters that two words have in common from their start: decides between words equally near. */
function sharedStart(a: string, b: string): number {
  let shared = 0;
  while (shared < a.length && a[shared] === b[shared]) shared++;
  return shared;
}

/** "a, b or c". */
export function orList(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}

/** A list of the owner's names short enough to read. */
export const someOf = (names: readonly string[]): string => {
  const first = names.slice(0, 12).map(shown).join(", ");
  return names.length > 12 ? `${first} and ${names.length - 12} more` : first;
};

/** Text cut to a length fit for a message, with its control characters shown as spaces. */
export function shown(text: string): string {
  const flat = text.replace(/[\p{Cc}\p{Zl}\p{Zp}\uFFFD]+/gu, " ");
  return flat.length > 60 ? `${flat.slice(0, 57)}...` : flat;
}
