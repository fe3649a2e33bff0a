/** The standing wave as it grows echo by echo, and the current that belongs to it; for a step, what the start shows. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { plainText, significantText } from "../kit/numberText";
import { gridOf, timeText } from "./bounceFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel } from "./chartTypes";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

/** Of the grown waves, as many are drawn as can be told apart. */
const grownShown = 3;

/** Null for a step or a pulse: nothing stands there. */
export const bounceStanding = (answer: Answer, options: ChartOptions): Figure | null =>
  answer.parameters.signal === "carrier" ? standingChart(answer, options) : null;

export function standingChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "standingWave");
  const grid = gridOf(answer, "standingWaveByEchoes");
  const counts = grid.rows.values.slice(0, Math.min(grownShown, grid.rows.values.length - 1));
  const grown = counts.map((count, i): Curve => {
    const values = grid.values[i]!;
    const name = count === 0 ? "first wave alone" : count === 1 ? "with 1 echo" : `with ${count} echoes`;
    return { series: `after${count}`, values, role: "line", labelRole: "ink2", dashed: true, labels: [name] };
  });
  const top = (values: readonly number[]): number => roundSpan([0, 1.15 * Math.max(...values)])[1];
  const volts = [...allNumbers(table, ["voltage"]), ...grown.flatMap((c) => c.values.map((v) => v ?? 0))];
  const panels: Panel[] = [
    {
      name: "voltage, V rms",
      height: 150,
      from: 0,
      to: top(volts),
      curves: [
        {
          series: "voltage",
          values: requiredColumn(table, "voltage").values,
          role: "power",
          labelRole: "powerInk",
          dashed: false,
          labels: ["for good"],
        },
        ...grown,
      ],
      rings: [],
    },
    {
      name: "current, A rms",
      height: 90,
      from: 0,
      to: top(allNumbers(table, ["current"])),
      curves: [
        {
          series: "current",
          values: requiredColumn(table, "current").values,
          role: "power",
          labelRole: "powerInk",
          dashed: false,
          labels: ["for good"],
        },
      ],
      rings: [],
    },
    {
      name: "power that passes, W",
      height: 60,
      from: 0,
      to: top([...allNumbers(table, ["power"]), 1e-9]),
      curves: [
        {
          series: "power",
          values: requiredColumn(table, "power").values,
          role: "power",
          labelRole: "powerInk",
          dashed: false,
          labels: [],
        },
      ],
      rings: [],
    },
  ];
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "distance"), name: "m along the line, from the source" },
    panels,
    verticals: [],
    note: "",
  });
  const [low, high] = [Math.min(...allNumbers(table, ["voltage"])), Math.max(...allNumbers(table, ["voltage"]))];
  return {
    name: "bounceStanding",
    title: `What stands in the end: ${significantText(low, 2)} to ${significantText(high, 2)} V, high where the current is low`,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Rms voltage, current and net power along the line once all is settled, and the voltage after ${counts.join(", ")} echoes.`,
    table: figureTable(table, "The standing wave", {
      distance: "distance from the source",
      voltage: "voltage",
      current: "current",
      forwardVoltage: "of the wave towards the end",
      reflectedVoltage: "of the wave coming back",
      power: "power that passes",
    }),
  };
}

/** Null for a carrier, and for a pulse, which is over before the echo comes. */
export const bounceStart = (answer: Answer, options: ChartOptions): Figure | null =>
  answer.parameters.signal === "step" ? startChart(answer, options) : null;

/** Volts over amperes at the start against time. */
export function startChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "atTheStart");
  const time = numbersOf(table, "time");
  const column = (name: string) => requiredColumn(table, name).values;
  const own = optionalNumber(answer, "surgeImpedance") ?? 50;
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
