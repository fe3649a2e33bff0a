/** The standing wave as it grows echo by echo, and the current that belongs to it. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { metresText, significantText, withUnit } from "../kit/numberText";
import { gridOf } from "./bounceFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring } from "./chartTypes";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

/** Of the grown waves, as many are drawn as can be told apart. */
const grownShown = 3;

/** Null for a step or a pulse: nothing stands there. */
export const bounceStanding = (answer: Answer, options: ChartOptions): Figure | null =>
  answer.parameters.signal === "carrier" ? standingChart(answer, options) : null;

/** The place that stands most: "93 V at 1.4 m". */
function highest(table: Table, column: string, unit: string): Ring {
  const values = numbersOf(table, column);
  const value = Math.max(...values);
  const at = numbersOf(table, table.axis)[values.indexOf(value)]!;
  const size = withUnit(significantText(value, 2), unit);
  return { at, value, text: `${size} at ${metresText(at)}`, short: size };
}

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
      rings: [highest(table, "voltage", "V")],
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
      rings: [highest(table, "current", "A")],
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
