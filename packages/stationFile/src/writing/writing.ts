/** What the writers share: trees of texts, and which values the file itself gave. */
import type { Assumption, LineEntry } from "@feedpath/engine";

export type Leaf = string | undefined | readonly Leaf[] | { readonly [key: string]: Leaf };
export type Branch = { readonly [key: string]: Leaf };

export interface Writing {
  /** Lines that the file describes by name. */
  readonly lines: readonly LineEntry[];
  /** The leaf, or nothing where the reader filled this place of the station in. */
  readonly given: (place: string, leaf: Leaf) => Leaf;
}

export function writing(assumptions: readonly Assumption[], lines: readonly LineEntry[] = []): Writing {
  const filled = new Set(assumptions.map((assumption) => assumption.place));
  return { lines, given: (place, leaf) => (filled.has(place) ? undefined : leaf) };
}

/** A map without the keys that hold nothing. */
export const present = (branch: Branch): Branch =>
  Object.fromEntries(Object.entries(branch).filter(([, leaf]) => leaf !== undefined));
