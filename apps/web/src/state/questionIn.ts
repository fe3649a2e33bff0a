/** The question that a link names behind its hash, or "" where it is no text at all (a half-copied "%E0"). */
export function questionIn(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return "";
  }
}
