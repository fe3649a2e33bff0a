/** What the number and the length of radials do: watts to the sky first, then the SWR, which may say the opposite. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { metresText, plainText, swrText, wattsText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";
import { countAxis } from "./countAxis";
import { roundSpan, swrSpan } from "./panelFrame";
import { allNumbers, bandsNote, figureTable, valueAt } from "./tableValues";

/** SWR beyond which the scale ends. */
const highestSwr = 6;

interface Told {
  readonly name: string;
  readonly table: string;
  readonly axisName: string;
  readonly title: string;
  /** The radials as they are, on the axis. */
  readonly now: { readonly at: number; readonly text: string };
}

const curve = (table: Table, series: string, labels: readonly string[], power: boolean): Curve => {
  const { values, low, high } = requiredColumn(table, series);
  const roles = power
    ? ({ role: "power", labelRole: "powerInk" } as const)
    : ({ role: "ink", labelRole: "ink" } as const);
  return { series, values, low, high, labels, dashed: false, ...roles };
};

/** `at` on the table's own axis, drawn at `place`. */
function ringAt(table: Table, column: string, at: number, place: number, text: (value: number) => string): Ring[] {
  const value = valueAt(table, column, at);
  return value === null ? [] : [{ at: place, value, text: text(value) }];
}

function panels(answer: Answer, options: ChartOptions, told: Told): Figure {
  const table = requiredTable(answer, told.table);
  const into = requiredNumber(answer, "powerIntoAntenna");
  const [swrFrom, swrTo] = swrSpan(allNumbers(table, ["swrAtFeedPoint"]), highestSwr);
  const reference = answer.joints[0]?.swr.reference ?? 50;
  const counted = table.axis === "count" ? countAxis(numbersOf(table, "count")) : null;
  const place = counted ? counted.at(told.now.at) : told.now.at;
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, table.axis), ...counted, name: told.axisName },
    panels: [
      {
        name: `watts to the sky, of ${wattsText(into)} in the antenna`,
        height: 150,
        from: 0,
        to: roundSpan([0, ...allNumbers(table, ["wattsToSky"])])[1],
        curves: [curve(table, "wattsToSky", ["to the sky"], true)],
        rings: ringAt(table, "wattsToSky", told.now.at, place, wattsText),
      },
      {
        name: `SWR at the feed point, on ${withUnit(plainText(reference, 1), "Ω")}`,
        height: 96,
        from: swrFrom,
        to: swrTo,
        curves: [curve(table, "swrAtFeedPoint", ["at the feed point"], false)],
        rings: ringAt(table, "swrAtFeedPoint", told.now.at, place, swrText),
      },
    ],
    verticals: [{ at: place, text: told.now.text, main: true }],
    note: bandsNote(answer, table),
  });
  return {
    name: told.name,
    title: told.title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `${told.title}. Watts to the sky and, below, the SWR at the feed point against ${told.axisName}; the antenna is not trimmed while the radials change.`,
    table: figureTable(table, told.title, {
      count: "radials",
      length: "length of each",
      wattsToSky: "power to the sky",
      skyShare: "share of the power in the antenna",
      swrAtFeedPoint: "SWR at the feed point",
      swrAtTransmitter: "SWR at the transmitter",
      feedPointResistance: "feed point resistance",
      sendingResistance: "resistance that sends",
    }),
  };
}

/** Figure of the answer to `radials`: their number, at one length. */
export function radialNumber(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "radialCount");
  const count = requiredNumber(answer, "radialCount");
  const watts = requiredColumn(table, "wattsToSky").values;
  const counts = numbersOf(table, "count");
  const title = `${plainText(counts[0]!, 0)} to ${plainText(counts.at(-1)!, 0)} radials: ${wattsText(watts[0] ?? 0)} to ${wattsText(watts.at(-1) ?? 0)} leave`;
  const now = { at: count, text: count === 0 ? "none now" : `${plainText(count, 0)} now` };
  return panels(answer, options, {
    name: "radialNumber",
    table: "radialCount",
    axisName: "number of radials",
    title,
    now,
  });
}

/** Figure of the answer to `radials`: their length, at one number; null where only one length could be worked out. */
export function radialLengths(answer: Answer, options: ChartOptions): Figure | null {
  const table = answer.tables.find(({ name }) => name === "radialLength");
  return table && numbersOf(table, "length").length > 1 ? radialLengthChart(answer, options) : null;
}

export function radialLengthChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "radialLength");
  const lengths = numbersOf(table, "length");
  const watts = numbersOf(table, "wattsToSky");
  const best = watts.indexOf(Math.max(...watts));
  const own = answer.values.radialLength;
  const now = own && "value" in own && own.value !== null ? own.value : lengths[best]!;
  return panels(answer, options, {
    name: "radialLengths",
    table: "radialLength",
    axisName: "length of each radial, m",
    title: `Radials of ${metresText(lengths[best]!)} send most: ${wattsText(watts[best]!)}`,
    now: { at: now, text: `${metresText(now)} each` },
  });
}
