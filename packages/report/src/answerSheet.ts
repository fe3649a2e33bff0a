import { documentOf, type SheetInput } from "./document/documentOf";
import { toHtml } from "./html/toHtml";

/**
 * An answer as one self-contained HTML file. `figures` in reading order, the stage first, drawn 682 px wide (the
 * printed column); `narrowFigures`: the same by name, about 358 px wide, shown on phones.
 */
export const answerSheet = (input: SheetInput): string => toHtml(documentOf(input));
