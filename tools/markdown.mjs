// What the tests of the documents read out of a Markdown page.

const fence = /^```(\w*)\n([\s\S]*?)^```/gm;

/**
 * Lines of the shell blocks (```sh), comments taken off.
 * @param {string} text @returns {string[]}
 */
export function shellLines(text) {
  const blocks = [...text.matchAll(fence)].filter(([, language]) => language === "sh").map(([, , body]) => body);
  return blocks
    .flatMap((body) => body.split("\n"))
    .map((line) => line.replace(/\s+#.*$/, "").trim())
    .filter((line) => line !== "" && !line.startsWith("#"));
}

/**
 * Words in code type, fenced blocks left out.
 * @param {string} text @returns {string[]}
 */
export const codeWords = (text) => [...text.replace(fence, "").matchAll(/`([^`\n]+)`/g)].map(([, word]) => word);

/**
 * Targets of links that stay inside the repository, without their anchors.
 * @param {string} text @returns {string[]}
 */
export const localLinks = (text) =>
  [...text.replace(fence, "").matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target]) => target.replace(/#.*$/, ""))
    .filter((target) => target !== "" && !/^[a-z]+:/.test(target));
