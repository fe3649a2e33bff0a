/** What one thing near by does against its distance: SWR and gain at the angle looked at, with the thing and without. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, numericParameter, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { fixedText, metresText, plainText, swrText } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring, Vertical } from "./chartTypes";
import { thingsOf } from "./nearbyFacts";
import { roundSpan, swrSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

/** Figure of the answer to `nearby`; null where no distance was looked at. */
export function nearbyDistance(answer: Answer, options: ChartOptions): Figure | null {
  return answer.tables.some(({ name }) => name === "distance") ? distanceChart(answer, options) : null;
}

export function distanceChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "distance");
  const [thing = "the thing near by"] = thingsOf(answer);
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "distance"), name: `from the antenna's wire to ${thing}, m` },
    panels: panels(answer, table),
    verticals: verticals(answer, table),
    note: "",
  });
  const title = titleOf(answer, table, thing);
  return {
    name: "nearbyDistance",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Two panels over the distance of ${thing}, moved straight away from the feed point: SWR, and gain at the angle looked at, each with what it would be without it. ${title}.`,
    table: figureTable(table, `What ${thing} does against its distance`, {
      distance: "distance",
      moved: "moved by",
      swr: "SWR",
      gain: "gain at the angle looked at",
      feedPointResistance: "feed point resistance",
      feedPointReactance: "feed point reactance",
    }),
  };
}

/** Without the first thing alone, the others as they are. */
const without = (answer: Answer, name: string): number | null =>
  requiredColumn(requiredTable(answer, "things"), name).values[0] ?? null;

function curves(answer: Answer, table: Table, series: string, bare: string, field: boolean): Curve[] {
  const level = without(answer, bare);
  const { values } = requiredColumn(table, series);
  const look = field
    ? ({ role: "field", labelRole: "fieldInk" } as const)
    : ({ role: "ink", labelRole: "ink" } as const);
  const own: Curve = { series, values, ...look, dashed: false, labels: ["with it"] };
  if (level === null) return [own];
  const flat = values.map(() => level);
  return [own, { series: bare, values: flat, role: "line", labelRole: "ink2", dashed: true, labels: ["without it"] }];
}

function panels(answer: Answer, table: Table): Panel[] {
  const bare = [without(answer, "swrWithout"), without(answer, "gainWithout")];
  const [swrFrom, swrTo] = swrSpan([...allNumbers(table, ["swr"]), bare[0] ?? 1], 10);
  const gains = [...allNumbers(table, ["gain"]), ...(bare[1] === null || bare[1] === undefined ? [] : [bare[1]])];
  const most = Math.max(...gains);
  const [gainFrom, gainTo] = roundSpan(gains.map((g) => Math.max(g, most - deepest)));
  const reference = answer.joints[0]?.swr.reference ?? 50;
  const up = numericParameter(answer, "elevation") ?? 0;
  return [
    {
      name: `SWR on ${plainText(reference, 1)} Ω`,
      height: 128,
      from: swrFrom,
      to: swrTo,
      curves: curves(answer, table, "swr", "swrWithout", false),
      rings: ringNow(table, "swr", swrText),
    },
    {
      name: `gain ${plainText(up, 0)}° up, dBi`,
      height: 128,
      from: gainFrom,
      to: gainTo,
      curves: curves(answer, table, "gain", "gainWithout", true),
      rings: ringNow(table, "gain", (value) => `${fixedText(value, 1)} dBi`),
    },
  ];
}

/** dB below the strongest gain at which the scale ends. */
const deepest = 20;

/** The left edge is as it is: a ring tells its value. */
function ringNow(table: Table, series: string, text: (value: number) => string): Ring[] {
  const value = requiredColumn(table, series).values[0] ?? null;
  return value === null ? [] : [{ at: numbersOf(table, "distance")[0]!, value, text: `${text(value)} now` }];
}

function verticals(answer: Answer, table: Table): Vertical[] {
  const distances = numbersOf(table, "distance");
  const clear = optionalNumber(answer, "clearDistance");
  if (clear === null || clear > distances.at(-1)! || clear - distances[0]! < 0.02 * distances.at(-1)!) return [];
  return [{ at: clear, text: `${metresText(clear)}, no longer matters`, main: true }];
}

function titleOf(answer: Answer, table: Table, thing: string): string {
  const clear = optionalNumber(answer, "clearDistance");
  const now = numbersOf(table, "distance")[0]!;
  const name = `The ${thing}`;
  if (clear === null) return `${name} matters even at ${metresText(numbersOf(table, "distance").at(-1)!)}`;
  if (clear <= now) return `${name}, ${metresText(now)} away, changes nothing worth naming`;
  const swr = requiredColumn(table, "swr").values[0] ?? null;
  const bare = without(answer, "swrWithout");
  return swr !== null && bare !== null && swrText(swr) !== swrText(bare)
    ? `${name} at ${metresText(now)} makes SWR ${swrText(bare)} into ${swrText(swr)}; it matters up to ${metresText(clear)}`
    : `${name} matters up to ${metresText(clear)}, by ${fixedText(Math.abs((requiredColumn(table, "gain").values[0] ?? 0) - (without(answer, "gainWithout") ?? 0)), 1)} dB where it is now`;
}
