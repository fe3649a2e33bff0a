import type { Step } from "../document/document";
import { typesetFormula } from "../formula/typesetFormula";
import { escapeHtml } from "./escapeHtml";
import { inlinesHtml, stepId } from "./inlinesHtml";

const lineOf = (content: string): string => `<span class="piece">${content}</span>`;

/** Formula, then "= numbers put in", then "= result", each a piece that may go to the next line. */
function formulaHtml({ formula, substituted, result }: Step): string {
  const pieces = [
    ...(formula === null ? [] : [typesetFormula(formula)]),
    ...(substituted === null ? [] : [withEqualsSign(substituted, formula !== null)]),
    ...(result === null ? [] : [`<span class="n">= ${escapeHtml(result)}</span>`]),
  ];
  return pieces.length === 0 ? "" : `<div class="formula">${pieces.map(lineOf).join(" ")}</div>`;
}

/** Numbers put in may come with their own left side ("P_2 = ..."); else they continue the formula. */
function withEqualsSign(substituted: string, continues: boolean): string {
  const needed = continues && !/^\s*(=|\\approx)/.test(substituted) && !substituted.includes("=");
  return `<span class="put">${needed ? '<span class="n">=</span> ' : ""}${typesetFormula(substituted)}</span>`;
}

export function stepsHtml(steps: readonly Step[]): string {
  const items = steps.map((step, index) => {
    const source = step.source === "" ? "" : `<p class="source">${escapeHtml(step.source)}</p>`;
    return `<li id="${stepId(index + 1)}"><p>${inlinesHtml(step.says)}</p>${formulaHtml(step)}${source}</li>`;
  });
  return `<ol class="steps">${items.join("\n")}</ol>`;
}
