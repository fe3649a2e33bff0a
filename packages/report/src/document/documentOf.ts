import { type Answer, significantNumber } from "@feedpath/engine";
import type { Figure } from "@feedpath/figures";
import { inlinesOfPhrases, plainOf } from "../words/inlines";
import { capitalised } from "../words/names";
import { frequencyText } from "../words/numbers";
import { visibleLine, visibleText } from "../words/visible";
import { careSection, readingsSection, reasonsSection, restsOnSection, uncertaintySection } from "./basis";
import type { Block, Document } from "./document";
import { figureBlocks } from "./figureBlocks";
import { jointsTable, wattsTable } from "./resultTables";
import { valuesTable } from "./valuesTable";
import { ideaSection, rulesSection, stepOfValue, workingSection } from "./workingBlocks";

/** The pieces of a sheet: `narrowFigures` are the same figures, by name, drawn for a phone's width. */
export interface SheetInput {
  readonly answer: Answer;
  readonly figures: readonly Figure[];
  readonly narrowFigures?: readonly Figure[];
  readonly stationText: string;
}

/** The check of the powers stands by itself at the end of the line. */
const balance = "power balance";

function provenanceOf(answer: Answer): Document["provenance"] {
  const { program, catalogue, kernels, file, methods } = answer.provenance;
  const residue = answer.values.powerBalanceResidue;
  const closes = residue !== undefined && "value" in residue && residue.value !== null ? Math.abs(residue.value) : null;
  const told = methods.filter((method) => closes === null || method.name !== balance);
  return {
    worked: visibleLine(
      [
        `Worked out by Feedpath ${program}, catalogue ${catalogue}, ${kernels}, file ${file.slice(0, 12)}.`,
        ...told.map((method) => `${capitalised(method.name)}: ${method.says}.`),
      ].join(" "),
    ),
    check: closes === null ? "" : `${balance} within ${significantNumber(closes * 100, 1)} %`,
  };
}

/** Station, band where it has a name, frequency where the answer is for one. */
export const placeOf = ({ station, band, frequency }: Answer): readonly string[] =>
  [station, band, frequency > 0 ? frequencyText(frequency) : ""].filter((text) => text !== "");

/** What is to be done, where the sentence after the verdict does not say it already. */
function nextOf(answer: Answer): string | null {
  const said = answer.verdictPhrases.map((phrase) => phrase.text).join("");
  return answer.next === "" || said.includes(answer.next.replace(/\.$/, "")) ? null : visibleLine(answer.next);
}

const present = (blocks: readonly (Block | null)[]): readonly Block[] => blocks.filter((block) => block !== null);

/** An answer in reading order: question, headline, verdict, pictures, then depth, tables, the file, provenance. */
export function documentOf({ answer, figures, narrowFigures = [], stationText }: SheetInput): Document {
  const stepOf = stepOfValue(answer.working);
  const station = visibleLine(answer.station);
  const headline = inlinesOfPhrases(answer.headlinePhrases, stepOf);
  return {
    language: "en",
    title: `${visibleLine(plainOf(headline))} ${station}`,
    running: visibleLine(placeOf(answer).join(" · ")),
    asked: visibleLine(answer.asked),
    headline,
    verdict: { word: answer.verdict, says: inlinesOfPhrases(answer.verdictPhrases, stepOf) },
    next: nextOf(answer),
    blocks: [
      ...figureBlocks(figures, narrowFigures),
      {
        kind: "columns",
        left: present([
          workingSection(answer.working),
          ideaSection(answer.mistakenIdea),
          rulesSection(answer),
          wattsTable(answer),
        ]),
        right: present([
          restsOnSection(answer),
          careSection(answer),
          reasonsSection(answer),
          readingsSection(answer.readings),
        ]),
      },
      ...present([jointsTable(answer.joints), uncertaintySection(answer), valuesTable(answer)]),
      { kind: "section", title: "The station, as a file", blocks: [{ kind: "file", text: visibleText(stationText) }] },
    ],
    provenance: provenanceOf(answer),
  };
}
