/** Lines that a station file may call by name. Loss points decide their constants; a build serves `why` and `build`. */
import { coaxialLines } from "./coaxialLines";
import type { CatalogueLine } from "./lineParts";
import { parallelLines } from "./parallelLines";

export type { CatalogueLine } from "./lineParts";

export const lineCatalogue: readonly CatalogueLine[] = [...coaxialLines, ...parallelLines];

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

/** The line of that designation as a station file writes it (capitals and extra blanks do not matter), or null. */
export const findLine = (designation: string): CatalogueLine | null =>
  lineCatalogue.find((line) => plain(line.designation) === plain(designation)) ?? null;
