import { documentOf, type SheetInput } from "./document/documentOf";
import { toHtml } from "./html/toHtml";

/** What to ask of the figures for a sheet: the printed column at the scale of print, and a phone's width. */
export const sheetFigureSizes = {
  paper: { width: 682, scale: 0.8 },
  phone: { width: 358 },
} as const;

/**
 * An answer as one self-contained HTML file. `figures` in reading order, the stage first, drawn for
 * `sheetFigureSizes.paper`; `narrowFigures`: the same by name, for `sheetFigureSizes.phone`.
 */
export const answerSheet = (input: SheetInput): string => toHtml(documentOf(input));
