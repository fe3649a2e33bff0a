/** Why lines have the impedance they have: what each optimum asks for, and what lies between. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { significantText } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Panel, Ring, Vertical } from "./chartTypes";
import { extraText, headroom, type Measure, measures, ohmText, shareText, standardsOf } from "./compromiseMeasures";
import { roundSpan } from "./panelFrame";
import { allNumbers, bandsNote, figureTable, valueAt } from "./tableValues";

/** Volts and watts by a power of a thousand, so that the ticks are short. */
function prefixOf(unit: string, most: number): { readonly factor: number; readonly unit: string } {
  if (unit !== "V" && unit !== "W") return { factor: 1, unit };
  if (most >= 2e6) return { factor: 1e-6, unit: `M${unit}` };
  return most >= 2e3 ? { factor: 1e-3, unit: `k${unit}` } : { factor: 1, unit };
}

function panelOf(answer: Answer, table: Table, measure: Measure): Panel {
  const { values, unit } = requiredColumn(table, measure.column);
  const numbers = allNumbers(table, [measure.column]);
  const inUse = standardsOf(answer).flatMap((z) => valueAt(table, measure.column, z) ?? []);
  const most =
    measure.upTo === null
      ? Math.max(...numbers)
      : Math.min(Math.max(...numbers), Math.max(measure.upTo * Math.min(...numbers), ...inUse));
  const prefix = prefixOf(unit, most);
  const at = measure.optimum === null ? null : optionalNumber(answer, measure.optimum);
  const value = at === null ? null : valueAt(table, measure.column, at);
  const named = unit === "V" || unit === "W" ? `${measure.panelName}, ${prefix.unit}` : measure.panelName;
  return {
    name: named,
    height: 96,
    from: 0,
    to: roundSpan([0, headroom * most * prefix.factor])[1],
    curves: [
      {
        series: measure.column,
        values: values.map((one) => (one === null ? null : one * prefix.factor)),
        role: measure.role,
        labelRole: measure.labelRole,
        dashed: false,
        labels: [measure.label],
      },
    ],
    rings: [
      ...(at === null || value === null
        ? []
        : [{ at, value: value * prefix.factor, text: `${measure.best}: ${ohmText(at)}` }]),
      ...standingRings(answer, table, measure, prefix.factor),
    ],
  };
}

/** A dot where each impedance in use crosses the curve: its share of the most, or what it adds to the least. */
function standingRings(answer: Answer, table: Table, measure: Measure, factor: number): Ring[] {
  return standardsOf(answer).flatMap((at): Ring[] => {
    const percent = measure.standing === null ? null : optionalNumber(answer, `${measure.standing}${at}`);
    const value = valueAt(table, measure.column, at);
    if (percent === null || value === null) return [];
    const [text, short] = measure.standingText(percent);
    return [{ at, value: value * factor, text, short, quiet: true }];
  });
}

function verticals(answer: Answer): Vertical[] {
  const [geometric, arithmetic] = [optionalNumber(answer, "geometricMean"), optionalNumber(answer, "arithmeticMean")];
  return [
    ...(geometric === null ? [] : [{ at: geometric, text: `geometric mean ${ohmText(geometric)}`, main: true }]),
    ...(arithmetic === null ? [] : [{ at: arithmetic, text: `arithmetic mean ${ohmText(arithmetic)}`, main: false }]),
    ...standardsOf(answer).map((at) => ({ at, text: ohmText(at), main: false, quiet: true })),
  ];
}

/** The measures this answer has worked out. */
const measured = (table: Table): readonly Measure[] => measures.filter(({ column }) => column in table.columns);

const numberOf = (answer: Answer, name: string | null): number | null =>
  name === null ? null : optionalNumber(answer, name);

/** "300 Ω adds 44 %, 450 Ω 230 %". */
function giveAway(answer: Answer): string[] {
  const each = standardsOf(answer).flatMap((at) => {
    const extra = optionalNumber(answer, `extraAttenuationAt${at}`);
    return extra === null ? [] : [{ at: ohmText(at), extra: extraText(extra) }];
  });
  const texts = each.slice(0, 2).map(({ at, extra }, i) => `${at} ${i === 0 ? "adds " : ""}${extra}`);
  return texts.length === 0 ? [] : [texts.join(", ")];
}

function sentenceOf(answer: Answer): string {
  const [power, loss] = ["powerOptimum", "attenuationOptimumAtFrequency"].map((name) => optionalNumber(answer, name));
  if (typeof loss !== "number") return "No impedance is best in everything";
  const least = `Least attenuation is at ${ohmText(loss)}`;
  const between = optionalNumber(answer, "geometricMean");
  if (typeof power !== "number" || between === null) return [least, ...giveAway(answer)].join("; ");
  return `${least}, most peak power at ${ohmText(power)}; ${ohmText(between)} lies between`;
}

function standingSentence(answer: Answer, at: number): string {
  const [power, voltage, extra] = ["peakPowerShareAt", "peakVoltageShareAt", "extraAttenuationAt"].map((name) =>
    optionalNumber(answer, `${name}${at}`),
  );
  if (typeof power !== "number" || typeof voltage !== "number" || typeof extra !== "number") return "";
  return ` ${ohmText(at)} holds ${shareText(power)} of the most power and ${shareText(voltage)} of the most voltage, and its attenuation is ${extraText(extra)} over the least.`;
}

function describe(answer: Answer, table: Table): string {
  const each = measured(table).map(({ best, label, optimum, column }) => {
    const at = numberOf(answer, optimum);
    const value = at === null ? null : valueAt(table, column, at);
    const { unit } = requiredColumn(table, column);
    return at === null || value === null
      ? ""
      : ` ${best.charAt(0).toUpperCase()}${best.slice(1)} ${label} at ${ohmText(at)}: ${significantText(value, 3)} ${unit}.`;
  });
  const standing = standardsOf(answer).map((at) => standingSentence(answer, at));
  const held =
    answer.parameters.held === "weight" || answer.parameters.held === "cost" ? answer.parameters.held : "size";
  return `Panels over the characteristic impedance of a line of one ${held} and dielectric.${each.join("")}${standing.join("")}`;
}

const columnWords: Readonly<Record<string, string>> = {
  attenuation: "attenuation",
  peakVoltage: "peak voltage",
  peakPower: "peak power",
  meanPower: "mean power",
  weight: "weight",
};

/** Figure of the answer to `why`. Impedances in ohm. */
export function impedanceCompromise(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "impedanceCompromise");
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "characteristicImpedance"), name: "characteristic impedance, Ω" },
    panels: measured(table).map((measure) => panelOf(answer, table, measure)),
    verticals: verticals(answer),
    note: bandsNote(answer, table),
  });
  return {
    name: "impedanceCompromise",
    title: sentenceOf(answer),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(answer, table),
    table: figureTable(table, "What the characteristic impedance decides", {
      characteristicImpedance: "characteristic impedance",
      ...Object.fromEntries(Object.entries(columnWords).filter(([name]) => name in table.columns)),
    }),
  };
}
