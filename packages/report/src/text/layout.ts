/** Plain text for a terminal: lines of 80 columns, tables of aligned columns, no colour codes. */
import type { DocumentTable } from "../document/document";
import { gluedAmounts } from "../words/inlines";

export const textWidth = 80;

/** Text broken at spaces, never inside an amount, into lines of at most 80 columns; a word longer than a line stands alone. */
export function wrapped(text: string, first = "", rest: string = " ".repeat(first.length)): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of gluedAmounts(text)
    .split(/[ \n\t]+/)
    .filter((w) => w !== "")) {
    if (!empty && [...line].length + 1 + [...word].length > textWidth) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line += (empty ? "" : " ") + word;
    empty = false;
  }
  return [...lines, line].join("\n").replaceAll("\u00A0", " ");
}

const length = (text: string): number => [...text].length;

function padded(text: string, width: number, numeric: boolean): string {
  const gap = " ".repeat(Math.max(0, width - length(text)));
  return numeric ? gap + text : text + gap;
}

/** Words of a column's heading, put on lines of about the width of its cells. */
function headLines(head: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of head.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && length(last) + 1 + length(word) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Aligned columns, two spaces between, indented by two; the first column is cut so that all fit into 80 columns. */
export function tableText(table: DocumentTable): string {
  const used = table.columns.map((_, c) => table.rows.some((row) => row[c] !== ""));
  const columns = table.columns.flatMap((column, c) => {
    if (!used[c]) return [];
    const head = column.unit === "" ? column.name : `${column.name}, ${column.unit}`;
    const cells = table.rows.map((row) => row[c] ?? "");
    const cellWidth = Math.max(...cells.map(length), ...head.split(" ").map(length));
    return [{ head: headLines(head, cellWidth), cells, width: cellWidth, numeric: column.numeric }];
  });
  const others = columns.slice(1).reduce((sum, column) => sum + 2 + column.width, 2);
  const first = Math.min(columns[0]?.width ?? 0, Math.max(12, textWidth - others));
  const fitted = (text: string) => (length(text) <= first ? text : `${[...text].slice(0, first - 1).join("")}…`);
  const line = (texts: readonly string[]) =>
    `  ${texts.map((text, c) => padded(c === 0 ? fitted(text) : text, c === 0 ? first : columns[c]!.width, columns[c]!.numeric)).join("  ")}`.trimEnd();
  const tallest = Math.max(...columns.map(({ head }) => head.length));
  const headRows = Array.from({ length: tallest }, (_, k) =>
    line(columns.map(({ head }) => head[k - tallest + head.length] ?? "")),
  );
  return [...headRows, ...table.rows.map((_, r) => line(columns.map(({ cells }) => cells[r]!)))].join("\n");
}

/** A titled block, or nothing where there is nothing to say. */
export const titled = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [[title, ...lines].join("\n")];
