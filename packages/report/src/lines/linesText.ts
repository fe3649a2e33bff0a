/** Lines for a terminal: a list by family, or a comparison with where its values come from. */
import { significantNumber } from "@feedpath/engine";
import { tableText, wrapped } from "../text/layout";
import { visibleLine } from "../words/visible";
import type { LineComparison, LineRow } from "./compareLines";
import { linesCaution } from "./linesDocument";
import { linesTables, lossTable, shortTable } from "./linesTable";
import { type LineUnits, lineUnits } from "./units";

/** One row a line, under its family. */
export function linesList(comparison: LineComparison, units: LineUnits): string {
  const { rows } = comparison;
  const table = shortTable(comparison, units);
  const texts = tableText(table).split("\n");
  const heads = texts.slice(0, texts.length - rows.length);
  const entries = rows.flatMap(({ family }, i) => {
    const text = texts[heads.length + i] ?? "";
    return family === rows[i - 1]?.family ? [text] : ["", family, text];
  });
  return [table.caption, ...heads, ...entries].join("\n");
}

const sourcesText = ({ designation, about, notes, sources }: LineRow): string =>
  [
    about === "" ? visibleLine(designation) : wrapped(about, `${visibleLine(designation)}: `, "  "),
    ...notes.map((note) => wrapped(note, "  - ", "    ")),
    ...sources.map(({ value, source, status }) =>
      wrapped(visibleLine(`${value}: ${source} (${status})`), "  - ", "    "),
    ),
  ].join("\n");

/** None for a line of which nothing is known at this frequency. */
const spreadText = ({ designation, loss, impedance, velocityFactor }: LineRow, units: LineUnits): string[] => {
  const { run, runLength } = lineUnits[units];
  const between = (name: string, low: number, high: number, unit = ""): string =>
    `${name} ${[...new Set([low, high].map((end) => significantNumber(end, 3)))].join(" to ")}${unit}`;
  const parts = [
    impedance && between("impedance", impedance.low, impedance.high, " Ω"),
    velocityFactor && between("velocity factor", velocityFactor.low, velocityFactor.high),
    loss && between("loss", loss.low * runLength, loss.high * runLength, ` dB/${run}`),
  ];
  const known = parts.filter((one) => one !== null && one !== undefined);
  return known.length === 0 ? [] : [wrapped(known.join(", "), `  ${designation}: `, "    ")];
};

/** Tables, the ranges of what is uncertain, and the sources. */
export function linesText(comparison: LineComparison, units: LineUnits): string {
  const losses = lossTable(comparison, units);
  const spreads = comparison.rows.flatMap((row) => spreadText(row, units));
  return [
    ...linesTables(comparison, units).map((table) => `${table.caption}\n${tableText(table)}`),
    ...(comparison.frequencies.length > 0 ? [`${losses.caption}\n${tableText(losses)}`] : []),
    ...(spreads.length > 0 ? [["Ranges", ...spreads].join("\n")] : []),
    ...comparison.rows.map(sourcesText),
    wrapped(linesCaution),
  ].join("\n\n");
}
