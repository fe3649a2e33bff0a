/** Characteristic impedance and propagation constant of any line at a frequency: always complex, always with loss. */
import { resistivityRatio, statedTemperature } from "../conductors/metalTemperature";
import { add, type Complex, complex, divide, magnitudeSquared, multiply, scale, squareRoot } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { coaxialImmittance } from "./coaxialLine";
import { dataSheetImmittance } from "./dataSheetLine";
import { fourWireImmittance } from "./fourWireLine";
import type { LineImmittance } from "./immittance";
import type { LineModel } from "./lineModel";
import { lineAtTemperature } from "./lineTemperature";
import { parallelWireImmittance } from "./parallelWireLine";
import { shieldedPairImmittance } from "./shieldedPairLine";
import { higherModeNotes } from "./te11";
import { twistedPairImmittance } from "./twistedPairLine";
import { wireOverPlaneImmittance } from "./wireOverPlaneLine";

/** Decibels in one neper. */
export const decibelsPerNeper = 20 / Math.LN10;

export interface LineOptions {
  /** Loss over that of a new line, dB/m, at this frequency. */
  readonly excessDecibelsPerMetre?: number;
  /** Temperature of the conductors in kelvin; 293.15 when left out. */
  readonly temperature?: number | null;
}

export interface LineConstants {
  /** Hz. */
  readonly frequency: number;
  /** Characteristic impedance, ohm. */
  readonly z0: Complex;
  /** Propagation constant per metre: attenuation in Np + j phase in rad. */
  readonly gamma: Complex;
  /** Ohm, H, S and F per metre. */
  readonly resistance: number;
  readonly inductance: number;
  readonly conductance: number;
  readonly capacitance: number;
  /** Phase velocity over that of light. */
  readonly velocityFactor: number;
  /** Sentences on where the numbers are weaker than they look; empty when there is nothing to say. */
  readonly notes: readonly string[];
}

/**
 * Constants per metre of a line at `frequency` (Hz, above 0). The excess loss adds to the attenuation and leaves Z0 as it
 * is: half of it in series, half in shunt, since its split is not known. A temperature changes the conductivity of every
 * metal by its own coefficient; of a data sheet's line, whose metals are not known, copper's (0.393 % per kelvin, IEC 60028)
 * under the square root of skin effect.
 */
export function lineConstants(model: LineModel, frequency: number, options: LineOptions = {}): LineConstants {
  if (!(frequency > 0 && frequency < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`line constants: frequency ${frequency} Hz, expected a positive number`);
  }
  const immittance = lineImmittance(model, frequency, options.temperature ?? statedTemperature);
  return fromImmittance(immittance, frequency, (options.excessDecibelsPerMetre ?? 0) / decibelsPerNeper);
}

/** Series impedance and shunt admittance of any line at `frequency` (Hz) with its conductors at `temperature` (K). */
export function lineImmittance(model: LineModel, frequency: number, temperature: number): LineImmittance {
  const omega = 2 * Math.PI * frequency;
  if (model.kind === "data sheet") {
    return dataSheetImmittance(model, omega, Math.sqrt(resistivityRatio(temperature)));
  }
  const line = lineAtTemperature(model, temperature);
  switch (line.kind) {
    case "coaxial":
      return { ...coaxialImmittance(line, omega), notes: higherModeNotes(line, frequency) };
    case "parallel-wire":
      return parallelWireImmittance(line, omega);
    case "twisted pair":
      return twistedPairImmittance(line, omega);
    case "wire over plane":
      return wireOverPlaneImmittance(line, omega);
    case "four-wire":
      return fourWireImmittance(line, omega);
    case "shielded pair":
      return shieldedPairImmittance(line, omega);
  }
}

/**
 * The telegrapher's equations: Z0 = sqrt(Z/Y), gamma = sqrt(Z Y); `excess` in Np/m is added to gamma at constant Z0. The
 * attenuation is taken from the power that a wave leaves in R and G, which is the same and loses no digits where loss is small.
 */
export function fromImmittance(immittance: LineImmittance, frequency: number, excess: number): LineConstants {
  const rootSeries = squareRoot(immittance.series);
  const rootShunt = squareRoot(immittance.shunt);
  const z0 = divide(rootSeries, rootShunt);
  const attenuation = (immittance.series.re + immittance.shunt.re * magnitudeSquared(z0)) / (2 * z0.re);
  const gamma = complex(attenuation + excess, multiply(rootSeries, rootShunt).im);
  const series = add(immittance.series, scale(z0, excess));
  const shunt = add(immittance.shunt, scale(divide(rootShunt, rootSeries), excess));
  const omega = 2 * Math.PI * frequency;
  return {
    frequency,
    z0,
    gamma,
    resistance: series.re,
    inductance: series.im / omega,
    conductance: shunt.re,
    capacitance: shunt.im / omega,
    velocityFactor: omega / gamma.im / speedOfLight,
    notes: immittance.notes,
  };
}

/** Matched loss of `length` metres in dB: what the line takes when it is closed with its own impedance. */
export const matchedLoss = (constants: LineConstants, length: number): number =>
  constants.gamma.re * length * decibelsPerNeper;
