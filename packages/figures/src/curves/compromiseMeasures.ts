/** What the impedance of a line decides: its measures, their optima, and how the impedances in use stand in them. */
import type { Answer } from "@feedpath/engine";
import type { Role } from "../kit/figure";
import { fixedText, withUnit } from "../kit/numberText";

export interface Measure {
  readonly column: string;
  /** Name of the value that holds its optimum, ohm; null for what has none. */
  readonly optimum: string | null;
  readonly panelName: string;
  readonly label: string;
  /** What its optimum is, "most" or "least"; "" for what has none. */
  readonly best: string;
  /** Start of the names of the values that tell where impedances in use stand, percent; null for none. */
  readonly standing: string | null;
  /** From full to short. */
  readonly standingText: (percent: number) => readonly [string, string];
  readonly role: Role;
  readonly labelRole: Role;
  /** The scale starts at zero and ends at this many times the least value; null: at the largest. */
  readonly upTo: number | null;
}

/** Impedances in use that the answer has compared, ohm, in rising order. */
export const standardsOf = (answer: Answer): number[] =>
  Object.keys(answer.values)
    .flatMap((name) => /^extraAttenuationAt(\d+)$/.exec(name)?.[1] ?? [])
    .map(Number)
    .sort((a, b) => a - b);

export const shareText = (percent: number): string => withUnit(fixedText(percent, 0), "%");
export const extraText = (percent: number): string => withUnit(fixedText(percent, percent < 9.95 ? 1 : 0), "%");
const ofTheMost = (percent: number) => [`${shareText(percent)} of the most`, shareText(percent)] as const;
const overTheLeast = (percent: number) => [`${extraText(percent)} over the least`, `+${extraText(percent)}`] as const;

export const measures: readonly Measure[] = [
  {
    column: "attenuation",
    optimum: "attenuationOptimumAtFrequency",
    panelName: "attenuation, dB per 100 m",
    label: "attenuation",
    best: "least",
    standing: "extraAttenuationAt",
    standingText: overTheLeast,
    role: "heat",
    labelRole: "heatInk",
    upTo: 4,
  },
  {
    column: "meanPower",
    optimum: "heatOptimum",
    panelName: "mean power before it is too warm",
    label: "mean power",
    best: "most",
    standing: "meanPowerShareAt",
    standingText: ofTheMost,
    role: "heat",
    labelRole: "heatInk",
    upTo: null,
  },
  {
    column: "peakPower",
    optimum: "powerOptimum",
    panelName: "peak power before breakdown",
    label: "peak power",
    best: "most",
    standing: "peakPowerShareAt",
    standingText: ofTheMost,
    role: "power",
    labelRole: "powerInk",
    upTo: null,
  },
  {
    column: "peakVoltage",
    optimum: "voltageOptimum",
    panelName: "peak voltage before breakdown",
    label: "peak voltage",
    best: "most",
    standing: "peakVoltageShareAt",
    standingText: ofTheMost,
    role: "ink",
    labelRole: "ink",
    upTo: null,
  },
  {
    column: "weight",
    optimum: null,
    panelName: "weight, kg per 100 m",
    label: "weight",
    best: "",
    standing: null,
    standingText: ofTheMost,
    role: "ink",
    labelRole: "ink",
    upTo: 4,
  },
];

/** Room above the highest point for its number. */
export const headroom = 1.15;

export const ohmText = (ohms: number): string => withUnit(fixedText(ohms, ohms < 10 ? 1 : 0), "Ω");
