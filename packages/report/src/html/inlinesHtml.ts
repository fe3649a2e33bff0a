import type { Inline } from "../document/document";
import { escapeHtml } from "./escapeHtml";

/** Identifier of a step of the working, which a number can open. */
export const stepId = (step: number): string => `step-${step}`;

function inlineHtml({ kind, text, step }: Inline): string {
  const shown = escapeHtml(text);
  if (kind === "text") return shown;
  if (kind === "strong") return `<strong>${shown}</strong>`;
  if (kind === "idea") return `<em>${shown}</em>`;
  if (kind === "quiet") return `<span class="quiet">${shown}</span>`;
  if (step === undefined) return `<span class="n">${shown}</span>`;
  return `<a class="n" href="#${stepId(step)}">${shown}</a>`;
}

export const inlinesHtml = (inlines: readonly Inline[]): string => inlines.map(inlineHtml).join("");
