/** Velocity factor of a piece of line from its first dip: a quarter wave, its far end open. */
import type { ScalarValue, WorkingStep } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import { fixedNumber, significantNumber, withPrefix } from "../../quantity/format";

/** What the asker did not say of the measurement: tape and plug (m), and the analyser's frequency, relative. */
const usualErrors = { tape: 0.01, plug: 0.02, frequency: 1e-3 } as const;

export interface MeasuredVelocity {
  /** Hz, m. */
  readonly dip: number;
  readonly length: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** By the line as it is known, at the dip. */
  readonly expected: number;
}

/**
 * 4 l f/c at the first frequency at which the open piece looks shorted. Errors add up as the root of the sum of squares; loss moves
 * the dip by less than a thousandth as long as it is a dip.
 */
export function measuredVelocity(dip: number, length: number, expected: number): MeasuredVelocity {
  const value = (4 * length * dip) / speedOfLight;
  const off = Math.hypot(usualErrors.tape / length, usualErrors.plug / length, usualErrors.frequency);
  return { dip, length, value, low: value * (1 - off), high: value * (1 + off), expected };
}

/** Hz: a higher first dip of this length (m) would have its waves run faster than light, whatever the tape was off. */
export const highestDip = (length: number): number => speedOfLight / (4 * Math.max(length - usualErrors.tape, 1e-4));

export const measuredValue = ({ value, low, high }: MeasuredVelocity): ScalarValue => ({
  value,
  low,
  high,
  unit: "1",
  basis: "measured",
});

export const measuredStep = ({ dip, length, value, low, high, expected }: MeasuredVelocity): WorkingStep => ({
  text: `Its far end open, a piece looks shorted first where it is a quarter wave long. ${significantNumber(length, 4)} m with the dip at ${withPrefix(dip, "Hz")} give (by what is known of the line, ${fixedNumber(expected, 3)} there):`,
  formula: "\\frac{v}{c} = \\frac{4 \\ell f}{c}",
  substituted: `\\frac{4 \\times ${significantNumber(length, 4)} \\times ${significantNumber(dip / 1e6, 4)} \\times 10^{6}}{2.998 \\times 10^{8}} = ${fixedNumber(value, 3)}, \\; ${fixedNumber(low, 3)} \\le \\frac{v}{c} \\le ${fixedNumber(high, 3)}`,
  source: `definition; tape within ${1e3 * usualErrors.tape} mm, plug ${1e3 * usualErrors.plug} mm, analyser ${100 * usualErrors.frequency} % (our assumption). Two pieces of unlike length cancel the plug`,
  explains: ["measuredVelocityFactor"],
});
