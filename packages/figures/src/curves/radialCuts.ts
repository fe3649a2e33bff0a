/** The same wire in ever more pieces, where the radials lie and at the other place: watts to the sky, then the SWR. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure, Role } from "../kit/figure";
import { metresText, plainText, swrText, wattsText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";
import { countAxis } from "./countAxis";
import { roundSpan, swrSpan } from "./panelFrame";
import { figureTable, valueAt } from "./tableValues";

/** SWR beyond which the scale ends. */
const highestSwr = 6;

/** Values by the counts of the picture; null where a place was not worked out with so many. */
function byCounts(table: Table, column: string, counts: readonly number[]): (number | null)[] {
  const own = numbersOf(table, "count");
  const values = requiredColumn(table, column).values;
  return counts.map((count) => values[own.indexOf(count)] ?? null);
}

const placeOf = (answer: Answer, name: "lie" | "otherLie"): string => String(answer.parameters[name] ?? "");

interface Places {
  readonly here: Table;
  readonly there: Table | undefined;
  readonly counts: readonly number[];
}

function placesOf(answer: Answer): Places {
  const here = requiredTable(answer, "sameWire");
  const there = answer.tables.find(({ name }) => name === "sameWireOtherwise");
  const counts = [...numbersOf(here, "count"), ...(there ? numbersOf(there, "count") : [])];
  return { here, there, counts: [...new Set(counts)].sort((a, b) => a - b) };
}

/** Where the radials lie: drawn through; at the other place: dashed. */
function curves(answer: Answer, places: Places, series: string, role: Role, labelRole: Role): Curve[] {
  const { here, there, counts } = places;
  const one = (table: Table, label: string, dashed: boolean): Curve => ({
    series,
    values: byCounts(table, series, counts),
    labels: [label],
    role,
    labelRole,
    dashed,
  });
  return [one(here, placeOf(answer, "lie"), false), ...(there ? [one(there, placeOf(answer, "otherLie"), true)] : [])];
}

const finite = (all: readonly Curve[]): number[] =>
  all.flatMap(({ values }) => values.filter((value): value is number => value !== null));

function titleOf(answer: Answer, { here, there }: Places): string {
  const all = [here, ...(there ? [there] : [])].flatMap((table) => {
    const lie = placeOf(answer, table === here ? "lie" : "otherLie");
    const [counts, lengths] = [numbersOf(table, "count"), numbersOf(table, "length")];
    return numbersOf(table, "wattsToSky").map((watts, i) => ({ watts, lie, count: counts[i]!, length: lengths[i]! }));
  });
  const best = all.reduce((a, b) => (b.watts > a.watts ? b : a));
  const total = metresText(best.count * best.length);
  return `${total} of wire send most as ${best.count} of ${metresText(best.length)}, ${best.lie}: ${wattsText(best.watts)}`;
}

/** Figure of the answer to `radials`: the same wire cut otherwise; null where it was cut in one way only. */
export function radialCuts(answer: Answer, options: ChartOptions): Figure | null {
  const table = answer.tables.find(({ name }) => name === "sameWire");
  return table && numbersOf(table, "count").length > 1 ? radialCutsChart(answer, options) : null;
}

export function radialCutsChart(answer: Answer, options: ChartOptions): Figure {
  const places = placesOf(answer);
  const { here, there, counts } = places;
  const axis = countAxis(counts);
  const present = optionalNumber(answer, "radialCount") ?? 0;
  const now = present > 0 && numbersOf(here, "count").includes(present) ? present : null;
  const ring = (column: string, text: (value: number) => string): Ring[] => {
    const value = now === null ? null : valueAt(here, column, now);
    return now === null || value === null ? [] : [{ at: axis.at(now), value, text: text(value) }];
  };
  const watts = curves(answer, places, "wattsToSky", "power", "powerInk");
  const swrs = curves(answer, places, "swrAtFeedPoint", "ink", "ink");
  const [swrFrom, swrTo] = swrSpan(finite(swrs), highestSwr);
  const reference = answer.joints[0]?.swr.reference ?? 50;
  const axisName = `radials that ${metresText(numbersOf(here, "count")[0]! * numbersOf(here, "length")[0]!)} of wire make`;
  const drawn = drawChart({
    ...options,
    axis: { ...axis, name: axisName },
    panels: [
      {
        name: `watts to the sky, of ${wattsText(requiredNumber(answer, "powerIntoAntenna"))} in the antenna`,
        height: 150,
        from: 0,
        to: roundSpan([0, ...finite(watts)])[1],
        curves: watts,
        rings: ring("wattsToSky", wattsText),
      },
      {
        name: `SWR at the feed point, on ${withUnit(plainText(reference, 1), "Ω")}`,
        height: 96,
        from: swrFrom,
        to: swrTo,
        curves: swrs,
        rings: ring("swrAtFeedPoint", swrText),
      },
    ],
    verticals: now === null ? [] : [{ at: axis.at(now), text: `${plainText(now, 0)} now`, main: true }],
    note: "",
  });
  const title = titleOf(answer, places);
  return {
    name: "radialCuts",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `${title}. Watts to the sky and, below, the SWR at the feed point against the number of ${axisName}: ${placeOf(answer, "lie")}${there ? `, dashed ${placeOf(answer, "otherLie")}` : ""}; the antenna is not trimmed.`,
    table: tableOf(answer, places, title),
  };
}

const words = {
  count: "radials",
  length: "length of each",
  wattsToSky: "power to the sky",
  skyShare: "share of the power in the antenna",
  swrAtFeedPoint: "SWR at the feed point",
};

function tableOf(answer: Answer, { here, there }: Places, caption: string): Figure["table"] {
  const own = figureTable(here, caption, words);
  const rest = there ? figureTable(there, caption, words).rows : [];
  return {
    caption,
    columns: [{ name: "where", unit: "" }, ...own.columns],
    rows: [
      ...own.rows.map((row) => [placeOf(answer, "lie"), ...row]),
      ...rest.map((row) => [placeOf(answer, "otherLie"), ...row]),
    ],
  };
}
