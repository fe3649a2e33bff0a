/** The table to take up the ladder, in large type: where the SWR was measured lowest, and what comes off or on. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, numericParameter, requiredColumn } from "../kit/answerValues";
import type { Figure, FigureTable, Mark, Role } from "../kit/figure";
import { fixedText, plainText, withUnit } from "../kit/numberText";
import { wrapText } from "../kit/textWidth";
import type { ChartOptions } from "./chartTypes";
import { megahertzText } from "./trimFacts";

/** A column of changes at one place, cm: negative is cut. */
interface Place {
  readonly says: string;
  readonly centimetres: readonly number[];
}

interface Ladder {
  readonly frequencies: readonly number[];
  readonly places: readonly Place[];
  /** Rows of the wanted frequency, and of what was measured. */
  readonly wanted: number;
  readonly measured: number | null;
}

const ladderTable = (answer: Answer): Table | null => answer.tables.find(({ name }) => name === "ladder") ?? null;

function ladderOf(answer: Answer, table: Table): Ladder {
  const frequencies = numbersOf(table, "measuredLowest");
  const said = String(answer.parameters.trimmedAt ?? "each end").split("; ");
  const names = Object.keys(table.columns).filter((name) => table.columns[name]!.unit === "cm");
  const nearest = (f: number): number =>
    frequencies.reduce((best, x, i) => (Math.abs(x - f) < Math.abs(frequencies[best]! - f) ? i : best), 0);
  const measured = numericParameter(answer, "measuredLowest");
  return {
    frequencies,
    places: names.map((name, i) => ({ says: said[i] ?? "each end", centimetres: numbersOf(table, name) })),
    wanted: nearest(answer.frequency / 1e6),
    measured: measured === null ? null : nearest(measured),
  };
}

const quarters = ["", "¼", "½", "¾"];

/** To the quarter inch a tape shows. */
function inchText(centimetres: number): string {
  const steps = Math.round((4 * Math.abs(centimetres)) / 2.54);
  const whole = Math.floor(steps / 4);
  const part = quarters[steps % 4]!;
  return withUnit(whole === 0 && part !== "" ? part : `${whole}${part}`, "in");
}

function centimetreText(centimetres: number): string {
  const size = Math.abs(centimetres);
  return withUnit(plainText(size, size < 9.95 ? 1 : 0), "cm");
}

const least = 0.05;

function actionText(centimetres: number): string {
  if (Math.abs(centimetres) < least) return "right";
  return `${centimetres < 0 ? "cut" : "add"} ${centimetreText(centimetres)}`;
}

interface Sheet {
  readonly s: number;
  readonly width: number;
  readonly size: number;
  readonly row: number;
  /** x of each place's column, and whether inches stand beside the centimetres. */
  readonly columns: readonly number[];
  readonly inches: boolean;
}

function sheetOf(width: number, s: number, places: number): Sheet {
  const roomy = width >= 420 * s;
  const size = (roomy ? 21 : places === 1 ? 18 : 16) * s;
  const first = (roomy ? 150 : 104) * s;
  const each = (width - first) / places;
  return {
    s,
    width,
    size,
    row: 1.7 * size,
    columns: Array.from({ length: places }, (_, i) => first + i * each),
    inches: places === 1 || each >= 220 * s,
  };
}

interface Style {
  readonly role: Role;
  readonly size: number;
  readonly weight: 400 | 600;
  readonly anchor: "start" | "end";
}

const textMark = (x: number, y: number, text: string, style: Style): Mark => ({
  kind: "text",
  x,
  y,
  text,
  face: "numbers",
  ...style,
});

function rowMarks(ladder: Ladder, sheet: Sheet, index: number, top: number): Mark[] {
  const { s, width, size, row, columns, inches } = sheet;
  const marked = index === ladder.measured || (ladder.measured === null && index === ladder.wanted);
  const y = top + 0.5 * row + 0.36 * size;
  const weight = marked ? 600 : 400;
  const ink: Style = { role: "ink", size, weight, anchor: "start" };
  const quiet: Style = { role: "ink2", size, weight: 400, anchor: "start" };
  const frequency = textMark(columns[0]! - 22 * s, y, fixedText(ladder.frequencies[index]!, decimalsOf(ladder)), {
    ...ink,
    anchor: "end",
  });
  const changes = ladder.places.flatMap(({ centimetres }, i): Mark[] => {
    const change = centimetres[index]!;
    const datum = { series: "changeAtEachEnd", index };
    const action = { ...textMark(columns[i]!, y, actionText(change), ink), datum };
    if (!inches || Math.abs(change) < least) return [action];
    return [action, textMark(columns[i]! + 7.2 * size, y, inchText(change), quiet)];
  });
  const field: Mark = { kind: "rect", x: 0, y: top, width, height: row, fill: { role: "rail" } };
  const stroke = { role: "hair", width: 1 * s } as const;
  const rule: Mark = { kind: "line", x1: 0, y1: top + row, x2: width, y2: top + row, stroke };
  return [...(marked ? [field] : []), rule, frequency, ...changes];
}

