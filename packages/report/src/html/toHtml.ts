import type { Document } from "../document/document";
import { blocksHtml } from "./blocksHtml";
import { escapeHtml } from "./escapeHtml";
import { inlinesHtml } from "./inlinesHtml";
import { sheetStyle } from "./sheetStyle";
import { verdictHtml } from "./verdictHtml";

/** Nothing may be fetched, run, sent or framed; only the style sheet inside the file applies. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The mark beside the name: a ribbon of power, part of it falling as heat, the rest becoming field. */
const brandMark =
  '<svg viewBox="0 0 34 20" aria-hidden="true"><path d="M0 2h16v12H0z" fill="#0072b2"/><path d="M16 2h18v8H16z" fill="#b5618f"/>' +
  '<path d="M16 12h5a5 5 0 0 1 5 5v3" fill="none" stroke="#d55e00" stroke-width="4"/></svg>';

const leftOut = "The numbers behind the pictures, and every value, are in the file from which this was printed.";

const hasFolded = (document: Document): boolean => document.blocks.some((block) => block.kind === "folded");

/**
 * One self-contained HTML page: no script, no reference to anything outside, light on every system, made for
 * reading on screen and phone and for printing on A4 and Letter. Every text of the document is escaped.
 * Throws FormulaError where a formula leaves the LaTeX subset of formula/symbols.ts.
 */
export function toHtml(document: Document): string {
  const { title, kind = "answer sheet", running, asked, headline, verdict, next, blocks, provenance } = document;
  const check = provenance.check === "" ? "" : `<p>${escapeHtml(provenance.check)}</p>`;
  return `<!DOCTYPE html>
<html lang="${document.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="only light">
<meta name="referrer" content="no-referrer">
<title>${escapeHtml(title)}</title>
<style>
${sheetStyle}
</style>
</head>
<body>
<div class="sheet">
<header class="top"><span class="brand">${brandMark}Feedpath</span><span class="running">${escapeHtml(kind)} · <bdi>${escapeHtml(running)}</bdi></span></header>
<main>
<p class="asked">${escapeHtml(asked)}</p>
<h1>${inlinesHtml(headline)}</h1>
${verdictHtml(verdict)}
${next === null ? "" : `<p class="next"><strong>Next:</strong> ${escapeHtml(next)}</p>`}
${blocksHtml(blocks, "")}
</main>
<footer class="foot"><p>${escapeHtml(provenance.worked)}</p>${check}${hasFolded(document) ? `<p class="paper">${leftOut}</p>` : ""}</footer>
</div>
</body>
</html>
`;
}
