/** Lines that a station file may call by name. Loss points decide their constants; a build serves `why` and `build`. */
import type { CatalogueLine } from "./catalogueLine";
import { corrugatedAir } from "./families/corrugatedAir";
import { corrugatedFoam } from "./families/corrugatedFoam";
import { dropAndTrunk } from "./families/dropAndTrunk";
import { foam50 } from "./families/foam50";
import { openLines } from "./families/openLines";
import { commonPolyethylene50 } from "./families/polyethylene50";
import { furtherPolyethylene50 } from "./families/polyethylene50Further";
import { polyethylene75 } from "./families/polyethylene75";
import { ptfe } from "./families/ptfe";
import { windowLines } from "./families/windowLines";

export type { CatalogueLine, LineFamily, LineSource, SourcedValue } from "./catalogueLine";
export { lineFamilies } from "./catalogueLine";

/** By family, in the order of `lineFamilies`. */
export const lineCatalogue: readonly CatalogueLine[] = [
  ...commonPolyethylene50,
  ...furtherPolyethylene50,
  ...polyethylene75,
  ...ptfe,
  ...dropAndTrunk,
  ...foam50,
  ...corrugatedFoam,
  ...corrugatedAir,
  ...windowLines,
  ...openLines,
];

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

/** The line of that designation as a station file writes it (capitals and extra blanks do not matter), or null. */
export const findLine = (designation: string): CatalogueLine | null =>
  lineCatalogue.find((line) => plain(line.designation) === plain(designation)) ?? null;
