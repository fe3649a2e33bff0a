/** Rows of bars under headings: names and columns beside them where there is room, above and below them where there is not. */
import type { Mark, Role } from "../kit/figure";
import { wholeWattsText } from "../kit/numberText";
import { textWidth, wrapText } from "../kit/textWidth";
import { bar, barMarks } from "./lineBarMarks";
import type { BarGroup, LineRow } from "./lineFacts";

interface BarsOptions {
  readonly width: number;
  readonly s: number;
  /** W at the right end of the bars. */
  readonly most: number;
}

/** px at scale 1. */
const size = 13;
const heading = 30;
const cell = 70;

interface Written {
  readonly role?: Role;
  readonly weight?: 400 | 600;
  readonly anchor?: "start" | "end";
}

const write = (
  s: number,
  text: string,
  x: number,
  y: number,
  { role = "ink", weight = 400, anchor = "start" }: Written,
): Mark => ({
  kind: "text",
  text,
  x,
  y,
  role,
  weight,
  anchor,
  size: size * s,
  face: "numbers",
});

const tagOf = (row: LineRow): string => (row.present ? "there now" : row.proposed ? "proposed" : "");
const columnsOf = (row: LineRow): readonly string[] => [row.loss, row.swr, row.weight, row.price];
const columnNames = ["loss", "SWR seen", "weight", "price"] as const;

interface Drawn {
  readonly marks: readonly Mark[];
  readonly height: number;
}

export function barRows(groups: readonly BarGroup[], options: BarsOptions): Drawn {
  const rows = groups.flatMap((group) => group.rows);
  const used = columnNames.map((_, i) => rows.some((row) => columnsOf(row)[i] !== ""));
  return options.width >= 560 * options.s ? wideRows(groups, options, used) : narrowRows(groups, options, used);
}

const wattsWidth = (rows: readonly LineRow[], s: number): number =>
  Math.max(...rows.map((row) => textWidth(wholeWattsText(row.watts), size * s, 600))) + 10 * s;

function wideRows(groups: readonly BarGroup[], { width, s, most }: BarsOptions, used: readonly boolean[]): Drawn {
  const rows = groups.flatMap((group) => group.rows);
  const shown = columnNames.flatMap((name, i) => (used[i] ? [{ name, i }] : []));
  const nameWidth = 0.29 * width;
  const right = width - shown.length * cell * s;
  const scale = (right - nameWidth - wattsWidth(rows, s)) / most;
  const columnEnd = (k: number): number => right + (k + 1) * cell * s;
  const marks: Mark[] = shown.map(({ name }, k) =>
    write(s, name, columnEnd(k), size * s, { role: "ink2", anchor: "end" }),
  );
  marks.push(write(s, `into the antenna, of ${wholeWattsText(most)}`, nameWidth, size * s, { role: "ink2" }));
  let y = 8 * s;
  for (const group of groups) {
    y += heading * s;
    marks.push(write(s, group.heading, 0, y, { role: "ink2" }));
    y += 8 * s;
    for (const row of group.rows) {
      const lines = wrapText([row.name, tagOf(row)].filter((t) => t !== "").join(", "), size * s, nameWidth - 12 * s);
      lines.forEach((text, i) => {
        marks.push(write(s, text, 0, y + (13 + 16 * i) * s, { weight: row.present ? 600 : 400 }));
      });
      marks.push(...barMarks(row, nameWidth, y, scale, s));
      const end = Math.max(row.watts, row.high) * scale;
      marks.push(
        write(s, wholeWattsText(row.watts), nameWidth + end + 6 * s, y + 13 * s, { weight: 600, role: "powerInk" }),
      );
      shown.forEach(({ i }, k) => {
        const text = columnsOf(row)[i]!;
        marks.push(write(s, text === "" ? "–" : text, columnEnd(k), y + 13 * s, { anchor: "end" }));
      });
      y += Math.max(bar + 8, 16 * lines.length + 6) * s;
    }
  }
  const end = nameWidth + most * scale;
  const whole: Mark = { kind: "line", x1: end, y1: 22 * s, x2: end, y2: y, stroke: { role: "hair", width: 1 * s } };
  return { marks: [whole, ...marks], height: Math.ceil(y + 2 * s) };
}

function narrowRows(groups: readonly BarGroup[], { width, s, most }: BarsOptions, used: readonly boolean[]): Drawn {
  const rows = groups.flatMap((group) => group.rows);
  const scale = (width - wattsWidth(rows, s)) / most;
  const marks: Mark[] = [];
  let y = -8 * s;
  for (const group of groups) {
    y += heading * s;
    marks.push(write(s, group.heading, 0, y, { role: "ink2" }));
    y += 6 * s;
    for (const row of group.rows) {
      const name = [row.name, tagOf(row)].filter((t) => t !== "").join(", ");
      for (const text of wrapText(name, size * s, 0.94 * width)) {
        y += 17 * s;
        marks.push(write(s, text, 0, y, { weight: row.present ? 600 : 400 }));
      }
      y += 5 * s;
      marks.push(...barMarks(row, 0, y, scale, s));
      const end = Math.max(row.watts, row.high) * scale;
      marks.push(write(s, wholeWattsText(row.watts), end + 6 * s, y + 13 * s, { weight: 600, role: "powerInk" }));
      y += (bar + 15) * s;
      const facts = columnsOf(row).flatMap((text, i) =>
        used[i] && text !== "" ? [i === 1 ? `SWR ${text}` : text] : [],
      );
      marks.push(write(s, facts.join(", "), 0, y, { role: "ink2" }));
      y += 6 * s;
    }
  }
  return { marks, height: Math.ceil(y + 4 * s) };
}
