/** SWR at the antenna and on the meter over the length, with both optima, X = 0 and the present length marked. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { swrText } from "../kit/numberText";
import { panelName } from "./bandFacts";
import { offScaleLabel } from "./bandMarks";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring, Vertical } from "./chartTypes";
import { swrSpan } from "./panelFrame";
import { allNumbers, figureTable, valueAt } from "./tableValues";
import { describeLengths, lengthsTitle, lengthText, type TrimLengths, trimLengthsOf } from "./trimFacts";

const onMeter = "swrAtTransmitter";
const atAntenna = "swrAtFeedPoint";

const curve = (table: Table, series: string, labels: readonly string[], dashed: boolean): Curve => ({
  series,
  values: requiredColumn(table, series).values,
  role: "ink",
  labelRole: "ink",
  dashed,
  labels,
});

/** px within which two lengths are one mark, at scale 1. */
const sameMark = 6;
/** px below which words are short, at scale 1. */
const roomy = 420;

const onTheMeter = "lowest on the meter";
const atTheAntenna = "lowest at the antenna";
const shortWords: Readonly<Record<string, string>> = {
  [onTheMeter]: "meter lowest",
  [atTheAntenna]: "antenna lowest",
};

/** Words of one mark: both lowest places in one are simply the lowest SWR. */
function wordsOf(all: readonly string[], narrow: boolean): string {
  const both = all.includes(onTheMeter) && all.includes(atTheAntenna);
  const told = both ? all.map((w) => (w === onTheMeter ? "lowest SWR" : w)).filter((w) => w !== atTheAntenna) : all;
  return told.map((w) => (narrow ? (shortWords[w] ?? w) : w)).join(", ");
}

/** The present length and those that matter, each once: lengths too near to be told apart share their words. */
function verticals(table: Table, lengths: TrimLengths, { width, scale: s = 1 }: ChartOptions): Vertical[] {
  const axis = numbersOf(table, "length");
  const [from, to] = [axis[0]!, axis.at(-1)!];
  const narrow = width < roomy * s;
  const near = (sameMark * s * (to - from)) / width;
  const wanted: (readonly [number | null, string])[] = [
    [lengths.present, "as it is"],
    [lengths.target, onTheMeter],
    [lengths.targetAtFeedPoint, atTheAntenna],
    [lengths.resonance, "X = 0"],
  ];
  const marks: { at: number; words: string[] }[] = [];
  for (const [at, words] of wanted) {
    if (at === null || at < from || at > to) continue;
    const same = marks.find((mark) => Math.abs(mark.at - at) <= near);
    if (same) same.words.push(words);
    else marks.push({ at, words: [words] });
  }
  return marks.map(({ at, words }, i) => ({
    at,
    text: `${lengthText(at)}, ${wordsOf(words, narrow)}`,
    main: i === 0,
    quiet: i > 0 && !words.includes(onTheMeter),
  }));
}

function rings(table: Table, { present, target }: TrimLengths): Ring[] {
  return [target, present].flatMap((at) => {
    const value = at === null ? null : valueAt(table, onMeter, at);
    return at === null || value === null ? [] : [{ at, value, text: swrText(value) }];
  });
}

const usualTop = 5;

/** Enough for the present SWR on the meter, three at least, ten at most unless even the lowest is higher. */
function topOf(table: Table, { present }: TrimLengths): number {
  const values = allNumbers(table, [onMeter]);
  const least = Math.min(...values);
  const now = valueAt(table, onMeter, present) ?? least;
  return Math.max(usualTop, 1.2 * now, 1.5 * least);
}

/** Figure of the answer to `trim`. Lengths in metres. */
export function trimLengths(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "trim");
  const lengths = trimLengthsOf(answer);
  const [from, to] = swrSpan(allNumbers(table, [onMeter, atAntenna]), topOf(table, lengths));
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "length"), name: "length, m" },
    verticals: verticals(table, lengths, options),
    note: "",
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
        rings: rings(table, lengths),
        over: (frame, board) => offScaleLabel(table, frame, board),
      },
    ],
  });
  return {
    name: "trimLengths",
    title: lengthsTitle(answer, table, lengths),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describeLengths(answer, table, lengths),
    table: figureTable(table, "What the length does", {
      length: "length",
      swrAtTransmitter: "SWR at the transmitter",
      swrAtFeedPoint: "SWR at the feed point",
      feedPointResistance: "feed point resistance",
      feedPointReactance: "feed point reactance",
    }),
  };
}
