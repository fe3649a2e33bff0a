import temml from "temml";
import { readFormula } from "./readFormula";
import { functionNames } from "./symbols";

/** A thing right before a function's name, which the typesetter leaves without a space between. */
const thingBeforeFunction = new RegExp(
  `([A-Za-z0-9}])\\s*(${[...functionNames].map((name) => `\\${name}`).join("|")})(?![A-Za-z])`,
  "g",
);

/**
 * A formula as a MathML element (display style), ready to stand in a page.
 * Throws FormulaError where the formula leaves the subset of symbols.ts: so neither macros nor links nor styles
 * can come in with an answer that a stranger wrote.
 */
export function typesetFormula(latex: string): string {
  readFormula(latex);
  return temml.renderToString(latex.replaceAll(thingBeforeFunction, "$1\\,$2"), {
    displayMode: true,
    throwOnError: true,
    strict: true,
    trust: false,
  });
}
