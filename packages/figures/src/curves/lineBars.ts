/** The lines that could lie there as bars: watts into the antenna, with what else decides beside them. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure, Mark } from "../kit/figure";
import { plainText, wholeWattsText } from "../kit/numberText";
import type { ChartOptions } from "./chartTypes";
import { barRows } from "./lineBarRows";
import { barGroups, type LineRow, lineRows } from "./lineFacts";

/** Figure of the answer to `line`: the present line solid, the others dashed. */
export function lineBars(answer: Answer, options: ChartOptions): Figure {
  const rows = lineRows(answer);
  const s = options.scale ?? 1;
  const drawn = barRows(barGroups(answer, rows), { width: options.width, s, most: mostWatts(answer, rows) });
  const title = titleOf(answer, rows);
  return {
    name: "lineBars",
    title,
    width: options.width,
    height: drawn.height,
    scale: s,
    marks: drawn.marks satisfies readonly Mark[],
    description: `${title}. Bars of watts into the antenna${bandWords(answer)}, the line that lies there now solid, others dashed; beside them loss, SWR at the set, weight and price where they are known.`,
    table: tableOf(answer, rows),
  };
}

const bandWords = (answer: Answer): string => {
  const band = answer.parameters.decidedOn;
  return typeof band === "string" ? ` on ${band}` : "";
};

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

const mostWatts = (answer: Answer, rows: readonly LineRow[]): number =>
  Math.max(requiredNumber(answer, "powerFromTransmitter"), ...rows.map((row) => row.watts));

function titleOf(answer: Answer, rows: readonly LineRow[]): string {
  const now = rows.find((row) => row.present)!;
  const proposed = rows.find((row) => row.proposed);
  const best = rows.reduce((a, b) => (b.watts > a.watts ? b : a));
  const start = `${capital(now.name)} brings ${wholeWattsText(now.watts)}${bandWords(answer)}`;
  if (proposed) return `${start}, ${proposed.name} would bring ${wholeWattsText(proposed.watts)}`;
  return best === now
    ? `${start}: none brings more`
    : `${start}, ${best.name} would bring ${wholeWattsText(best.watts)}`;
}

function tableOf(answer: Answer, rows: readonly LineRow[]): Figure["table"] {
  const table = requiredTable(answer, "shortList");
  const shown = ["wattsIntoAntenna", "lossAtLoad", "swrSeen", "voltageUsed", "weight", "bendRadius", "price"];
  const words = ["watts into the antenna", "loss", "SWR seen", "voltage used", "weight", "least bend", "price"];
  const used = shown.map((name, i) => ({ name, words: words[i]!, column: requiredColumn(table, name) }));
  return {
    caption: `Lines in the place of ${plainText(optionalNumber(answer, "wattsOfPresent") ?? 0, 1)} W as it is`,
    columns: [
      { name: "line", unit: "" },
      ...used.map(({ words: name, column }) => ({ name, unit: column.unit === "1" ? "" : column.unit })),
    ],
    rows: numbersOf(table, "line").map((_, i) => [
      rows[i]!.name,
      ...used.map(({ column }) => column.values[i] ?? null),
    ]),
  };
}
