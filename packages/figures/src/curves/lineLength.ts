/** What a line of another impedance shows the set, against its length. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { swrText } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Vertical } from "./chartTypes";
import { roundSpan, swrSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

/** Beyond this the SWR's scale is cut. */
const mostSwr = 20;

/** Figure of the answer to `line`; null where no length was studied. */
export function lineLength(answer: Answer, options: ChartOptions): Figure | null {
  return answer.tables.some(({ name }) => name === "lineLength") ? lineLengthChart(answer, options) : null;
}

const curve = (table: Table, series: string, look: Omit<Curve, "series" | "values">): Curve => ({
  series,
  values: requiredColumn(table, series).values,
  ...look,
});

function panelsOf(answer: Answer, table: Table): Panel[] {
  const power = requiredNumber(answer, "powerFromTransmitter");
  const [, top] = swrSpan(allNumbers(table, ["swrSeen"]), mostSwr);
  const impedances = allNumbers(table, ["resistanceSeen", "reactanceSeen"]);
  const kilo = Math.max(...impedances.map(Math.abs)) >= 2000;
  const [low, high] = roundSpan(kilo ? impedances.map((z) => z / 1000) : impedances);
  const scaled = (one: Curve): Curve =>
    kilo ? { ...one, values: one.values.map((z) => (z === null ? null : z / 1000)) } : one;
  const ink = { role: "ink", labelRole: "ink", dashed: false } as const;
  return [
    {
      name: "into the antenna, W",
      height: 84,
      from: 0,
      to: roundSpan([0, Math.max(power, ...allNumbers(table, ["wattsIntoAntenna"]))])[1],
      curves: [
        curve(table, "wattsIntoAntenna", { role: "power", labelRole: "powerInk", dashed: false, labels: ["watts"] }),
      ],
      rings: [],
    },
    {
      name: `SWR ${seenBy(answer)}`,
      height: 112,
      from: 1,
      to: top,
      curves: [curve(table, "swrSeen", { ...ink, labels: ["SWR"] })],
      rings: [],
    },
    {
      name: `impedance ${seenBy(answer)}, ${kilo ? "kΩ" : "Ω"}`,
      height: 112,
      from: low,
      to: high,
      curves: [
        curve(table, "resistanceSeen", { ...ink, labels: ["resistance", "R"] }),
        curve(table, "reactanceSeen", {
          ...ink,
          role: "line",
          labelRole: "ink2",
          dashed: true,
          labels: ["reactance", "X"],
        }),
      ].map(scaled),
      rings: [],
    },
  ];
}

const seenBy = (answer: Answer): string => (answer.parameters.seenBy === "tuner" ? "at the tuner" : "at the set");

/** The length as it is, and the multiples of half a wave in the band of the picture. */
function verticalsOf(answer: Answer): Vertical[] {
  const { length } = answer.parameters;
  const waves = answer.tables.find((one) => one.name === "halfWaves");
  const quiet = waves
    ? numbersOf(waves, "length").flatMap((at, i): Vertical[] => {
        const here = Math.abs(numbersOf(waves, "frequency")[i]! - answer.frequency / 1e6) < 1e-6;
        return here ? [{ at, text: `${numbersOf(waves, "multiple")[i]} × λ/2`, main: false, quiet: true }] : [];
      })
    : [];
  return [...(typeof length === "number" ? [{ at: length, text: "as long as now", main: true }] : []), ...quiet];
}

export function lineLengthChart(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "lineLength");
  const [low, high] = ["lowestSwrByLength", "highestSwrByLength"].map((name) => optionalNumber(answer, name));
  const name = String(answer.parameters.lengthOf ?? "the line");
  const title = `By its length alone ${name} shows SWR ${swrText(low ?? null)} to ${swrText(high ?? null)} ${seenBy(answer)}`;
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "length"), name: "length of the line, m" },
    panels: panelsOf(answer, table),
    verticals: verticalsOf(answer),
    note: "",
  });
  return {
    name: "lineLength",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `${title}. Three panels over the length of the line: watts into the antenna, SWR, and resistance and reactance.`,
    table: figureTable(table, `What ${name} shows at other lengths`, {
      length: "length",
      wattsIntoAntenna: "watts into the antenna",
      swrSeen: "SWR seen",
      resistanceSeen: "resistance seen",
      reactanceSeen: "reactance seen",
    }),
  };
}
