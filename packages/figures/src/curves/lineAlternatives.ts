/** What else could be done than laying another line, as bars: watts into the antenna in the band of the answer. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { fixedText, metresText, swrText, wholeWattsText, withUnit } from "../kit/numberText";
import type { ChartOptions } from "./chartTypes";
import { barRows } from "./lineBarRows";
import type { BarGroup, LineRow } from "./lineFacts";

/** Figure of the answer to `line`; null where there is nothing else to do. */
export function lineAlternatives(answer: Answer, options: ChartOptions): Figure | null {
  const groups = groupsOf(answer);
  return groups.length > 1 ? alternativeBars(answer, groups, options) : null;
}

export function alternativeBars(answer: Answer, groups: readonly BarGroup[], options: ChartOptions): Figure {
  const s = options.scale ?? 1;
  const rows = groups.flatMap((group) => group.rows);
  const most = Math.max(requiredNumber(answer, "powerFromTransmitter"), ...rows.map((row) => row.watts));
  const drawn = barRows(groups, { width: options.width, s, most });
  const best = rows.slice(1).reduce((a, b) => (b.watts > a.watts ? b : a));
  const on = answer.band === "" ? "As" : `On ${answer.band} as`;
  const title = `${on} it is ${wholeWattsText(rows[0]!.watts)} arrive, ${wholeWattsText(best.watts)} with the best of the other ways`;
  return {
    name: "lineAlternatives",
    title,
    width: options.width,
    height: drawn.height,
    scale: s,
    marks: drawn.marks,
    description: `${title}: ${best.name}. Bars of watts into the antenna at ${fixedText(answer.frequency / 1e6, 3)} MHz, the path as it is solid, others dashed.`,
    table: {
      caption: "Other ways",
      columns: [
        { name: "way", unit: "" },
        { name: "watts into the antenna", unit: "W" },
        { name: "loss", unit: "" },
        { name: "SWR seen", unit: "" },
      ],
      rows: rows.map((row) => [row.name, row.watts, row.loss || null, row.swr || null]),
    },
  };
}

export function groupsOf(answer: Answer): BarGroup[] {
  const own = rowOf(String(answer.parameters.present), requiredNumber(answer, "powerIntoAntenna"), {
    loss: null,
    swr: answer.parameters.seenBy === "tuner" ? null : optionalNumber(answer, "swrAtTransmitter"),
  });
  const other = String(answer.parameters.lengthOf ?? "");
  return [
    { heading: "as it is", rows: [{ ...own, present: true }] },
    { heading: other, rows: [...endRows(answer), ...halfWaveRows(answer)] },
    { heading: "two lines side by side as a pair", rows: twinRows(answer) },
    { heading: "one line or several", rows: switchRows(answer) },
  ].filter(({ rows }) => rows.length > 0);
}

interface Facts {
  readonly loss: number | null;
  readonly swr: number | null;
}

const rowOf = (name: string, watts: number, { loss, swr }: Facts): LineRow => ({
  name,
  watts,
  low: watts,
  high: watts,
  present: false,
  proposed: false,
  standing: 1,
  loss: loss === null ? "" : withUnit(fixedText(loss, loss < 0.095 ? 2 : 1), "dB"),
  swr: swr === null ? "" : swrText(swr),
  weight: "",
  price: "",
});

/** Rows of a table in the band of the answer, with a name each; without one a row is left out. */
function rowsOf(answer: Answer, table: string, name: (row: number, found: Table) => string | null): LineRow[] {
  const found = answer.tables.find((one) => one.name === table);
  if (!found) return [];
  const value = (column: string, row: number): number | null => found.columns[column]?.values[row] ?? null;
  const frequencies = found.columns.frequency?.values;
  return numbersOf(found, found.axis).flatMap((_, row): LineRow[] => {
    const watts = value("wattsIntoAntenna", row);
    const frequency = frequencies?.[row] ?? null;
    if (watts === null || (frequency !== null && Math.abs(frequency - answer.frequency / 1e6) > 1e-6)) return [];
    const says = name(row, found);
    if (says === null) return [];
    return [rowOf(says, watts, { loss: value("lossAtLoad", row), swr: value("swrSeen", row) })];
  });
}

/** "quarter-wave, 40 m" without its band. */
const bandless = (label: string): string => label.replace(/, [^,]*$/, "");

const endNames: Readonly<Record<string, string>> = {
  plain: "as long as now",
  "quarter-wave": "a quarter wave of line at each end",
  "two short sections": "two short sections at each end",
};

const endRows = (answer: Answer): LineRow[] =>
  rowsOf(answer, "matchedEnds", (row, found) => {
    const label = bandless(found.labels?.[row] ?? "");
    return endNames[label] ?? label;
  });

/** A line cut much shorter than the one there would not reach. */
const reaches = 0.98;

const halfWaveRows = (answer: Answer): LineRow[] =>
  rowsOf(answer, "halfWaves", (row, found) => {
    const value = (column: string): number => requiredColumn(found, column).values[row] ?? 0;
    const [length, count] = [value("length"), value("multiple")];
    if (length < reaches * requiredParameter(answer, "length")) return null;
    return `cut to ${count === 1 ? "a half wave" : `${count} half waves`}: ${metresText(length)}`;
  });

const requiredParameter = (answer: Answer, name: string): number => {
  const value = answer.parameters[name];
  if (typeof value !== "number") throw new Error(`The answer has no parameter "${name}" in numbers.`);
  return value;
};

/** The first of them is the path as it is. */
const switchRows = (answer: Answer): LineRow[] =>
  rowsOf(answer, "oneOrSeveral", (row, found) => bandless(found.labels?.[row] ?? "")).slice(1);

/** Those of the present line where it is coaxial, else of the first with the usual name, else the first. */
function twinRows(answer: Answer): LineRow[] {
  const all = rowsOf(answer, "sideBySide", (row, found) => found.labels?.[row] ?? "");
  const wanted = [`two ${String(answer.parameters.present)}`, "two RG-213/U"];
  const chosen = wanted.flatMap((name) => all.find((row) => row.name === name) ?? [])[0] ?? all[0];
  return chosen ? [{ ...chosen, name: chosen.name.replace(/^two /, "2 × ") }] : [];
}
