/** How the hottest line warms while the station sends. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { plainText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve } from "./chartTypes";
import { roundSpan } from "./panelFrame";
import { degreesText } from "./stressAlong";
import { allNumbers, figureTable } from "./tableValues";

/** True where a line of the answer has a build from which its temperature is worked out. */
export const hasCourse = (answer: Answer): boolean => answer.tables.some(({ name }) => name === "temperatureInTime");

export function stressInTime(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "temperatureInTime");
  const conductor = numbersOf(table, "conductorTemperature");
  const highest = Math.max(...conductor);
  const [from, to] = roundSpan([
    ...allNumbers(table, ["conductorTemperature", "jacketTemperature"]),
    1.04 * Math.max(...numbersOf(table, "temperatureLimit")),
  ]);
  const times = numbersOf(table, "time");
  const drawn = drawChart({
    ...options,
    axis: { values: times, name: "minutes from the first transmission" },
    panels: [
      {
        name: "°C at the hottest place",
        height: 168,
        from,
        to,
        curves: [
          {
            series: "conductorTemperature",
            values: conductor,
            role: "heat",
            labelRole: "heatInk",
            dashed: false,
            labels: ["conductor"],
          },
          ...(differ(table) ? [surfaceOf(table)] : []),
          {
            series: "temperatureLimit",
            values: requiredColumn(table, "temperatureLimit").values,
            role: "line",
            labelRole: "ink2",
            dashed: true,
            labels: ["its limit"],
          },
        ],
        rings: [{ at: times[conductor.indexOf(highest)]!, value: highest, text: degreesText(highest) }],
      },
    ],
    verticals: [],
    note: "",
  });
  const title = titleOf(answer, highest);
  return {
    name: "stressInTime",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Temperature of the hottest place of the line against time, from cold. ${title}.`,
    table: figureTable(table, "Temperature in time", {
      time: "time",
      conductorTemperature: "conductor",
      jacketTemperature: "surface",
      temperatureLimit: "its limit",
    }),
  };
}

/** K below which surface and conductor are one curve: bare wire. */
const oneCurve = 1;

function differ(table: Table): boolean {
  const surface = numbersOf(table, "jacketTemperature");
  return numbersOf(table, "conductorTemperature").some((t, i) => Math.abs(t - surface[i]!) > oneCurve);
}

const surfaceOf = (table: Table): Curve => ({
  series: "jacketTemperature",
  values: requiredColumn(table, "jacketTemperature").values,
  role: "heat",
  labelRole: "heatInk",
  dashed: true,
  labels: ["surface"],
});

function titleOf(answer: Answer, highest: number): string {
  const seconds = optionalNumber(answer, "timeConstant");
  const says = answer.values.timeConstant;
  const name = says && "says" in says && says.says ? says.says : "the line";
  const pace =
    seconds === null
      ? ""
      : `, two thirds of the way in ${seconds < 90 ? withUnit(plainText(seconds, 0), "s") : withUnit(plainText(seconds / 60, 0), "min")}`;
  return `The conductor of ${name} warms to ${degreesText(highest)}${pace}`;
}
