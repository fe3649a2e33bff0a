/** SWR at the antenna and on the meter over frequency, resonance told apart from lowest SWR. */
import type { Answer, Table } from "@feedpath/engine";
import {
  numbersOf,
  numericParameter,
  optionalNumber,
  requiredColumn,
  requiredNumber,
  requiredTable,
} from "../kit/answerValues";
import type { Figure, Mark, Stroke } from "../kit/figure";
import type { LabelBoard, LabelPlace } from "../kit/labelBoard";
import { fixedText, plainText, swrText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";
import { type PanelFrame, swrSpan } from "./panelFrame";
import { allNumbers, bandsNote, figureTable, valueAt } from "./tableValues";

const atAntenna = "swrAtFeedPoint";
const onMeter = "swrAtTransmitter";

interface Wanted {
  readonly from: number;
  readonly to: number;
}

function wantedOf(answer: Answer): Wanted | null {
  const [from, to] = [numericParameter(answer, "sweepFrom"), numericParameter(answer, "sweepTo")];
  return from === null || to === null ? null : { from, to };
}

const curve = (table: Table, series: string, labels: readonly string[], dashed: boolean): Curve => {
  const { values, low, high } = requiredColumn(table, series);
  return { series, values, low, high, role: "ink", labelRole: "ink", dashed, labels };
};

/** Decimals that keep neighbouring frequencies of the span apart. */
const frequencyDecimals = (table: Table): number => {
  const axis = numbersOf(table, "frequency");
  const span = axis.at(-1)! - axis[0]!;
  return span < 0.02 ? 4 : span < 0.1 ? 3 : span < 5 ? 2 : 1;
};

function wantedMarks(wanted: Wanted, frame: PanelFrame, board: LabelBoard): Mark[] {
  const { s, top, bottom, left, right } = frame;
  const clamp = (x: number) => Math.min(right, Math.max(left, x));
  const [x1, x2] = [clamp(frame.x(wanted.from)), clamp(frame.x(wanted.to))];
  const decimals = Math.max(...[wanted.from, wanted.to].map((f) => (plainText(f, 3).split(".")[1] ?? "").length));
  const span = `${fixedText(wanted.from, decimals)} to ${withUnit(fixedText(wanted.to, decimals), "MHz")}`;
  const texts = [`wanted: ${span}`, span, "wanted"].flatMap((text) =>
    [14, 30].map((down): LabelPlace => ({ lines: [text], x: (x1 + x2) / 2, y: top + down * s, anchor: "middle" })),
  );
  const field: Mark = { kind: "rect", x: x1, y: top, width: x2 - x1, height: bottom - top, fill: { role: "rail" } };
  return [field, ...board.place({ role: "ink2", size: 13 * s }, texts)];
}

/** A line from the curve down to its words. */
function dropMark(
  frame: PanelFrame,
  board: LabelBoard,
  drop: { readonly at: number; readonly value: number; readonly text: string; readonly dashed: boolean },
): Mark[] {
  const { s, bottom, top } = frame;
  const x = frame.x(drop.at);
  const start = Math.max(frame.y(drop.value), top);
  if (x < frame.left || x > frame.right) return [];
  const stroke: Stroke = { role: "ink", width: 1.2 * s, ...(drop.dashed ? { dash: `${2 * s} ${3 * s}` } : {}) };
  const levels = [8, 26, 44, 62].map((up) => bottom - up * s).filter((y) => y > start + 14 * s);
  const text = { lines: [drop.text] };
  const places = levels.flatMap((y): LabelPlace[] => [
    { ...text, x: x - 5 * s, y, anchor: "end" },
    { ...text, x: x + 5 * s, y },
  ]);
  const texts = board.place({ role: "ink", size: 13 * s, halo: { role: "paper", width: 3 * s } }, places);
  const end = texts[0] ? texts[0].y + 3 * s : bottom;
  board.reserve({ left: x - 2 * s, right: x + 2 * s, top: start, bottom: end });
  return [{ kind: "line", x1: x, y1: start, x2: x, y2: end, stroke }, ...texts];
}

/** A minimum at the end of the span is none: SWR goes on falling outside. */
function lowestText(table: Table, lowest: number, decimals: number): string {
  const axis = numbersOf(table, "frequency");
  const step = (axis.at(-1)! - axis[0]!) / (4 * axis.length);
  const at = fixedText(lowest, decimals);
  if (lowest < axis[0]! + step) return `still lower below ${at}`;
  return lowest > axis.at(-1)! - step ? `still lower above ${at}` : `lowest SWR ${at}`;
}

/** Says so where the whole curve of the antenna lies above the scale. */
function offScaleLabel(table: Table, frame: PanelFrame, board: LabelBoard): Mark[] {
  const values = requiredColumn(table, atAntenna).values.filter((value) => value !== null);
  if (values.length === 0 || values.some((value) => value <= frame.to)) return [];
  const least = swrText(Math.min(...values));
  const style = { role: "ink", size: 13 * frame.s, weight: 600 } as const;
  const texts = [`at the antenna: ${least} and more, above this scale`, `at the antenna: ${least} and more`];
  const ys = [32, 50, 68].map((down) => frame.top + down * frame.s);
  return board.place(
    style,
    texts.flatMap((text) => ys.map((y) => ({ lines: [text], x: frame.left + 8 * frame.s, y }))),
  );
}

function limitMarks(limit: number | null, frame: PanelFrame, board: LabelBoard): Mark[] {
  if (limit === null || limit <= frame.from || limit >= frame.to) return [];
  const { s, left, right } = frame;
  const y = frame.y(limit);
  const stroke: Stroke = { role: "line", width: 1.2 * s, dash: `${1.5 * s} ${3 * s}` };
  const text = `limit ${plainText(limit, 2)}`;
  board.avoid({ left, right, top: y - 1, bottom: y + 1 });
  const texts = board.place({ role: "ink2", size: 13 * s, halo: { role: "paper", width: 3 * s } }, [
    { lines: [text], x: right - 2 * s, y: y - 5 * s, anchor: "end" },
    { lines: [text], x: left + 6 * s, y: y - 5 * s },
    { lines: [text], x: left + 6 * s, y: y + 15 * s },
  ]);
  return [{ kind: "line", x1: left, y1: y, x2: right, y2: y, stroke }, ...texts];
}

interface Difference {
  readonly at: number;
  readonly antenna: number;
  readonly meter: number;
}

/** Where the two differ most: the answer's own frequency; null where the path transforms and the two do not compare. */
function differenceOf(answer: Answer, table: Table): Difference | null {
  const at = optionalNumber(answer, "swrDifferenceFrequency");
  if (at === null) return null;
  const [antenna, meter] = [valueAt(table, atAntenna, at), valueAt(table, onMeter, at)];
  return antenna === null || meter === null ? null : { at, antenna, meter };
}

const tellingDifference = 0.1;
const isTelling = (one: Difference | null): one is Difference =>
  one !== null && Math.abs(one.antenna - one.meter) >= tellingDifference;

/** Values of a column in the wanted band; of the whole table where none is wanted. */
function insideWanted(table: Table, name: string, wanted: Wanted | null): number[] {
  const axis = numbersOf(table, "frequency");
  const near = 1e-6;
  return requiredColumn(table, name).values.filter(
    (value, i): value is number =>
      value !== null && (wanted === null || (axis[i]! >= wanted.from - near && axis[i]! <= wanted.to + near)),
  );
}

function titleOf(table: Table, difference: Difference | null, wanted: Wanted | null): string {
  if (isTelling(difference)) {
    const [antenna, meter] = [swrText(difference.antenna), swrText(difference.meter)];
    return difference.antenna > difference.meter
      ? `The line flatters: the antenna is at ${antenna} where the meter shows ${meter}`
      : `The line adds: the antenna is at ${antenna} where the meter shows ${meter}`;
  }
  const numbers = insideWanted(table, onMeter, wanted);
  const [least, most] = [swrText(Math.min(...numbers)), swrText(Math.max(...numbers))];
  const span = `SWR ${least === most ? least : `${least} to ${most}`}`;
  return difference === null ? `The meter in the shack shows ${span}` : `Antenna and meter agree: ${span}`;
}

/** Above this the scale stops, unless the wanted band needs more: small values are what is read off the curve. */
const usualTop = 5;

/** Enough for the meter in the wanted band, or for three times its least value there, and for 10 at most otherwise. */
function topOf(table: Table, wanted: Wanted | null): number {
  const inside = insideWanted(table, onMeter, wanted);
  const [least, most] = [Math.min(...inside), Math.max(...inside)];
  return Math.min(Math.max(10, 3 * least), Math.max(usualTop, 1.1 * most));
}

function describe(answer: Answer, difference: Difference | null, decimals: number): string {
  const lowest = requiredNumber(answer, "lowestSwrFrequency");
  const resonant = optionalNumber(answer, "resonantFrequency");
  const megahertz = (value: number) => withUnit(fixedText(value, decimals), "MHz");
  const differ = difference
    ? ` At ${megahertz(difference.at)} the antenna is at SWR ${swrText(difference.antenna)} and the meter shows ${swrText(difference.meter)}.`
    : "";
  const resonance =
    resonant === null ? "It is not resonant in this span." : `It is resonant (X = 0) at ${megahertz(resonant)}.`;
  return `SWR over frequency, at the antenna and on the meter in the shack. The meter reads lowest at ${megahertz(lowest)}. ${resonance}${differ}`;
}

function panelName(answer: Answer): string {
  const reference = answer.joints[0]?.swr.reference;
  return reference === undefined ? "SWR" : `SWR on ${withUnit(plainText(reference, 1), "Ω")}`;
}

/** Figure of the answer to `band`. Frequencies in MHz. */
export function swrAcrossBand(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "band");
  const wanted = wantedOf(answer);
  const difference = differenceOf(answer, table);
  const decimals = frequencyDecimals(table);
  const [from, to] = swrSpan(allNumbers(table, [atAntenna, onMeter]), topOf(table, wanted));
  const lowest = requiredNumber(answer, "lowestSwrFrequency");
  const resonant = optionalNumber(answer, "resonantFrequency");
  const rings: Ring[] = isTelling(difference)
    ? [
        { at: difference.at, value: difference.antenna, text: swrText(difference.antenna) },
        { at: difference.at, value: difference.meter, text: swrText(difference.meter) },
      ]
    : [];
  const drops = (frame: PanelFrame, board: LabelBoard): Mark[] => [
    ...(resonant === null
      ? []
      : dropMark(frame, board, {
          at: resonant,
          value: valueAt(table, atAntenna, resonant) ?? from,
          text: `resonant (X = 0) ${fixedText(resonant, decimals)}`,
          dashed: false,
        })),
    ...dropMark(frame, board, {
      at: lowest,
      value: valueAt(table, onMeter, lowest) ?? from,
      text: lowestText(table, lowest, decimals),
      dashed: true,
    }),
    ...offScaleLabel(table, frame, board),
  ];
  const bar = (frame: PanelFrame): Mark[] => {
    if (!isTelling(difference)) return [];
    const x = frame.x(difference.at);
    const y = (value: number) => Math.max(frame.top, frame.y(value));
    const stroke: Stroke = { role: "ink", width: 2 * frame.s };
    return [{ kind: "line", x1: x, y1: y(difference.antenna), x2: x, y2: y(difference.meter), stroke }];
  };
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "frequency"), name: "frequency, MHz" },
    verticals: [],
    note: bandsNote(answer, table),
    panels: [
      {
        name: panelName(answer),
        height: 236,
        from,
        to,
        curves: [
          curve(table, atAntenna, ["at the antenna", "antenna"], false),
          curve(table, onMeter, ["on the meter in the shack", "on the meter", "meter"], true),
        ],
        rings,
        under: (frame, board) => (wanted ? wantedMarks(wanted, frame, board) : []),
        over: (frame, board) => [
          ...drops(frame, board),
          ...limitMarks(numericParameter(answer, "swrBelow"), frame, board),
          ...bar(frame),
        ],
      },
    ],
  });
  return {
    name: "swrAcrossBand",
    title: titleOf(table, difference, wanted),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(answer, difference, decimals),
    table: figureTable(table, "Across the band", {
      frequency: "frequency",
      swrAtTransmitter: "SWR at the transmitter",
      swrAtFeedPoint: "SWR at the feed point",
      feedPointResistance: "feed point resistance",
      feedPointReactance: "feed point reactance",
      lineLoss: "line loss",
      radiatedPower: "power to the sky",
    }),
  };
}
