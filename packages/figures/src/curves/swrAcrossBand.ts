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
import type { LabelBoard } from "../kit/labelBoard";
import { fixedText, swrText } from "../kit/numberText";
import {
  atAntenna,
  describe,
  differenceOf,
  frequencyDecimals,
  isTelling,
  onMeter,
  panelName,
  titleOf,
  topOf,
  wantedOf,
} from "./bandFacts";
import { dropMark, limitMarks, lowestText, offScaleLabel, wantedMarks } from "./bandMarks";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";
import { type PanelFrame, swrSpan } from "./panelFrame";
import { allNumbers, bandsNote, figureTable, valueAt } from "./tableValues";

const curve = (table: Table, series: string, labels: readonly string[], dashed: boolean): Curve => {
  const { values, low, high } = requiredColumn(table, series);
  return { series, values, low, high, role: "ink", labelRole: "ink", dashed, labels };
};

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
