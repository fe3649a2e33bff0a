/** What is made from an answer after it is there: formulas for the page, the sheet. Loaded when first needed. */
import type { Answer } from "@feedpath/engine";
import { figuresOf } from "@feedpath/figures";
import { answerSheet, typesetFormula } from "@feedpath/report";

/** MathML by formula, for every formula of the working. */
export function typesetWorking({ working }: Answer): Readonly<Record<string, string>> {
  const formulas = working.flatMap(({ formula, substituted }) =>
    [formula, substituted].filter((one) => one !== undefined),
  );
  return Object.fromEntries(formulas.map((formula) => [formula, typesetFormula(formula)]));
}

/** Width of the printed column and of a phone, px (docs/look.md). */
const sheetWidth = 682;
const narrowWidth = 358;

/** The answer sheet as one HTML file. */
export const makeSheet = (answer: Answer, stationText: string): string =>
  answerSheet({
    answer,
    figures: figuresOf(answer, { width: sheetWidth }),
    narrowFigures: figuresOf(answer, { width: narrowWidth }),
    stationText,
  });
