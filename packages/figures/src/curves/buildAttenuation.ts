/** What a line takes over frequency, where it arises, and what its data sheet lists. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure, Role } from "../kit/figure";
import { plainText, significantText, withUnit } from "../kit/numberText";
import { designationOf, frequencyLines, given, hasColumn, ticksFor } from "./buildFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";
import { frequencyAxis, frequencyText, placeOf, powersOfTen } from "./frequencyAxis";
import { figureTable } from "./tableValues";

interface Told {
  readonly series: string;
  readonly labels: readonly string[];
  readonly role: Role;
  readonly labelRole: Role;
  readonly dashed: boolean;
}

const told: readonly Told[] = [
  { series: "attenuation", labels: ["in all"], role: "heat", labelRole: "heatInk", dashed: false },
  {
    series: "attenuationByBuild",
    labels: ["by its build", "build"],
    role: "power",
    labelRole: "powerInk",
    dashed: true,
  },
  { series: "attenuationInInner", labels: ["inner conductor", "inner"], role: "ink2", labelRole: "ink2", dashed: true },
  { series: "attenuationInOuter", labels: ["outer conductor", "outer"], role: "ink2", labelRole: "ink2", dashed: true },
  { series: "attenuationInConductors", labels: ["conductors"], role: "ink2", labelRole: "ink2", dashed: true },
  { series: "attenuationInDielectric", labels: ["insulation"], role: "line", labelRole: "ink2", dashed: true },
  {
    series: "attenuationByRoot",
    labels: ["root of frequency", "root rule"],
    role: "line",
    labelRole: "ink2",
    dashed: true,
  },
];

/** Shares below this part of the smallest total are off the scale. */
const deepest = 0.1;

const logarithm = (value: number | null): number | null => (value !== null && value > 0 ? Math.log10(value) : null);

const curvesOf = (table: Table): Curve[] =>
  told
    .filter(({ series }) => hasColumn(table, series))
    .map((one) => ({
      ...one,
      labels: one.series === "attenuation" && hasColumn(table, "attenuationByBuild") ? ["by its sheet"] : one.labels,
      values: requiredColumn(table, one.series).values.map(logarithm),
    }));

/** Rings where the data sheet has its points. */
function listedRings(answer: Answer): Ring[] {
  const sheet = answer.tables.find(({ name }) => name === "sheetPoints");
  if (!sheet) return [];
  const frequencies = numbersOf(sheet, "frequency");
  return numbersOf(sheet, "listedAttenuation").map((value, i) => ({
    at: placeOf(frequencies[i]!),
    value: Math.log10(value),
    text: significantText(value, 2),
  }));
}

function titleOf(answer: Answer): string {
  const [all, dielectric] = ["attenuation", "attenuationInDielectric"].map((name) => optionalNumber(answer, name));
  const conductors = optionalNumber(answer, "attenuationInConductors");
  const at = frequencyText(answer.frequency / 1e6);
  const sum = (conductors ?? 0) + (dielectric ?? 0);
  const part = conductors === null || sum <= 0 ? null : conductors / sum;
  const most = part !== null && part >= 0.995 ? "all" : withUnit(plainText(100 * (part ?? 0), 0), "%");
  const name = designationOf(answer);
  const takes = `${name.charAt(0).toUpperCase()}${name.slice(1)} takes ${withUnit(significantText(all ?? 0, 2), "dB")} per 100 m at ${at}`;
  return part === null ? takes : `${takes}, ${most} of it in the metal`;
}

/** Figure of the answer to `build`. */
export function buildAttenuation(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "lineConstants");
  const frequencies = numbersOf(table, "frequency");
  const totals = ["attenuation", "attenuationByBuild"]
    .filter((name) => hasColumn(table, name))
    .flatMap((name) => given(table, name));
  const scale = powersOfTen([Math.min(...totals) * deepest * 10, ...totals]);
  const value = requiredNumber(answer, "attenuation");
  const title = titleOf(answer);
  const drawn = drawChart({
    ...options,
    axis: { ...frequencyAxis(frequencies, ticksFor(options.width, options.scale ?? 1)), name: "frequency" },
    panels: [
      {
        name: "attenuation, dB per 100 m",
        height: 256,
        ...scale,
        curves: curvesOf(table),
        rings: [
          ...listedRings(answer),
          {
            at: placeOf(answer.frequency / 1e6),
            value: Math.log10(value),
            text: significantText(value, 2),
            quiet: true,
          },
        ],
      },
    ],
    verticals: frequencyLines(answer),
    note: answer.tables.some(({ name }) => name === "sheetPoints") ? "Rings: points of its data sheet." : "",
  });
  return {
    name: "buildAttenuation",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Attenuation of ${designationOf(answer)} over frequency on logarithmic scales, in all and split into conductors and insulation. ${title}.`,
    table: figureTable(table, `Attenuation of ${designationOf(answer)}`, {
      frequency: "frequency",
      ...Object.fromEntries(
        told.filter(({ series }) => hasColumn(table, series)).map(({ series, labels }) => [series, labels[0]!]),
      ),
    }),
  };
}
