/** Voltage, current and conductor temperature along the lines, with what each stands. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, requiredColumn, requiredTable } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { metresText, plainText, voltsText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Ring, Vertical } from "./chartTypes";
import { amperesText } from "./outsideFacts";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable } from "./tableValues";

export const degreesText = (degrees: number): string => withUnit(plainText(degrees, 0), "°C");

interface Peak {
  readonly at: number;
  readonly value: number;
}

/** Largest number of a column, with its place on the axis; null where the column has none. */
function peakOf(table: Table, column: string): Peak | null {
  const at = numbersOf(table, table.axis);
  const values = requiredColumn(table, column).values;
  return values.reduce<Peak | null>(
    (best, value, i) => (value !== null && (best === null || value > best.value) ? { at: at[i]!, value } : best),
    null,
  );
}

/** Of a limit that is far above nothing is drawn: its number stands in the panel's name. */
const farAbove = 2.5;

interface Wanted {
  readonly column: string;
  readonly limit: string | null;
  readonly name: string;
  readonly role: "power" | "heat" | "field";
  readonly height: number;
  readonly text: (value: number) => string;
  /** The scale begins here; left out: below the least value. */
  readonly from?: number;
}

function panelOf(table: Table, want: Wanted): Panel[] {
  const peak = peakOf(table, want.column);
  if (peak === null) return [];
  const limits = want.limit === null ? [] : allNumbers(table, [want.limit]);
  const least = Math.min(...limits);
  const drawn = limits.length > 0 && (want.from !== 0 || least < farAbove * peak.value);
  const values = allNumbers(table, [want.column]);
  const inView = drawn ? limits.filter((limit) => want.from !== 0 || limit < farAbove * peak.value) : [];
  const scale = [...values, ...inView];
  const [low, high] = roundSpan([want.from ?? Math.min(...scale), 1.08 * Math.max(...scale)]);
  const far = !drawn && limits.length > 0 ? `; limit ${want.text(least)}` : "";
  const ring: Ring = { at: peak.at, value: peak.value, text: want.text(peak.value) };
  return [
    {
      name: `${want.name}${far}`,
      height: want.height,
      from: want.from ?? low,
      to: high,
      curves: [
        curve(table, want.column, want.role, false, []),
        ...(drawn && want.limit !== null ? [curve(table, want.limit, want.role, true, ["its limit", "limit"])] : []),
      ],
      rings: [ring],
    },
  ];
}

function curve(table: Table, series: string, role: Wanted["role"], dashed: boolean, labels: readonly string[]): Curve {
  return {
    series,
    values: requiredColumn(table, series).values,
    role: dashed ? "line" : role,
    labelRole: dashed ? "ink2" : `${role}Ink`,
    dashed,
    labels,
  };
}

/** Where one line ends and the next begins. */
function verticals(answer: Answer, table: Table): Vertical[] {
  const at = numbersOf(table, table.axis);
  const gaps = requiredColumn(table, "peakVoltage").values.flatMap((value, i) => (value === null ? [at[i]!] : []));
  let sum = 0;
  const ends = answer.parts
    .filter((part) => part.length > 0)
    .map((part) => {
      sum += part.length;
      return { at: sum, name: part.name };
    });
  return gaps.map((gap) => {
    const end = ends.find((one) => Math.abs(one.at - gap) < 1e-6 * Math.max(1, gap));
    return { at: gap, text: end ? `end of ${end.name}` : "", main: false, quiet: true };
  });
}

export function stressAlong(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "alongLines");
  const panels = [
    ...panelOf(table, {
      column: "peakVoltage",
      limit: "voltageLimit",
      name: "voltage, V peak",
      role: "power",
      height: 120,
      text: voltsText,
      from: 0,
    }),
    ...panelOf(table, {
      column: "current",
      limit: null,
      name: "current, A",
      role: "power",
      height: 84,
      text: amperesText,
      from: 0,
    }),
    ...panelOf(table, {
      column: "conductorTemperature",
      limit: "temperatureLimit",
      name: "conductor at its hottest, °C",
      role: "heat",
      height: 120,
      text: degreesText,
    }),
  ];
  const drawn = drawChart({
    ...options,
    axis: { values: numbersOf(table, "distance"), name: "m along the lines, from the transmitter" },
    panels,
    verticals: verticals(answer, table),
    note: "",
  });
  return {
    name: "stressAlong",
    title: titleOf(table),
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: `Voltage, current and temperature against the distance along the lines, from the transmitter. ${titleOf(table)}.`,
    table: figureTable(table, "Along the lines", {
      distance: "distance from the transmitter",
      peakVoltage: "voltage, peak",
      voltageLimit: "its limit",
      current: "current",
      conductorTemperature: "conductor",
      temperatureLimit: "its limit",
    }),
  };
}

function titleOf(table: Table): string {
  const volts = peakOf(table, "peakVoltage");
  const heat = peakOf(table, "conductorTemperature");
  const limit = heat && limitAt(table, heat.at);
  const voltage = volts
    ? `${voltsText(volts.value)} peak at most, ${metresText(volts.at)} from the transmitter`
    : "Nothing is known along the lines";
  return heat && limit
    ? `${voltage}; the conductor reaches ${degreesText(heat.value)} of ${degreesText(limit)}`
    : voltage;
}

/** The limit of the line at a place; of two that meet there the first. */
function limitAt(table: Table, at: number): number | null {
  const row = numbersOf(table, table.axis).indexOf(at);
  return requiredColumn(table, "temperatureLimit").values[row] ?? null;
}
