/** Where a long line of formulas may go on in a new line: before "=" and "≈", and after a comma, outside all brackets. */
const token = /\\[A-Za-z]+|\\.|./gsu;
const deeper = new Set(["{", "(", "[", "\\left"]);
const shallower = new Set(["}", ")", "]", "\\right"]);
const relations = new Set(["=", "\\approx", "\\to"]);
const blank = /^(\s|\\[,;: ]|\\quad|~)+|(\s|\\[,;: ]|\\quad|~)+$/g;

/** A formula cut into pieces that each stand on one line; joined again they are the formula. */
export function formulaPieces(latex: string): readonly string[] {
  const pieces = [""];
  let depth = 0;
  let sized = false;
  let related = false;
  for (const [found] of latex.matchAll(token)) {
    // The bracket after \left or \right belongs to that command and is no step of its own.
    const step = sized ? 0 : deeper.has(found) ? 1 : shallower.has(found) ? -1 : 0;
    sized = found === "\\left" || found === "\\right";
    depth += step;
    if (depth === 0 && relations.has(found)) {
      if (related) pieces.push("");
      related = true;
    }
    pieces[pieces.length - 1] += found;
    if (depth === 0 && found === ",") {
      pieces.push("");
      related = false;
    }
  }
  return pieces.map((piece) => piece.replaceAll(blank, "")).filter((piece) => piece !== "");
}
