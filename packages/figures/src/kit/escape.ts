const replacements: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text made harmless for SVG and HTML, in content and in quoted attributes; control characters XML forbids are dropped. */
export const escapeText = (text: string): string =>
  [...text]
    .filter((character) => character >= " " || character === "\n" || character === "\t")
    .map((character) => replacements[character] ?? character)
    .join("");
