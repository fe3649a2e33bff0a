import { closest, distance } from "fastest-levenshtein";

/** Longest word that is compared: the edit distance grows with the product of the lengths. */
const longestWord = 40;
/** Most words that are compared with one. */
const mostWords = 300;

/**
 * The valid word nearest to a written one by edit distance, or null when none is near (more than a third of the
 * letters, at least two, would change). Case counts for nothing here: "mhz" is nearest to "MHz".
 */
export function nearestWord(written: string, words: readonly string[]): string | null {
  if (written === "" || written.length > longestWord || words.length === 0) return null;
  const folded = written.toLowerCase();
  const same = words.find((word) => word.toLowerCase() === folded);
  if (same !== undefined) return same;
  const nearest = closest(
    folded,
    words.slice(0, mostWords).map((word) => word.toLowerCase()),
  );
  const allowed = Math.max(written.length > 2 ? 2 : 1, Math.floor(written.length / 3));
  if (distance(folded, nearest) > allowed || nearest.length <= distance(folded, nearest)) return null;
  return words.find((word) => word.toLowerCase() === nearest) ?? null;
}

/** "a, b or c". */
export function orList(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}

/** A list of the owner's names short enough to read. */
export const someOf = (names: readonly string[]): string =>
  names.length > 12
    ? `${names.slice(0, 12).map(shown).join(", ")} and ${names.length - 12} more`
    : orList(names.map(shown));

/** Text cut to a length fit for a message, with its control characters shown as spaces. */
export function shown(text: string): string {
  const flat = text.replace(/[\p{Cc}\p{Zl}\p{Zp}\uFFFD]+/gu, " ");
  return flat.length > 60 ? `${flat.slice(0, 57)}...` : flat;
}
