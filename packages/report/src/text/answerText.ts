import type { Answer, WorkingStep } from "@feedpath/engine";
import { mattersMost } from "../document/basis";
import type { StepPiece } from "../document/document";
import { placeOf } from "../document/documentOf";
import { jointRows, wattsRows } from "../document/resultTables";
import { stepLines } from "../document/stepLines";
import { toldTogether } from "../document/toldTogether";
import { weightiestFirst } from "../document/weightiestFirst";
import { formulaText } from "../formula/formulaText";
import { capitalised } from "../words/names";
import { numberText } from "../words/numbers";
import { visibleLine } from "../words/visible";
import { tableText, textWidth, titled, wrapped } from "./layout";
import { sweptRows } from "./sweptTable";

/** Cuts through the pattern are for pictures: hundreds of angles say nothing in a terminal. */
const patternAxes: ReadonlySet<string> = new Set(["elevation", "azimuth"]);

const bullet = (text: string): string => wrapped(visibleLine(text), "  - ");

/** Spaces inside a piece hold together, so that lines break between pieces only, where the piece is short enough. */
function pieceText(piece: StepPiece): string {
  const text = piece.kind === "result" ? piece.text : formulaText(piece.latex);
  return text.length > textWidth - 10 ? text : text.replaceAll(" ", "\u00A0");
}

function stepText(step: WorkingStep, index: number): string {
  return [
    wrapped(visibleLine(step.text), `  ${index + 1}. `.padEnd(5), "     "),
    ...stepLines(step).map((line) => wrapped(line.map(pieceText).join(" "), "       ")),
    ...(step.source === "" ? [] : [wrapped(`source: ${visibleLine(step.source)}`, "     ")]),
  ].join("\n");
}

function head(answer: Answer): readonly string[] {
  const says = answer.verdictPhrases.map((phrase) => phrase.text).join("");
  const verdict = visibleLine(answer.verdict === null ? says : `${answer.verdict}: ${says}`);
  const next = answer.next === "" || says.includes(answer.next.replace(/\.$/, "")) ? [] : [`Next: ${answer.next}`];
  return [
    wrapped(visibleLine(`${answer.asked} ${placeOf(answer).join(", ")}`)),
    [answer.headline, verdict, ...next.map(visibleLine)]
      .filter((line) => line !== "")
      .map((line) => wrapped(visibleLine(line)))
      .join("\n"),
  ];
}

function tables(answer: Answer): readonly string[] {
  const watts = wattsRows(answer);
  const swept = answer.tables.filter((table) => !patternAxes.has(table.axis)).map(sweptRows);
  return [
    ...swept.map(({ table, leftOut }) =>
      [capitalised(table.caption), tableText(table), ...(leftOut === null ? [] : [`  ${leftOut}`])].join("\n"),
    ),
    ...(watts === null ? [] : [`${watts.caption}\n${tableText(watts)}`]),
    ...(answer.joints.length === 0 ? [] : [`At each joint\n${tableText(jointRows(answer.joints))}`]),
  ];
}

function basis(answer: Answer): readonly string[] {
  const most = mattersMost(answer);
  const lines = [
    ...(most === null ? [] : [wrapped(`Matters most: ${most}`, "  ")]),
    ...(answer.wouldSettle === null ? [] : [wrapped(`Would settle it: ${visibleLine(answer.wouldSettle)}`, "  ")]),
    ...toldTogether(weightiestFirst(answer)).map((a) => bullet(`${a.name}: ${a.value} (${a.reason})`)),
  ];
  return titled("What it rests on", lines);
}

function explained(answer: Answer): readonly string[] {
  const idea = answer.mistakenIdea;
  return [
    ...titled("How it was worked out", answer.working.map(stepText)),
    ...(idea === null
      ? []
      : titled("The idea this corrects", [
          wrapped(`“${visibleLine(idea.idea).replace(/^[“"]|[”"]$/g, "")}”`, "  "),
          wrapped(visibleLine(idea.refutation), "  "),
        ])),
    ...titled(
      "Rules of thumb",
      answer.rulesOfThumb.map((r) =>
        bullet(`${r.rule}: ${r.ruleValue}; computed here: ${r.computed}. Holds: ${r.holds} (${r.source}).`),
      ),
    ),
  ];
}

function judgement(answer: Answer): readonly string[] {
  const reasons = answer.reasons.map((r) => bullet(`${r.says}; limit ${numberText(r.limit)} ${r.unit} (${r.source}).`));
  return [
    ...titled("Care, and what is not covered", [...answer.cautions, ...answer.notCovered].map(bullet)),
    ...(answer.verdict === null ? [] : titled(`Why it is called ${answer.verdict}`, reasons)),
    ...titled(
      "Your readings",
      answer.readings.map((reading) => bullet(reading.says)),
    ),
  ];
}

/**
 * An answer as plain text for a terminal of 80 columns, in the order of the sheet, without colour codes; control
 * characters of the file are written out. A formula that does not break may be longer than a line.
 * Throws FormulaError where a formula leaves the LaTeX subset of formula/symbols.ts.
 */
export function answerText(answer: Answer): string {
  const blocks = [...head(answer), ...tables(answer), ...explained(answer), ...basis(answer), ...judgement(answer)];
  return `${blocks.join("\n\n")}\n`;
}
