import type { Step, StepPiece } from "../document/document";
import { typesetFormula } from "../formula/typesetFormula";
import { escapeHtml } from "./escapeHtml";
import { inlinesHtml, stepId } from "./inlinesHtml";

const pieceHtml = (piece: StepPiece): string =>
  piece.kind === "result"
    ? `<span class="piece n">${escapeHtml(piece.text)}</span>`
    : `<span class="piece ${piece.kind}">${typesetFormula(piece.latex)}</span>`;

/** Steps of the working as a numbered list: words, lines of formulas, source. */
export function stepsHtml(steps: readonly Step[]): string {
  const items = steps.map((step, index) => {
    const lines = step.lines.map((line) => `<div class="working">${line.map(pieceHtml).join(" ")}</div>`).join("");
    const source = step.source === "" ? "" : `<p class="source">${escapeHtml(step.source)}</p>`;
    return `<li id="${stepId(index + 1)}"><p>${inlinesHtml(step.says)}</p>${lines}${source}</li>`;
  });
  return `<ol class="steps">${items.join("\n")}</ol>`;
}
