import type { Document } from "../document/document";
import { inlinesHtml } from "./inlinesHtml";

const filledOf = { good: 3, workable: 2, trouble: 1 } as const;

/** Three small blocks, filled 3, 2 or 1, always with the word; nothing where there is nothing to judge. */
function mark(word: keyof typeof filledOf): string {
  const blocks = [0, 1, 2].map(
    (k) =>
      `<rect x="${k * 10 + 0.5}" y="0.5" width="7" height="11" fill="${k < filledOf[word] ? "#171c20" : "none"}" stroke="#171c20"/>`,
  );
  return `<span class="mark"><svg width="30" height="12" viewBox="0 0 30 12" aria-hidden="true">${blocks.join("")}</svg> ${word}</span>`;
}

export function verdictHtml({ word, says }: Document["verdict"]): string {
  if (word === null && says.length === 0) return "";
  return `<p class="verdict">${word === null ? "" : `${mark(word)} `}<span>${inlinesHtml(says)}</span></p>`;
}
