/** How time grows with a count, both on logarithmic scales, drawn as the answers' curves are. */
import { type Curve, drawChart, type Figure } from "@feedpath/figures";
import { threeDigits } from "../report/section";

export interface GrowthCurve {
  readonly name: string;
  /** Milliseconds at each count; null where it was not measured. */
  readonly times: readonly (number | null)[];
}

export interface Growth {
  readonly name: string;
  readonly title: string;
  /** "unknown currents" */
  readonly counted: string;
  readonly counts: readonly number[];
  /** Two at most. */
  readonly curves: readonly GrowthCurve[];
}

const width = 640;

/** A power of ten of milliseconds, in seconds. */
const powerText = (power: number): string => (10 ** (power - 3)).toFixed(Math.max(0, 3 - power));

const curveOf = ({ name, times }: GrowthCurve, i: number): Curve => ({
  series: name,
  values: times.map((time) => (time === null ? null : Math.log10(time))),
  role: i === 0 ? "power" : "field",
  labelRole: i === 0 ? "powerInk" : "fieldInk",
  dashed: i > 0,
  labels: [name],
});

export function growthFigure({ name, title, counted, counts, curves }: Growth): Figure {
  const all = curves.flatMap(({ times }) => times.filter((time) => time !== null));
  const from = Math.floor(Math.log10(Math.min(...all)));
  const to = Math.ceil(Math.log10(Math.max(...all)));
  const powers = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const drawn = drawChart({
    width,
    axis: {
      values: counts.map(Math.log10),
      name: counted,
      ticks: counts.map((count) => ({ value: Math.log10(count), text: String(count) })),
    },
    panels: [
      {
        name: "time, s",
        height: 260,
        from,
        to,
        ticks: powers.map((power) => ({ value: power, text: powerText(power) })),
        curves: curves.map(curveOf),
        rings: [],
      },
    ],
    verticals: [],
    note: "Both scales are logarithmic.",
  });
  const rows = counts.map((count, i) => [count, ...curves.map(({ times }) => times[i] ?? null)]);
  return {
    name,
    title,
    width,
    height: drawn.height,
    marks: drawn.marks,
    description: `${title}. ${curves.map((curve) => spoken(curve, counted, counts)).join(" ")}`,
    table: {
      caption: title,
      columns: [{ name: counted, unit: "" }, ...curves.map((curve) => ({ name: curve.name, unit: "ms" }))],
      rows,
    },
  };
}

function spoken({ name, times }: GrowthCurve, counted: string, counts: readonly number[]): string {
  const known = counts.flatMap((count, i) => (typeof times[i] === "number" ? [{ count, time: times[i] }] : []));
  const [first, last] = [known[0]!, known.at(-1)!];
  return `${name}: ${threeDigits(first.time)} ms at ${first.count} ${counted}, ${threeDigits(last.time)} ms at ${last.count}.`;
}
