/** What is found in a data sheet: the points looked at, and a finding of them. */
import { significantNumber, withPrefix } from "../quantity/format";

export interface SheetPoint {
  /** Hz. */
  readonly frequency: number;
  readonly decibelsPerMetre: number;
}

/** What else the sheet says; left out where it does not. SI units. */
export interface SheetFacts {
  readonly impedance?: number | undefined;
  readonly velocityFactor?: number | undefined;
  readonly capacitance?: number | undefined;
  /** Ohm/m at direct current, both ways together. */
  readonly loopResistance?: number | undefined;
  /** m over the insulation, which is the inside of a coaxial line's outer conductor. */
  readonly outerSize?: number | undefined;
}

export interface SheetFinding {
  readonly about: "loss" | "velocity factor" | "capacitance" | "loop resistance";
  /** Which of the points, counted from 0 in the order given; null where it is all of them or none. */
  readonly point: number | null;
  /** A sentence. */
  readonly says: string;
  /** What to try, a sentence; null where nothing suggests itself. */
  readonly suggestion: string | null;
}

/** How far one point may lie off: the measure of a consistent sheet. */
export const slack = 0.05;

export const perHundred = (decibelsPerMetre: number): string =>
  `${significantNumber(100 * decibelsPerMetre, 3)} dB/100 m`;
export const at = (point: SheetPoint): string =>
  `${perHundred(point.decibelsPerMetre)} at ${withPrefix(point.frequency, "Hz")}`;

export interface Numbered extends SheetPoint {
  readonly index: number;
}

export const loss = (point: number | null, says: string, suggestion: string | null = null): SheetFinding => ({
  about: "loss",
  point,
  says,
  suggestion,
});
