/** What a line takes over frequency, what its data sheet lists, and where it arises. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable } from "../kit/answerValues";
import type { Figure, Role } from "../kit/figure";
import { plainText, significantText, withUnit } from "../kit/numberText";
import { designationOf, frequencyLines, given, hasColumn, ticksFor } from "./buildFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring } from "./chartTypes";
import { frequencyAxis, frequencyText, placeOf, powersOfTen } from "./frequencyAxis";
import { figureTable } from "./tableValues";

interface Told {
  readonly series: string;
  readonly labels: readonly string[];
  readonly role: Role;
  readonly labelRole: Role;
  readonly dashed: boolean;
}

const whole: readonly Told[] = [
  { series: "attenuation", labels: ["in all"], role: "heat", labelRole: "heatInk", dashed: false },
  { series: "attenuationByBuild", labels: ["by its build"], role: "ink", labelRole: "ink", dashed: true },
  {
    series: "attenuationByRoot",
    labels: ["by the root of frequency", "root of frequency", "root rule"],
    role: "line",
    labelRole: "ink2",
    dashed: true,
  },
];

const shares: readonly Told[] = [
  { series: "attenuationInInner", labels: ["inner conductor"], role: "heat", labelRole: "heatInk", dashed: false },
  { series: "attenuationInOuter", labels: ["outer conductor"], role: "heat", labelRole: "heatInk", dashed: true },
  { series: "attenuationInConductors", labels: ["conductors"], role: "heat", labelRole: "heatInk", dashed: false },
  { series: "attenuationInDielectric", labels: ["insulation"], role: "ink", labelRole: "ink", dashed: true },
];

const shown = (table: Table, told: readonly Told[]): Told[] => told.filter(({ series }) => hasColumn(table, series));

const logarithm = (value: number | null): number | null => (value !== null && value > 0 ? Math.log10(value) : null);

function wholePanel(answer: Answer, table: Table): Panel {
  const both = hasColumn(table, "attenuationByBuild");
  const totals = ["attenuation", ...(both ? ["attenuationByBuild"] : [])].flatMap((name) => given(table, name));
  const value = requiredNumber(answer, "attenuation");
  const curves = shown(table, whole).map(
    (one): Curve => ({
      ...one,
      labels: one.series === "attenuation" && both ? ["by its sheet"] : one.labels,
      values: requiredColumn(table, one.series).values.map(logarithm),
    }),
  );
  const asked: Ring = {
    at: placeOf(answer.frequency / 1e6),
    value: Math.log10(value),
    text: significantText(value, 2),
    quiet: true,
  };
  return {
    name: "attenuation, dB per 100 m",
    height: 220,
    ...powersOfTen(totals),
    curves,
    rings: [...listedRings(answer), asked],
  };
}

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

/** Per cent of the sum of all parts. */
function sharePanel(table: Table): Panel {
  const told = shown(table, shares);
  const columns = told.map(({ series }) => requiredColumn(table, series).values);
  const sums = (columns[0] ?? []).map((_, row) => columns.reduce((sum, values) => sum + (values[row] ?? 0), 0));
  const share = (value: number | null, row: number): number | null =>
    value === null || !(sums[row]! > 0) ? null : Math.min(100, (100 * value) / sums[row]!);
  return {
    name: hasColumn(table, "attenuationByBuild") ? "where it arises, % (by its build)" : "where it arises, %",
    height: 110,
    from: 0,
    to: 100,
    curves: told.map((one, i) => ({ ...one, values: columns[i]!.map(share) })),
    rings: [],
  };
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
  const title = titleOf(answer);
  const drawn = drawChart({
    ...options,
    axis: { ...frequencyAxis(frequencies, ticksFor(options.width, options.scale ?? 1)), name: "frequency" },
    panels: [wholePanel(answer, table), sharePanel(table)],
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
    description: `Two panels over frequency on a logarithmic scale: attenuation of ${designationOf(answer)}, and the shares of conductors and insulation in it. ${title}.`,
    table: figureTable(table, `Attenuation of ${designationOf(answer)}`, {
      frequency: "frequency",
      ...Object.fromEntries(shown(table, [...whole, ...shares]).map(({ series, labels }) => [series, labels[0]!])),
    }),
  };
}
