/** Does the impedance of a line depend on frequency? Its real and imaginary part from the lowest frequency to its end. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredTable, scalar } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { fixedText, impedanceText, withUnit } from "../kit/numberText";
import { designationOf, frequencyLines, hasColumn, ticksFor } from "./buildFacts";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel } from "./chartTypes";
import { frequencyAxis, frequencyText } from "./frequencyAxis";
import { roundSpan } from "./panelFrame";
import { figureTable } from "./tableValues";

type Part = "characteristicResistance" | "characteristicReactance";

/** The route that reaches lowest leads: the build where it is known. */
const columnOf = (table: Table, part: Part): string => (hasColumn(table, `${part}ByBuild`) ? `${part}ByBuild` : part);

function curvesOf(table: Table, part: Part): Curve[] {
  const leading = columnOf(table, part);
  const both = leading !== part;
  const of = (series: string, label: string, dashed: boolean): Curve => ({
    series,
    values: requiredColumn(table, series).values,
    role: dashed ? "line" : "power",
    labelRole: dashed ? "ink2" : "powerInk",
    dashed,
    labels: [label],
  });
  return both
    ? [of(leading, "by its build", false), of(part, "by its sheet", true)]
    : [of(part, part === "characteristicResistance" ? "resistance" : "reactance", false)];
}

/** The rule of thumb as a level line; none where it does not apply. */
function ruleCurve(answer: Answer, table: Table): Curve[] {
  const rule = scalar(answer, "impedanceByRule");
  const ohms = rule?.value ?? null;
  if (ohms === null) return [];
  const values = numbersOf(table, "frequency").map(() => ohms);
  const label = rule?.says ?? "rule of thumb";
  return [{ series: "impedanceByRule", values, role: "ink2", labelRole: "ink2", dashed: true, labels: [label] }];
}

/** Kiloohms where ohms have too many figures for the axis. */
function panelOf(answer: Answer, table: Table, part: Part, name: string): Panel {
  const real = part === "characteristicResistance";
  const curves = [...curvesOf(table, part), ...(real ? ruleCurve(answer, table) : [])];
  const values = curves.flatMap((curve) => curve.values).filter((value): value is number => value !== null);
  const factor = Math.max(...values.map(Math.abs)) < 1000 ? 1 : 1e-3;
  const scaled = (value: number | null): number | null => (value === null ? null : value * factor);
  const [from, to] = roundSpan([0, ...values.map((value) => value * factor)]);
  return {
    name: `${name}, ${factor === 1 ? "Ω" : "kΩ"}`,
    height: real ? 150 : 110,
    from,
    to,
    curves: curves.map((curve) => ({ ...curve, values: curve.values.map(scaled) })),
    rings: [],
  };
}

/** Real and imaginary part at a row of the leading route. */
const impedanceAt = (table: Table, row: number): { readonly re: number; readonly im: number } | null => {
  const [re, im] = (["characteristicResistance", "characteristicReactance"] as const).map(
    (part) => requiredColumn(table, columnOf(table, part)).values[row] ?? null,
  );
  return typeof re === "number" && typeof im === "number" ? { re, im } : null;
};

/** Below this share of the impedance a change is told as none. */
const noticeable = 0.01;

function titleOf(answer: Answer, table: Table): string {
  const frequencies = numbersOf(table, "frequency");
  const low = impedanceAt(table, 0);
  const asked = impedanceAt(
    table,
    frequencies.findIndex((f) => f >= answer.frequency / 1e6 - 1e-9),
  );
  const main = optionalNumber(answer, "characteristicResistance");
  if (low === null || asked === null || main === null) return `The impedance of ${designationOf(answer)}`;
  const at = frequencyText(answer.frequency / 1e6);
  const changes = Math.hypot(low.re - asked.re, low.im - asked.im) > noticeable * asked.re;
  return changes
    ? `The impedance depends on frequency: ${impedanceText(low.re, low.im, 0)} at ${frequencyText(frequencies[0]!)}, ${withUnit(fixedText(main, 0), "Ω")} at ${at}`
    : `The impedance is ${withUnit(fixedText(main, 0), "Ω")} at all frequencies shown`;
}

/** Figure of the answer to `build`. */
export function buildImpedance(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "lineConstants");
  const frequencies = numbersOf(table, "frequency");
  const title = titleOf(answer, table);
  const drawn = drawChart({
    ...options,
    axis: { ...frequencyAxis(frequencies, ticksFor(options.width, options.scale ?? 1)), name: "frequency" },
    panels: [
      panelOf(answer, table, "characteristicResistance", "real part of the impedance"),
      panelOf(answer, table, "characteristicReactance", "imaginary part"),
    ],
    verticals: frequencyLines(answer),
    note: "",
  });
  return {
    name: "buildImpedance",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Two panels over frequency on a logarithmic scale: real and imaginary part of the characteristic impedance of ${designationOf(answer)}, from ${frequencyText(frequencies[0]!)} to ${frequencyText(frequencies.at(-1)!)}. ${title}.`,
    table: figureTable(table, `Impedance of ${designationOf(answer)}`, {
      frequency: "frequency",
      ...words(table),
      ...(hasColumn(table, "velocityFactorByBuild")
        ? { velocityFactorByBuild: "velocity factor by its build" }
        : { velocityFactor: "velocity factor" }),
    }),
  };
}

const words = (table: Table): Readonly<Record<string, string>> => ({
  ...(hasColumn(table, "characteristicResistanceByBuild") && {
    characteristicResistanceByBuild: "real part by its build",
    characteristicReactanceByBuild: "imaginary part by its build",
  }),
  characteristicResistance: hasColumn(table, "characteristicResistanceByBuild")
    ? "real part by its sheet"
    : "real part",
  characteristicReactance: hasColumn(table, "characteristicResistanceByBuild")
    ? "imaginary part by its sheet"
    : "imaginary part",
});
