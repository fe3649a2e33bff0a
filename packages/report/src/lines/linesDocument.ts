/** A comparison of lines as a document: which line, the picture of their losses, the tables, where every value comes from. */
import type { Figure } from "@feedpath/figures";
import type { Block, Document, DocumentTable } from "../document/document";
import { inlinesOf } from "../words/inlines";
import { frequencyText } from "../words/numbers";
import type { LineComparison, LineRow } from "./compareLines";
import { lengthText, linesTables, lossTable } from "./linesTable";
import type { LineUnits } from "./units";

export interface LinesInput {
  readonly comparison: LineComparison;
  readonly units: LineUnits;
  /** Figure of the losses and the same for a phone's width; null where too many lines are listed to draw. */
  readonly figure: Figure | null;
  readonly narrowFigure: Figure | null;
  /** "Worked out by Feedpath 0.1.0, catalogue 3." */
  readonly worked: string;
}

/** What a person must know to read the tables. */
export const linesCaution =
  "Matched loss of new lines at 20 °C, from sheets and dimensions: a real line may differ by the ranges its sources give, and cable sold under an old name need not meet the old sheet. Voltages and bends are what sheets give, not what a damaged or wet line stands. A dash: not known, or no line at that frequency.";

const inlines = (text: string) => inlinesOf(text);

const sourceLine = ({ value, source, status }: LineRow["sources"][number]) => [
  ...inlines(`${value}: ${source} `),
  { kind: "quiet" as const, text: `(${status})` },
];

function sourceSection(row: LineRow): Block {
  const notes = row.notes.map((note) => inlines(note));
  return {
    kind: "section",
    title: row.designation,
    blocks: [
      ...(row.about === "" ? [] : [{ kind: "paragraph" as const, inlines: inlines(row.about) }]),
      { kind: "list", items: [...notes, ...row.sources.map(sourceLine)] },
    ],
  };
}

/** Its message stands above as the headline: here it says what is drawn. */
const pictureBlock = (figure: Figure, narrow: Figure | null): Block => ({
  kind: "figure",
  figure: { ...figure, title: "Matched loss over the frequencies" },
  narrow,
  titled: true,
});

const tableSection = (table: DocumentTable): Block => ({
  kind: "section",
  title: table.caption,
  blocks: [{ kind: "table", table }],
});

function asked({ at: hertz, length, rows }: LineComparison, units: LineUnits): string {
  const at = frequencyText(hertz);
  const run = length === null ? "" : `, ${lengthText(length, units)} long`;
  return rows.length === 1
    ? `What is this feed line, at ${at}${run}?`
    : `How do these feed lines compare, at ${at}${run}?`;
}

/** The document that `toHtml` and `toMarkdown` write. */
export function linesDocument(input: LinesInput): Document {
  const { comparison, units, figure, narrowFigure } = input;
  const { rows, frequencies, at } = comparison;
  const title = rows.length === 1 ? rows[0]!.designation : `${rows.length} feed lines`;
  const sentence = figure?.title ?? `${title}, at ${frequencyText(at)}`;
  return {
    language: "en",
    title: `${title} · Feedpath`,
    kind: "feed lines",
    running: title,
    asked: asked(comparison, units),
    headline: inlines(`${sentence}.`),
    verdict: { word: null, says: [] },
    next: null,
    blocks: [
      ...(figure ? [pictureBlock(figure, narrowFigure)] : []),
      ...linesTables(comparison, units).map(tableSection),
      ...(frequencies.length > 0 ? [tableSection(lossTable(comparison, units))] : []),
      { kind: "paragraph", inlines: inlines(linesCaution) },
      ...rows.map(sourceSection),
    ],
    provenance: { worked: input.worked, check: "" },
  };
}
