/** The lines under a step of the working: formula, numbers put in, result, in pieces that each stand on one line. */
import type { WorkingStep } from "@feedpath/engine";
import { formulaPieces } from "../formula/formulaPieces";
import { formulaText, withoutBracketed } from "../formula/formulaText";
import { quantityText } from "../words/numbers";
import type { StepPiece } from "./document";

/** "L = 10 log ..." and "G(20°) = ..." bring their left side along; "28 m × ..." goes on from the formula before it. */
function hasLeftSide(text: string): boolean {
  const [left, right] = text.split(/ [=≈] /, 2);
  return right !== undefined && !/\d/.test(withoutBracketed(left!));
}

/** True where the numbers put in give the result already, to the digits they give. */
function givesAlready(text: string, result: number): boolean {
  return [
    ...text.matchAll(/[=≈] (−?\d+(?:\.(\d+))?)(?= [^\d+−×·/=]*(?:$|[,=≈]))|[=≈] (−?\d+(?:\.(\d+))?)(?=$|,)/gu),
  ].some(([, spaced, spacedDecimals, last, lastDecimals]) => {
    const unit = 10 ** -((spacedDecimals ?? lastDecimals)?.length ?? 0);
    return Math.abs(Number((spaced ?? last)!.replace("−", "-")) - result) <= 0.51 * unit;
  });
}

/** Nothing is called equal that is not: only numbers that go on from a formula lead to "= result". */
function resultPieces({ formula, result }: WorkingStep, put: string | null, goesOn: boolean): readonly StepPiece[] {
  if (result === undefined || (put !== null && givesAlready(put, result.value))) return [];
  const sign = goesOn ? "= " : formula === undefined && put === null ? "" : "so ";
  return [{ kind: "result", text: sign + quantityText(result.value, result.unit, 4) }];
}

/**
 * Numbers go on from a formula with "="; with a left side of their own, or after several formulas, they start a line.
 * Throws FormulaError outside the LaTeX subset.
 */
export function stepLines(step: WorkingStep): readonly (readonly StepPiece[])[] {
  const { formula, substituted } = step;
  const pieces = (latex: string | undefined, kind: "formula" | "put"): readonly StepPiece[] =>
    latex === undefined ? [] : formulaPieces(latex).map((piece) => ({ kind, latex: piece }));
  const put = substituted === undefined ? null : formulaText(substituted);
  const before = pieces(formula, "formula");
  const several = before.some((piece) => piece.kind !== "result" && piece.latex.endsWith(","));
  const goesOn = formula !== undefined && put !== null && !several && !hasLeftSide(put);
  const after = [
    ...pieces(goesOn && !/^[=≈]/.test(put) ? `= ${substituted}` : substituted, "put"),
    ...resultPieces(step, put, goesOn),
  ];
  const lines = goesOn || put === null ? [[...before, ...after]] : [before, after];
  return lines.filter((line) => line.length > 0);
}
