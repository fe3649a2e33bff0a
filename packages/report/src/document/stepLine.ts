/** The line under a step of the working: formula, numbers put in, result, in pieces that each stand on one line. */
import type { WorkingStep } from "@feedpath/engine";
import { formulaPieces } from "../formula/formulaPieces";
import { formulaText } from "../formula/formulaText";
import { quantityText } from "../words/numbers";
import type { StepPiece } from "./document";

/** "L = 10 log ..." brings its left side along; "28 m × ..." goes on from the formula before it. */
function hasLeftSide(text: string): boolean {
  const [left, right] = text.split(/ [=≈] /, 2);
  return right !== undefined && !/\d/.test(left!);
}

/** True where the numbers put in end with the result already, to the digits they give. */
function endsWith(text: string, result: number): boolean {
  const last = /[=≈] (−?\d+(?:\.(\d+))?)(?: [^=≈\d]*)?$/u.exec(text);
  if (last === null) return false;
  const unit = 10 ** -(last[2]?.length ?? 0);
  return Math.abs(Number(last[1]!.replace("−", "-")) - result) <= 0.51 * unit;
}

function resultPiece(result: NonNullable<WorkingStep["result"]>, before: string | null): readonly StepPiece[] {
  const text = quantityText(result.value, result.unit, 4);
  if (before === null) return [{ kind: "result", text: `= ${text}` }];
  if (endsWith(before, result.value)) return [];
  return [{ kind: "result", text: hasLeftSide(before) ? `so ${text}` : `= ${text}` }];
}

/** Throws FormulaError where a formula leaves the LaTeX subset. */
export function stepLine({ formula, substituted, result }: WorkingStep): readonly StepPiece[] {
  const put = substituted === undefined ? null : formulaText(substituted);
  const goesOn = formula !== undefined && put !== null && !hasLeftSide(put) && !/^[=≈]/.test(put);
  const pieces = (latex: string | undefined, kind: "formula" | "put"): readonly StepPiece[] =>
    latex === undefined ? [] : formulaPieces(latex).map((piece) => ({ kind, latex: piece }));
  return [
    ...pieces(formula, "formula"),
    ...pieces(goesOn ? `= ${substituted}` : substituted, "put"),
    ...(result === undefined ? [] : resultPiece(result, put)),
  ];
}
