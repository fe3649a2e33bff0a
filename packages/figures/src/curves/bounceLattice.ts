/** The lattice of echoes: the line across, time downwards, one stroke for each way, as thick as the wave is large. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure, Mark } from "../kit/figure";
import { createLabelBoard } from "../kit/labelBoard";
import { plainText, significantText, withUnit } from "../kit/numberText";
import { textWidth } from "../kit/textWidth";
import { timeText } from "./bounceFacts";
import type { ChartOptions } from "./chartTypes";
import { figureTable } from "./tableValues";

/** px at scale 1. */
const room = { side: 96, top: 44, row: 46, bottom: 14 };
const mostRows = 9;
const thickest = 9;

/** V of one wave, two figures. */
const voltsText = (volts: number): string => withUnit(significantText(volts, 2), "V");

/** Signed percent of the first wave. */
const shareText = (percent: number): string =>
  Math.abs(percent) < 0.05 ? "under 0.1\u00a0%" : withUnit(plainText(percent, Math.abs(percent) < 9.95 ? 1 : 0), "%");

export function bounceLattice(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "echoes");
  const s = options.scale ?? 1;
  const { width } = options;
  const waves = requiredColumn(table, "wave").values;
  const known = waves.indexOf(null);
  const rows = Math.min(mostRows, known < 0 ? waves.length : known);
  const height = Math.ceil((room.top + rows * room.row + room.bottom) * s);
  const [left, right] = [room.side * s, width - room.side * s];
  const y = (row: number): number => (room.top + row * room.row) * s;
  const board = createLabelBoard(width, height);
  const first = Math.abs(waves[0] ?? 1) || 1;
  const ends: Mark[] = [left, right].map((x) => ({
    kind: "line",
    x1: x,
    y1: y(0) - 6 * s,
    x2: x,
    y2: y(rows) + 4 * s,
    stroke: { role: "line", width: 1.5 * s },
  }));
  const strokes = Array.from({ length: rows }, (_, k): Mark[] => {
    const there = k % 2 === 0;
    const size = Math.abs(waves[k] ?? 0) / first;
    const role = "power";
    const dash = there ? {} : { dash: `${7 * s} ${4 * s}` };
    const stroke = { role, width: Math.max(0.8, thickest * size) * s, ...dash } as const;
    const [x1, x2] = there ? [left, right] : [right, left];
    return [{ kind: "line", x1, y1: y(k), x2, y2: y(k + 1), stroke, datum: { series: "wave", index: k } }];
  }).flat();
  const labels = [
    ...board.place({ role: "ink", size: 13 * s, weight: 600 }, [
      { lines: ["source"], x: left, y: 14 * s, anchor: "middle" },
    ]),
    ...board.place({ role: "ink", size: 13 * s, weight: 600 }, [
      { lines: [endName(answer)], x: right, y: 14 * s, anchor: "middle" },
    ]),
    ...Array.from({ length: rows }, (_, k) =>
      labelsOf(table, k, { s, left, right, y: y(k), middle: y(k + 0.5) }, board),
    ).flat(),
  ];
  return {
    name: "bounceLattice",
    title: titleOf(answer),
    width,
    height,
    scale: s,
    marks: [...ends, ...strokes, ...labels],
    description: `Reflection diagram: the line from source to end across, time downwards. Each stroke is one way of a wave; ${rows} waves, the first ${voltsText(first)}, the last shown ${voltsText(Math.abs(waves[rows - 1] ?? 0))}.`,
    table: figureTable(table, "Echoes, in the order in which they set out", wordsOf(table.columns)),
  };
}

interface Row {
  readonly s: number;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly middle: number;
}

/** Time and sum at the end where wave `k` sets out, its own volts on its stroke. */
function labelsOf(
  table: ReturnType<typeof requiredTable>,
  k: number,
  { s, left, right, y, middle }: Row,
  board: ReturnType<typeof createLabelBoard>,
): Mark[] {
  const there = k % 2 === 0;
  const time = requiredColumn(table, "setsOut").values[k] ?? 0;
  const wave = requiredColumn(table, "wave").values[k] ?? 0;
  const share = requiredColumn(table, "share").values[k] ?? 0;
  const after = requiredColumn(table, "voltageAfter").values[k];
  const [x, anchor] = there ? [left - 8 * s, "end" as const] : [right + 8 * s, "start" as const];
  const sum = after === null || after === undefined ? [] : [`then ${voltsText(after)}`];
  const styles = [
    { role: "ink2" as const, size: 13 * s },
    { role: "ink" as const, size: 13 * s, weight: 600 as const },
  ];
  const halo = { role: "paper" as const, width: 5 * s };
  // Above the stroke, clear of its thickness and its slope.
  const slope = (room.row * s) / (right - left);
  const clear = (text: string): number =>
    middle - (5 + (thickest * Math.abs(share)) / 200) * s - (slope * textWidth(text, 13 * s, 600)) / 2;
  const said = [k === 0 ? `first wave ${voltsText(wave)}` : `${voltsText(wave)}, ${shareText(share)}`, voltsText(wave)];
  return [
    ...board.place(styles, [{ lines: [timeText(time), ...sum], x, y: y + 4 * s, anchor }]),
    ...board.place(
      { role: "powerInk", size: 13 * s, weight: 600, halo },
      said.map((text) => ({ lines: [text], x: (left + right) / 2, y: clear(text), anchor: "middle" as const })),
    ),
  ];
}

const endName = (answer: Answer): string =>
  typeof answer.parameters.load === "string"
    ? `${answer.parameters.load} end`
    : typeof answer.parameters.load === "number"
      ? `${answer.parameters.load} Ω`
      : "load";

function titleOf(answer: Answer): string {
  const [atLoad, atSource] = ["reflectionAtLoad", "reflectionAtSource"].map((name) => optionalNumber(answer, name));
  const percent = (share: number): string => withUnit(plainText(100 * Math.abs(share), 0), "%");
  if (typeof atLoad !== "number" || typeof atSource !== "number") {
    const share = (requiredColumn(requiredTable(answer, "echoes"), "share").values[1] ?? 0) / 100;
    return `Of the first wave ${percent(share)} set out home from the end${share < 0 ? ", upside down" : ""}`;
  }
  return `The end sends ${percent(atLoad)} of the voltage back, the source ${percent(atSource)} of what comes home`;
}

const wordsOf = (columns: Readonly<Record<string, unknown>>): Record<string, string> => ({
  echo: "echo",
  setsOut: "sets out after",
  setsOutAt: "at",
  wave: "wave",
  share: "of the first wave",
  voltageAfter: "voltage there afterwards",
  ...("powerIntoLoadAfter" in columns ? { powerIntoLoadAfter: "power into the load afterwards" } : {}),
});
