/** Matched loss of lines against frequency, on logarithmic scales: skin effect is a slope of one half there. */
import type { Figure, Role } from "../kit/figure";
import { significantText, wholeWattsText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Ring } from "./chartTypes";

/** Loss in dB/m by frequency; null where it is not known. */
export interface LineLoss {
  readonly name: string;
  readonly loss: readonly (number | null)[];
  readonly low: readonly (number | null)[];
  readonly high: readonly (number | null)[];
}

export interface LossStudy {
  /** Hz, rising. */
  readonly frequencies: readonly number[];
  /** One to four; more cannot be told apart. */
  readonly lines: readonly LineLoss[];
  /** "100 m", and m of it. */
  readonly run: { readonly says: string; readonly length: number };
  /** Hz that is looked at, within the frequencies. */
  readonly at: number;
  /** The run that the sentence speaks of, where it is another than that of the scale. */
  readonly told?: { readonly says: string; readonly length: number };
}

const strokes: readonly { readonly role: Role; readonly labelRole: Role; readonly dashed: boolean }[] = [
  { role: "ink", labelRole: "ink", dashed: false },
  { role: "ink", labelRole: "ink", dashed: true },
  { role: "heat", labelRole: "heatInk", dashed: false },
  { role: "heat", labelRole: "heatInk", dashed: true },
];

const logarithm = (value: number | null | undefined): number | null =>
  value === null || value === undefined || value <= 0 ? null : Math.log10(value);

/** Ticks at 1, 2 and 5 times powers of ten within a span of logarithms; at the powers alone where that is many. */
function logTicks(from: number, to: number, factor: number): { value: number; text: string }[] {
  const steps = to - from > 3 ? [1] : to - from > 1.6 ? [1, 3] : [1, 2, 5];
  const decades = Array.from({ length: Math.ceil(to) - Math.floor(from) + 1 }, (_, k) => Math.floor(from) + k);
  return decades
    .flatMap((decade) => steps.map((step) => step * 10 ** decade))
    .filter((value) => Math.log10(value) >= from - 1e-9 && Math.log10(value) <= to + 1e-9)
    .map((value) => ({ value: Math.log10(value), text: significantText(value * factor, 2) }));
}

const shortName = (name: string): string => name.replace(/^(\d+)-ohm /, "$1 Ω ").replace(/ (cable|line)\b/, "");

/** "75 Ω series-6"; the whole name where another line would be called the same. */
function shortestName(name: string, all: readonly string[]): string {
  const words = (one: string): string => shortName(one).split(" ").slice(0, 3).join(" ");
  return all.filter((one) => words(one) === words(name)).length > 1 ? shortName(name) : words(name);
}

function curveOf(line: LineLoss, order: number, { run, lines }: LossStudy): Curve {
  const scaled = (values: readonly (number | null)[]) =>
    values.map((one) => (one === null ? null : logarithm(one * run.length)));
  const bounds = [line.low, line.high].map(scaled);
  const whole = bounds.every((values) => values.every((one) => one !== null));
  return {
    series: line.name,
    values: scaled(line.loss),
    ...(whole && order === 0 ? { low: bounds[0] as number[], high: bounds[1] as number[] } : {}),
    ...strokes[order % strokes.length]!,
    labels: [
      line.name,
      shortName(line.name),
      shortestName(
        line.name,
        lines.map(({ name }) => name),
      ),
    ],
  };
}

/** Loss of a run at the frequency looked at: the point of the list nearest to it. */
function atFrequency({ frequencies, at, run }: LossStudy, line: LineLoss): number | null {
  const distances = frequencies.map((frequency) => Math.abs(Math.log(frequency / at)));
  const loss = line.loss[distances.indexOf(Math.min(...distances))] ?? null;
  return loss === null ? null : loss * run.length;
}

/** The decibels of the run on each curve, where there is room for them. */
const ringsOf = (study: LossStudy): Ring[] =>
  study.lines.flatMap((line) => {
    const loss = atFrequency(study, line);
    if (loss === null || loss <= 0) return [];
    const text = withUnit(significantText(loss, 2), "dB");
    return [{ at: Math.log10(study.at / 1e6), value: Math.log10(loss), text, quiet: true }];
  });

const warmth = (decibels: number): string => wholeWattsText(100 * (1 - 10 ** (-decibels / 10)));

/** Watts of 100 that warm the run, in the line that takes least and in the one that takes most. */
function titleOf(study: LossStudy): string {
  const told = study.told ?? study.run;
  const found = study.lines.flatMap((line) => {
    const loss = atFrequency(study, line);
    return loss === null ? [] : [{ name: line.name, loss: (loss * told.length) / study.run.length }];
  });
  const [least, ...more] = found.sort((a, b) => a.loss - b.loss);
  if (!least) return "Matched loss against frequency";
  const most = more.at(-1);
  const other = most ? `, of ${most.name} ${warmth(most.loss)}` : "";
  return `Of 100\u00a0W at ${withUnit(significantText(study.at / 1e6, 4), "MHz")}, ${told.says} of ${least.name} take ${warmth(least.loss)}${other}`;
}

function describe(study: LossStudy): string {
  const each = study.lines.map((line) => {
    const loss = atFrequency(study, line);
    return loss === null ? `${line.name}: not known` : `${line.name} ${significantText(loss, 3)} dB`;
  });
  return (
    `Matched loss in dB per ${study.run.says} against frequency, both on logarithmic scales. ` +
    `At ${significantText(study.at / 1e6, 4)} MHz: ${each.join(", ")}.`
  );
}

/** Figure of up to four lines. The first one carries its band of doubt. */
export function lineLosses(study: LossStudy, options: ChartOptions): Figure {
  const { frequencies, lines, run, at } = study;
  const curves = lines.map((line, order) => curveOf(line, order, study));
  const values = curves.flatMap((curve) => [...curve.values, ...(curve.low ?? []), ...(curve.high ?? [])]);
  const known = values.filter((one): one is number => one !== null);
  const [from, to] = known.length === 0 ? [-1, 1] : [Math.min(...known) - 0.1, Math.max(...known) + 0.1];
  const xs = frequencies.map((frequency) => Math.log10(frequency / 1e6));
  const drawn = drawChart({
    ...options,
    axis: { values: xs, name: "frequency, MHz", ticks: logTicks(xs[0]!, xs.at(-1)!, 1) },
    verticals: [{ at: Math.log10(at / 1e6), text: `${significantText(at / 1e6, 4)} MHz`, main: true }],
    note: curves[0]?.low
      ? `Band: how far ${lines[0]!.name} may lie from its nominal loss. All new, matched, at 20\u00a0°C.`
      : "All new, matched, at 20\u00a0°C.",
    panels: [
      {
        name: `loss, dB per ${run.says}`,
        height: 220,
        from,
        to,
        ticks: logTicks(from, to, 1),
        curves,
        rings: ringsOf(study),
      },
    ],
  });
  return {
    name: "lineLosses",
    title: titleOf(study),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(study),
    table: {
      caption: `Matched loss in dB per ${run.says}`,
      columns: [{ name: "frequency", unit: "MHz" }, ...lines.map(({ name }) => ({ name, unit: "dB" }))],
      rows: frequencies.map((frequency, i) => [
        frequency / 1e6,
        ...lines.map(({ loss }) => {
          const one = loss[i];
          return one === null || one === undefined ? null : one * run.length;
        }),
      ]),
    },
  };
}