/** Decimals that keep the rows apart. */
function decimalsOf({ frequencies }: Ladder): number {
  const texts = frequencies.map((f) => plainText(f, 3).split(".")[1]?.length ?? 0);
  return Math.max(1, ...texts);
}

function headMarks(ladder: Ladder, { s, columns }: Sheet): Mark[] {
  const style: Style = { role: "ink2", size: 13 * s, weight: 600, anchor: "start" };
  const places = ladder.places.map(({ says }, i) => textMark(columns[i]!, 30 * s, says, style));
  const end: Style = { ...style, anchor: "end" };
  const x = columns[0]! - 22 * s;
  return [textMark(x, 14 * s, "lowest SWR", end), textMark(x, 30 * s, "at, MHz", end), ...places];
}

const manner =
  "Measure where the SWR is lowest, read its row, do two thirds of it and measure again. The first time fold back, do not cut.";

function titleOf(answer: Answer, ladder: Ladder): string {
  const at = ladder.measured ?? rowToTell(ladder);
  const changes = ladder.places.map(({ centimetres }) => centimetres[at]!);
  const [first] = changes;
  if (first === undefined || Math.abs(first) < least)
    return `Lowest at ${megahertzText(answer.frequency)} is right: the ladder for every other reading`;
  const [verb, word] = first < 0 ? ["cut", "from"] : ["add", "to"];
  const where = ladder.places.length === 1 ? ` ${word} ${ladder.places[0]!.says}` : "";
  const read = withUnit(fixedText(ladder.frequencies[at]!, decimalsOf(ladder)), "MHz");
  return `Lowest SWR at ${read}: ${verb} ${changes.map(centimetreText).join(" and ")}${where}`;
}

/** Without a measurement the row below the wanted one is the example: wires are cut too long at first. */
const rowToTell = ({ wanted }: Ladder): number => Math.max(0, wanted - 1);

function tableOf(table: Table): FigureTable {
  const words: Readonly<Record<string, string>> = {
    measuredLowest: "measured lowest",
    changeAtEachEnd: "change at each end",
    changeAtEachEndInInches: "change at each end in inches",
    changeOfFirstLeg: "change of the first leg",
    changeOfFirstLegInInches: "change of the first leg in inches",
    changeOfSecondLeg: "change of the second leg",
    changeOfSecondLegInInches: "change of the second leg in inches",
  };
  const names = Object.keys(table.columns);
  return {
    caption: "The ladder: a minus is cut, a plus is added",
    columns: names.map((name) => ({ name: words[name] ?? name, unit: requiredColumn(table, name).unit })),
    rows: numbersOf(table, "measuredLowest").map((_, row) =>
      names.map((name) => requiredColumn(table, name).values[row] ?? null),
    ),
  };
}

/** Whether the answer has a ladder to draw. */
export const hasLadder = (answer: Answer): boolean => ladderTable(answer) !== null;

/** The ladder of the answer to `trim`, for print: one row a reading. */
export function trimLadder(answer: Answer, options: ChartOptions): Figure {
  const table = ladderTable(answer);
  if (table === null) throw new Error('The answer has no table "ladder", which its figure draws.');
  const ladder = ladderOf(answer, table);
  const s = options.scale ?? 1;
  const sheet = sheetOf(options.width, s, ladder.places.length);
  const head = 40 * s;
  const rows = ladder.frequencies.flatMap((_, i) => rowMarks(ladder, sheet, i, head + i * sheet.row));
  const noteTop = head + ladder.frequencies.length * sheet.row + 10 * s;
  const note = wrapText(manner, 13 * s, options.width);
  const quiet: Style = { role: "ink2", size: 13 * s, weight: 400, anchor: "start" };
  return {
    name: "trimLadder",
    title: titleOf(answer, ladder),
    width: options.width,
    height: Math.ceil(noteTop + (note.length * 17 + 8) * s),
    scale: s,
    marks: [
      ...rows,
      ...headMarks(ladder, sheet),
      ...note.map((line, i) => textMark(0, noteTop + (14 + 17 * i) * s, line, quiet)),
    ],
    description: `A table of ${ladder.frequencies.length} rows: for each frequency at which the SWR is measured lowest, what to cut from or add to ${ladder.places.map((p) => p.says).join(" and ")} so that it is lowest at ${megahertzText(answer.frequency)}. ${manner}`,
    table: tableOf(table),
  };
}
