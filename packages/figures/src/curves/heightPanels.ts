/** What the height does: watts to the sky first, then SWR, gain at the wanted angles, and the feed point. */
import type { Answer, Table } from "@feedpath/engine";
import {
  numbersOf,
  numericParameter,
  optionalNumber,
  requiredColumn,
  requiredNumber,
  requiredTable,
} from "../kit/answerValues";
import type { Figure, FigureTable, Mark, Role } from "../kit/figure";
import type { LabelBoard, LabelPlace } from "../kit/labelBoard";
import { givenWattsText, metresText, plainText, swrText, wattsText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring, Vertical } from "./chartTypes";
import { describe, type Heights, heightsOf, isSame, titleOf } from "./heightFacts";
import { lobeColumns, lobePanel } from "./lobePanel";
import { type PanelFrame, roundSpan, swrSpan } from "./panelFrame";
import { allNumbers, bandsNote, figureTable, valueAt } from "./tableValues";

interface Look {
  readonly role: Role;
  readonly labelRole: Role;
  readonly dashed?: boolean;
}

function curve(table: Table, series: string, labels: readonly string[], look: Look): Curve {
  const { values, low, high } = requiredColumn(table, series);
  return {
    series,
    values,
    low,
    high,
    labels,
    role: look.role,
    labelRole: look.labelRole,
    dashed: look.dashed ?? false,
  };
}

const ink: Look = { role: "ink", labelRole: "ink" };
const field: Look = { role: "field", labelRole: "fieldInk" };
const power: Look = { role: "power", labelRole: "powerInk" };

function rings(table: Table, column: string, heights: Heights, text: (value: number) => string): Ring[] {
  const places = isSame(heights) ? [heights.present] : [heights.lowestSwr, heights.present];
  return places.flatMap((at) => {
    const value = at === null ? null : valueAt(table, column, at);
    return at === null || value === null ? [] : [{ at, value, text: text(value) }];
  });
}

function verticals({ present, lowestSwr }: Heights): Vertical[] {
  const now = present === null ? [] : [{ at: present, text: `${metresText(present)}, as it is`, main: true }];
  if (lowestSwr === null || isSame({ present, lowestSwr })) return now;
  return [...now, { at: lowestSwr, text: `${metresText(lowestSwr)}, best SWR`, main: false }];
}

/** dB below the strongest gain at which the scale of gains ends: a null has no bottom. */
const deepest = 25;

function gainSpan(table: Table): readonly [number, number] {
  const numbers = allNumbers(table, ["gainLow", "gainHigh"]);
  const most = Math.max(...numbers);
  return roundSpan(numbers.map((value) => Math.max(value, most - deepest)));
}

function splitMark(answer: Answer, frame: PanelFrame, board: LabelBoard): Mark[] {
  const at = optionalNumber(answer, "splitHeight");
  if (at === null || frame.x(at) < frame.left || frame.x(at) > frame.right) return [];
  const { s, top, bottom } = frame;
  const x = frame.x(at);
  const stroke = { role: "field", width: 1.2 * s, dash: `${6 * s} ${3 * s} ${1.5 * s} ${3 * s}` } as const;
  const text = `splits above ${metresText(at)}`;
  const places = [bottom - 6 * s, top + 14 * s, bottom - 24 * s].flatMap((y): LabelPlace[] => [
    { lines: [text], x: x + 5 * s, y },
    { lines: [text], x: x - 5 * s, y, anchor: "end" },
  ]);
  const texts = board.place({ role: "fieldInk", size: 13 * s, halo: { role: "paper", width: 3 * s } }, places);
  return [{ kind: "line", x1: x, y1: top, x2: x, y2: bottom, stroke }, ...texts];
}

function panels(answer: Answer, table: Table, heights: Heights): Panel[] {
  const whole = requiredNumber(answer, "powerFromTransmitter");
  const reference = answer.joints[0]?.swr.reference ?? 50;
  const elevation = numericParameter(answer, "elevation");
  const [swrFrom, swrTo] = swrSpan(allNumbers(table, ["swrAtTransmitter"]), 10);
  const [gainFrom, gainTo] = gainSpan(table);
  const [ohmsFrom, ohmsTo] = roundSpan(allNumbers(table, ["feedPointResistance", "feedPointReactance"]));
  const angle = elevation === null ? "low" : `${plainText(elevation, 0)}° up`;
  const far = [`${angle}, for far stations`, angle];
  const near = ["straight up, for near stations", "straight up"];
  return [
    {
      name: `watts to the sky, of ${givenWattsText(whole)}`,
      height: 118,
      from: 0,
      to: Math.max(roundSpan([0, whole])[1], whole),
      curves: [curve(table, "radiatedPower", ["to the sky"], power)],
      rings: rings(table, "radiatedPower", heights, wattsText),
    },
    {
      name: `SWR at the transmitter, on ${withUnit(plainText(reference, 1), "Ω")}`,
      height: 78,
      from: swrFrom,
      to: swrTo,
      curves: [curve(table, "swrAtTransmitter", ["on the meter"], ink)],
      rings: rings(table, "swrAtTransmitter", heights, swrText),
    },
    {
      name: "antenna gain, dBi",
      height: 128,
      from: gainFrom,
      to: gainTo,
      curves: [curve(table, "gainLow", far, field), curve(table, "gainHigh", near, { ...field, dashed: true })],
      rings: [],
      over: (frame, board) => splitMark(answer, frame, board),
    },
    ...lobePanel(answer, heights),
    {
      name: "feed point, ohm",
      height: 104,
      from: ohmsFrom,
      to: ohmsTo,
      curves: [
        curve(table, "feedPointResistance", ["resistance R"], ink),
        curve(table, "feedPointReactance", ["reactance X"], { ...ink, dashed: true }),
      ],
      rings: [],
    },
  ];
}

const columnWords = {
  height: "height",
  radiatedPower: "power to the sky",
  heatInSoil: "heat in the soil",
  swrAtTransmitter: "SWR at the transmitter",
  swrAtFeedPoint: "SWR at the feed point",
  gainLow: "gain at the wanted elevation",
  gainHigh: "gain straight up",
  maximumGain: "maximum gain",
  elevationOfMaximum: "elevation of the maximum",
  feedPointResistance: "feed point resistance",
  feedPointReactance: "feed point reactance",
};

/** Figure of the answer to `height`. Heights in metres. */
export function heightPanels(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "height");
  const heights = heightsOf(answer, table);
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "height"), name: "height above the soil, m" },
    panels: panels(answer, table, heights),
    verticals: verticals(heights),
    note: bandsNote(answer, table),
  });
  return {
    name: "heightPanels",
    title: titleOf(answer, table, heights),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(answer, table, heights),
    table: withLobes(answer, figureTable(table, "What the height does", columnWords)),
  };
}

function withLobes(answer: Answer, table: FigureTable): FigureTable {
  const lobes = lobeColumns(answer, table.rows.length);
  return {
    ...table,
    columns: [...table.columns, ...lobes.columns],
    rows: table.rows.map((row, i) => [...row, ...lobes.rows[i]!]),
  };
}
