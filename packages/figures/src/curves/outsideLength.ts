/** The current on the outside against the length of the line, over half a wave. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { metresText } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve } from "./chartTypes";
import { noChokes, percentText, quietLine, shareTop } from "./outsideFacts";
import { allNumbers, figureTable } from "./tableValues";

/** Percent at which the scale ends: beyond, the line carries as much as the antenna. */
const most = 120;

/** Figure of the answer to `outside`; null where no other length could be worked out. */
export function outsideLength(answer: Answer, options: ChartOptions): Figure | null {
  return answer.tables.some(({ name }) => name === "outsideLength") ? lengthChart(answer, options) : null;
}

export function lengthChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "outsideLength");
  const series = noChokes(answer) ? ["share"] : ["share", "shareWithoutChokes"];
  const curves = series.map(
    (name, i): Curve => ({
      series: name,
      values: requiredColumn(table, name).values,
      role: i === 0 ? "field" : "line",
      labelRole: i === 0 ? "fieldInk" : "ink2",
      dashed: i > 0,
      labels: i === 0 ? ["as it is"] : ["without any choke", "no choke"],
    }),
  );
  const extra = numbersOf(table, "extraLength");
  const drawn = drawChart({
    ...options,
    axis: { values: extra, name: "m of line more at the transmitter (less: left)" },
    panels: [
      {
        name: "most on the outside, % of the antenna's current",
        height: 168,
        from: 0,
        to: shareTop(allNumbers(table, series), most),
        curves,
        rings: [],
        over: quietLine,
      },
    ],
    verticals: [{ at: 0, text: "as it is", main: true }],
    note: "",
  });
  const title = titleOf(answer);
  return {
    name: "outsideLength",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Largest share of the antenna's current on the outside, against metres of line more or less at the transmitter. ${title}.`,
    table: figureTable(table, "What another length of line does", {
      extraLength: "line more",
      share: "share as it is",
      shareWithoutChokes: "share without any choke",
      swrAtTransmitter: "SWR at the transmitter",
    }),
  };
}

function titleOf(answer: Answer): string {
  const extra = requiredNumber(answer, "worstExtraLength");
  const share = percentText(requiredNumber(answer, "shareAtWorstLength"));
  if (Math.abs(extra) < 0.05) return `No other length is worse than this one: ${share}`;
  return `With ${metresText(Math.abs(extra))} ${extra < 0 ? "less" : "more"} line the outside carries ${share}`;
}
