/** What the impedance of a line decides: three measures, their optima, and how 50 and 75 ohm stand in them. */
import type { Role } from "../kit/figure";
import { fixedText, withUnit } from "../kit/numberText";

export interface Measure {
  readonly column: string;
  /** Name of the value that holds its optimum, ohm. */
  readonly optimum: string;
  readonly panelName: string;
  readonly label: string;
  /** Words of the optimum: "most power". */
  readonly best: string;
  /** Start of the names of the values that tell where 50 and 75 ohm stand, percent. */
  readonly standing: string;
  /** From full to short. */
  readonly standingText: (percent: number) => readonly [string, string];
  readonly role: Role;
  readonly labelRole: Role;
  /** The scale starts at zero and ends at this many times the least value; null: at the largest. */
  readonly upTo: number | null;
}

/** Impedances in use: where they stand, and what they give away. Ohm. */
export const standards = [50, 75];

export const shareText = (percent: number): string => withUnit(fixedText(percent, 0), "%");
export const extraText = (percent: number): string => withUnit(fixedText(percent, percent < 9.95 ? 1 : 0), "%");
const ofTheMost = (percent: number) => [`${shareText(percent)} of the most`, shareText(percent)] as const;
const overTheLeast = (percent: number) => [`${extraText(percent)} over the least`, `+${extraText(percent)}`] as const;

export const measures: readonly Measure[] = [
  {
    column: "peakPower",
    optimum: "powerOptimum",
    panelName: "peak power before breakdown",
    label: "power",
    best: "most power",
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
    label: "voltage",
    best: "most voltage",
    standing: "peakVoltageShareAt",
    standingText: ofTheMost,
    role: "ink",
    labelRole: "ink",
    upTo: null,
  },
  {
    column: "attenuation",
    optimum: "attenuationOptimumAtFrequency",
    panelName: "attenuation, dB per 100 m",
    label: "attenuation",
    best: "least loss",
    standing: "extraAttenuationAt",
    standingText: overTheLeast,
    role: "heat",
    labelRole: "heatInk",
    upTo: 4,
  },
];

/** Room above the highest point for its number. */
export const headroom = 1.15;

export const ohmText = (ohms: number): string => withUnit(fixedText(ohms, ohms < 10 ? 1 : 0), "Ω");
