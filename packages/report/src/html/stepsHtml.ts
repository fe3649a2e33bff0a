import type { Step, StepPiece } from "../document/document";
import { typesetFormula } from "../formula/typesetFormula";
import { escapeHtml } from "./escapeHtml";
import { inlinesHtml, stepId } from "./inlinesHtml";

const pieceHtml = (piece: StepPiece): string =>
  piece.kind === "result"
    ? `<span class="piece n">${escapeHtml(piece.text)}</span>`
    : `<span class="piece ${piece.kind}">${typesetFormula(piece.latex)}</span>`;

/** Steps of the working as a numbered list: words, the line of formulas, source. */
export function stepsHtml(steps: readonly Step[]): string {
  const items = steps.map((step, index) => {
    const line = step.line.length === 0 ? "" : `<div class="working">${step.line.map(pieceHtml).join(" ")}</div>`;
    const source = step.source === "" ? "" : `<p class="source">${escapeHtml(step.source)}</p>`;
    return `<li id="${stepId(index + 1)}"><p>${inlinesHtml(step.says)}</p>${line}${source}</li>`;
  });
  return `<ol class="steps">${items.join("\n")}</ol>`;
}
