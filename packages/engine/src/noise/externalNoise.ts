/**
 * Radio noise from outside, as ITU-R P.372 gives it (edition P.372-16 of 2022; formulas, table and ranges quoted from memory):
 * Fa in dB over k T0 b, available from an equivalent antenna without losses of its own. Medians over time and places.
 */

/** Kinds of place, as the recommendation names them. */
export type NoiseClass = "city" | "residential" | "rural" | "quiet rural";

interface ClassConstants {
  /** Fa = c - d log10(f/MHz). */
  readonly c: number;
  readonly d: number;
  /** dB from the median to the upper and the lower decile within an hour. */
  readonly upper: number;
  readonly lower: number;
  /** Hz up to which the formula is given. */
  readonly to: number;
}

/** P.372 gives no deciles for quiet rural places: those of rural ones are taken (our assumption). */
export const noiseClasses: Readonly<Record<NoiseClass, ClassConstants>> = {
  city: { c: 76.8, d: 27.7, upper: 11, lower: 6.7, to: 250e6 },
  residential: { c: 72.5, d: 27.7, upper: 10.6, lower: 5.3, to: 250e6 },
  rural: { c: 67.2, d: 27.7, upper: 9.2, lower: 4.6, to: 250e6 },
  "quiet rural": { c: 53.6, d: 28.6, upper: 9.2, lower: 4.6, to: 30e6 },
};

export const noiseClassNames = Object.keys(noiseClasses) as NoiseClass[];

/** Hz from which the formulas of man-made noise are given. */
export const manMadeFrom = 0.3e6;
/** Hz between which the formula of galactic noise is given; below, the F2 layer (critical frequency foF2) mostly holds it off. */
const galacticSpan = { from: 10e6, to: 100e6 };
/** dB to either decile of galactic noise. */
const galacticDecile = 2;

const decades = (frequency: number): number => Math.log10(frequency / 1e6);

/** Median man-made noise, dB over k T0 b; `frequency` in Hz, 0.3 MHz at least. Above the end of the formula its line is carried on. */
export function manMadeNoise(place: NoiseClass, frequency: number): number {
  if (!(frequency >= manMadeFrom)) {
    throw new RangeError(`man-made noise: ${frequency} Hz; expected at least ${manMadeFrom} Hz (ITU-R P.372)`);
  }
  const { c, d } = noiseClasses[place];
  return c - d * decades(frequency);
}

/** Galactic noise, 52 - 23 log10(f/MHz) dB over k T0 b; null below 10 MHz. Above 100 MHz its line is carried on. */
export const galacticNoise = (frequency: number): number | null =>
  frequency < galacticSpan.from ? null : 52 - 23 * decades(frequency);

export interface ExternalNoise {
  /** dB over k T0 b. */
  readonly manMade: number;
  readonly galactic: number | null;
  /** Sum of the powers. */
  readonly total: number;
  /** The sum with both at their lower and upper deciles. */
  readonly lower: number;
  readonly upper: number;
  /** One of the formulas is carried on beyond the frequencies it is given for. */
  readonly extended: boolean;
}

/** Noise figures in dB added as powers. */
export const sumOfNoise = (figures: readonly number[]): number =>
  10 * Math.log10(figures.reduce((sum, figure) => sum + 10 ** (figure / 10), 0));

/** Man-made and galactic noise together. Atmospheric noise (lightning far away) is not in it. */
export function externalNoise(place: NoiseClass, frequency: number): ExternalNoise {
  const manMade = manMadeNoise(place, frequency);
  const galactic = galacticNoise(frequency);
  const { upper, lower, to } = noiseClasses[place];
  const sum = (manMadeShift: number, galacticShift: number): number =>
    sumOfNoise([manMade + manMadeShift, ...(galactic === null ? [] : [galactic + galacticShift])]);
  return {
    manMade,
    galactic,
    total: sum(0, 0),
    lower: sum(-lower, -galacticDecile),
    upper: sum(upper, galacticDecile),
    extended: frequency > Math.min(to, galacticSpan.to),
  };
}
