/** What a step shows at the start of the line. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { plainText } from "../kit/numberText";
import { timeText } from "./bounceFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Panel } from "./chartTypes";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

/** Null for a carrier, and for a pulse, which is over before the echo comes. */
export const bounceStart = (answer: Answer, options: ChartOptions): Figure | null =>
  answer.parameters.signal === "step" ? startChart(answer, options) : null;

/** Volts over amperes at the start against time. */
export function startChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "atTheStart");
  const time = numbersOf(table, "time");
  const column = (name: string) => requiredColumn(table, name).values;
  const own = optionalNumber(answer, "seenBeforeEcho") ?? optionalNumber(answer, "surgeImpedance") ?? 50;
  const home = optionalNumber(answer, "firstEchoHome") ?? 0;
  const panels: Panel[] = [
    {
      name: "volts over amperes at the start, Ω",
      height: 150,
      from: 0,
      to: 4 * roundSpan([0, own])[1],
      curves: [
        {
          series: "voltageOverCurrent",
          values: column("voltageOverCurrent"),
          role: "power",
          labelRole: "powerInk",
          dashed: false,
          labels: [],
        },
      ],
      rings: [],
    },
    {
      name: "voltage at the start, V",
      height: 80,
      from: Math.min(0, roundSpan(allNumbers(table, ["voltage"]))[0]),
      to: roundSpan([0, 1.1 * Math.max(...allNumbers(table, ["voltage"]))])[1],
      curves: [
        { series: "voltage", values: column("voltage"), role: "ink", labelRole: "ink", dashed: false, labels: [] },
      ],
      rings: [],
    },
  ];
  const drawn = drawChart({
    ...options,
    axis: { values: time, name: "ns after switching on" },
    panels,
    verticals: [{ at: home, text: "first echo home", main: true }],
    note: "",
  });
  return {
    name: "bounceStart",
    title: `${plainText(own, 0)} Ω until the first echo is home after ${timeText(home)}, then what stands at the end`,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Quotient of voltage and current at the start of the line, and the voltage there, from switching on to ${timeText(time[time.length - 1] ?? 0)}.`,
    table: figureTable(table, "At the start of the line", {
      time: "time",
      voltage: "voltage",
      current: "current",
      voltageOverCurrent: "voltage over current",
    }),
  };
}
