/** Where the joules are, moment by moment. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredTable } from "../kit/answerValues";
import type { Figure, Role } from "../kit/figure";
import { significantText, withUnit } from "../kit/numberText";
import { bounceFilm, timeText } from "./bounceFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve } from "./chartTypes";
import { roundSpan } from "./panelFrame";
import { figureTable } from "./tableValues";

/** Joule in the unit of the axis. */
function prefixOf(most: number): { readonly factor: number; readonly unit: string } {
  if (most >= 2e3) return { factor: 1e-3, unit: "mJ" };
  return most >= 0.5
    ? { factor: 1, unit: "µJ" }
    : most >= 5e-4
      ? { factor: 1e3, unit: "nJ" }
      : { factor: 1e6, unit: "pJ" };
}

export function bounceEnergy(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "energy");
  const { cut } = bounceFilm(answer);
  const shown = cut ?? numbersOf(table, "time").length;
  const time = numbersOf(table, "time").slice(0, shown);
  const delivered = numbersOf(table, "deliveredBySource").slice(0, shown);
  const most = Math.max(...delivered, 1e-12);
  const { factor, unit } = prefixOf(most);
  const curve = (series: string, role: Role, labelRole: Role, dashed: boolean, ...labels: string[]): Curve => ({
    series,
    values: numbersOf(table, series)
      .slice(0, shown)
      .map((value) => value * factor),
    role,
    labelRole,
    dashed,
    labels,
  });
  const drawn = drawChart({
    ...options,
    axis: { values: time, name: "ns after switching on" },
    panels: [
      {
        name: `energy since switching on, ${unit}`,
        height: 190,
        from: 0,
        to: roundSpan([0, 1.05 * most * factor])[1],
        curves: [
          curve("deliveredBySource", "ink", "ink", false, "from the source", "source"),
          curve("intoLoad", "power", "powerInk", false, "into the load", "load"),
          curve("storedInLine", "line", "ink2", true, "in the line", "line"),
          curve("heatInLine", "heat", "heatInk", true, "heat in the line", "heat"),
        ],
        rings: [],
      },
    ],
    verticals: [],
    note: "",
  });
  return {
    name: "bounceEnergy",
    title: titleOf(table, shown, { factor, unit }),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Energy from the source, into the load, stored in the line and turned to heat in it, against time up to ${timeText(time[shown - 1] ?? 0)}; the last three add up to the first.`,
    table: figureTable(table, "Where the energy is", {
      time: "time",
      deliveredBySource: "from the source",
      storedInLine: "stored in the line",
      heatInLine: "heat in the line",
      intoLoad: "into the load",
      storedInLoad: "of it, stored in the load",
    }),
  };
}

function titleOf(table: Table, shown: number, { factor, unit }: ReturnType<typeof prefixOf>): string {
  const stored = numbersOf(table, "storedInLine").slice(0, shown);
  const most = Math.max(...stored) * factor;
  return `The line stores up to ${withUnit(significantText(most, 2), unit)}; all else goes on or turns to heat`;
}
