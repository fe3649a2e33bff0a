/** What is made from an answer after it is there: the depth of the page, the sheet; and the feed lines. Loaded when first needed. */
import type { Answer } from "@feedpath/engine";
import { figuresOf } from "@feedpath/figures";
import { answerSheet, type Block, documentOf, type Step, sheetFigureSizes, typesetFormula } from "@feedpath/report";
import type { Depth } from "./messages";

export { answerLines } from "./lines";

/** Blocks below the picture, and their formulas typeset. The figures and the file stay with the page. */
export function makeDepth(answer: Answer): Depth {
  const { blocks, provenance } = documentOf({ answer, figures: [], stationText: "" });
  const steps = stepsIn(blocks);
  const formulas = steps.flatMap(({ lines }) =>
    lines.flat().flatMap((piece) => (piece.kind === "result" ? [] : [piece.latex])),
  );
  return {
    blocks: blocks.filter((block) => !holdsOnlyTheFile(block)),
    steps,
    provenance,
    formulas: Object.fromEntries(formulas.map((formula) => [formula, typesetFormula(formula)])),
  };
}

function stepsIn(blocks: readonly Block[]): readonly Step[] {
  return blocks.flatMap((block) => {
    if (block.kind === "steps") return block.steps;
    if (block.kind === "section") return stepsIn(block.blocks);
    return block.kind === "columns" ? stepsIn([...block.left, ...block.right]) : [];
  });
}

const holdsOnlyTheFile = (block: Block): boolean =>
  block.kind === "section" && block.blocks.every(({ kind }) => kind === "file");

/** The answer sheet as one HTML file. */
export const makeSheet = (answer: Answer, stationText: string): string =>
  answerSheet({
    answer,
    figures: figuresOf(answer, sheetFigureSizes.paper),
    narrowFigures: figuresOf(answer, sheetFigureSizes.phone),
    stationText,
  });
