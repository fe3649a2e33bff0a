/** Connectors by their class: what practice lets them stand. Shown with their status; the maker's own figures go before. */

export interface ConnectorClass {
  readonly name: string;
  /** V peak between inner and outer at sea level. */
  readonly peakVoltage: number;
  /** Hz up to which the class is used. */
  readonly upTo: number;
  /** W of mean power at a frequency (Hz) with a good match; falls with the root of the frequency. */
  readonly meanPower: { readonly power: number; readonly at: number };
  /** dB of one at a frequency (Hz), rising with the root of the frequency. */
  readonly loss: { readonly decibels: number; readonly at: number };
  readonly source: string;
}

const memory = "class of the trade and its standards (from memory)";
const rms = Math.SQRT2;

const classes: readonly (readonly [RegExp, ConnectorClass])[] = [
  [
    /^(uhf|pl-?259|so-?239)/i,
    {
      name: "UHF",
      peakVoltage: 500,
      upTo: 300e6,
      meanPower: { power: 1500, at: 30e6 },
      loss: { decibels: 0.05, at: 100e6 },
      source: "about 500 V peak: common practice, no source; power from memory",
    },
  ],
  [
    /^n\b/i,
    {
      name: "N",
      peakVoltage: 1000 * rms,
      upTo: 11e9,
      meanPower: { power: 1500, at: 100e6 },
      loss: { decibels: 0.05, at: 1e9 },
      source: `1000 V rms: ${memory}`,
    },
  ],
  [
    /^bnc/i,
    {
      name: "BNC",
      peakVoltage: 500 * rms,
      upTo: 4e9,
      meanPower: { power: 300, at: 100e6 },
      loss: { decibels: 0.1, at: 1e9 },
      source: `500 V rms: ${memory}`,
    },
  ],
  [
    /^tnc/i,
    {
      name: "TNC",
      peakVoltage: 500 * rms,
      upTo: 11e9,
      meanPower: { power: 300, at: 100e6 },
      loss: { decibels: 0.1, at: 1e9 },
      source: `500 V rms: ${memory}`,
    },
  ],
  [
    /^(7[-/ ]?16|din)/i,
    {
      name: "7-16",
      peakVoltage: 2700 * rms,
      upTo: 7.5e9,
      meanPower: { power: 5000, at: 100e6 },
      loss: { decibels: 0.03, at: 1e9 },
      source: `2700 V rms without cable: ${memory}`,
    },
  ],
  [
    /^sma/i,
    {
      name: "SMA",
      peakVoltage: 335 * rms,
      upTo: 18e9,
      meanPower: { power: 250, at: 100e6 },
      loss: { decibels: 0.06, at: 1e9 },
      source: `335 V rms on thin cable: ${memory}`,
    },
  ],
  [
    /^f\b/i,
    {
      name: "F",
      peakVoltage: 350 * rms,
      upTo: 1e9,
      meanPower: { power: 100, at: 100e6 },
      loss: { decibels: 0.1, at: 1e9 },
      source: `350 V rms, hardly ever stated: ${memory}`,
    },
  ],
];

/** The class of a series as the file names it ("N", "PL-259"); null where it is none of those known. */
export const connectorClass = (series: string): ConnectorClass | null =>
  classes.find(([pattern]) => pattern.test(series.trim()))?.[1] ?? null;

export const connectorClasses: readonly ConnectorClass[] = classes.map(([, one]) => one);

/** W of mean power a class bears at `frequency` (Hz), sea level, good match; heat at the contacts grows with the root of the frequency. */
export const connectorPower = ({ meanPower }: ConnectorClass, frequency: number): number =>
  meanPower.power * Math.sqrt(meanPower.at / Math.max(frequency, meanPower.at / 100));
