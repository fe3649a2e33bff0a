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

function resultPiece(result: NonNullable<WorkingStep["result"]>, before: string | null): readonly StepPiece[] {
  const text = quantityText(result.value, result.unit, 4);
  if (before === null) return [{ kind: "result", text: `= ${text}` }];
  if (givesAlready(before, result.value)) return [];
  return [{ kind: "result", text: hasLeftSide(before) ? `so ${text}` : `= ${text}` }];
}

/** Numbers with a left side of their own start a line of their own. Throws FormulaError outside the LaTeX subset. */
export function stepLines({ formula, substituted, result }: WorkingStep): readonly (readonly StepPiece[])[] {
  const put = substituted === undefined ? null : formulaText(substituted);
  const apart = put !== null && hasLeftSide(put);
  const goesOn = formula !== undefined && put !== null && !apart && !/^[=≈]/.test(put);
  const pieces = (latex: string | undefined, kind: "formula" | "put"): readonly StepPiece[] =>
    latex === undefined ? [] : formulaPieces(latex).map((piece) => ({ kind, latex: piece }));
  const before = pieces(formula, "formula");
  const after = [
    ...pieces(goesOn ? `= ${substituted}` : substituted, "put"),
    ...(result === undefined ? [] : resultPiece(result, put)),
  ];
  const lines = apart ? [before, after] : [[...before, ...after]];
  return lines.filter((line) => line.length > 0);
}
