import type { Inline } from "../document/document";
import { escapeHtml } from "./escapeHtml";

/** Identifier of a step of the working, which a number can open. */
export const stepId = (step: number): string => `step-${step}`;

function inlineHtml({ kind, text, step }: Inline): string {
  const shown = escapeHtml(text);
  if (kind === "strong") return `<strong>${shown}</strong>`;
  if (kind === "idea") return `<em>${shown}</em>`;
  if (kind === "quiet") return `<span class="quiet">${shown}</span>`;
  const numeric = kind === "number" ? ' class="n"' : "";
  if (step !== undefined) return `<a${numeric} href="#${stepId(step)}">${shown}</a>`;
  return kind === "number" ? `<span${numeric}>${shown}</span>` : shown;
}

export const inlinesHtml = (inlines: readonly Inline[]): string => inlines.map(inlineHtml).join("");
