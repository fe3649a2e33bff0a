import temml from "temml";
import { readFormula } from "./readFormula";

/**
 * A formula as a MathML element (display style), ready to stand in a page.
 * Throws FormulaError where the formula leaves the subset of symbols.ts: so neither macros nor links nor styles
 * can come in with an answer that a stranger wrote.
 */
export function typesetFormula(latex: string): string {
  readFormula(latex);
  return temml.renderToString(latex, { displayMode: true, throwOnError: true, strict: true, trust: false });
}
