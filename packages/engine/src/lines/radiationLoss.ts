/** What an open pair radiates although its two currents are opposite. */
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";
import { lineConstants } from "./lineConstants";
import type { ParallelWireLine } from "./lineModel";

export interface RadiationLoss {
  /** Ohm, for the rms current of the forward wave: the whole line together, not per metre. */
  readonly resistance: number;
  /** Share of the power it carries that it radiates. */
  readonly share: number;
}

/**
 * Radiation of a straight pair of `length` m that carries a forward wave only, far from soil and everything else:
 * R = (eta0/2pi) (k s)^2 (1 - sin(2 k l)/(2 k l)), s the spacing. It comes from the two ends, where the currents cross the gap, and
 * so does not grow with a length of more than half a wave: it is no attenuation per metre. Right while k s is small; insulation
 * lowers it a little (left out). A pair that stands unequally or bends sharply radiates more. `frequency` in Hz.
 * Source: far field of two opposite travelling waves and their end pieces, integrated over the sphere; the same as Storer and
 * King, Proc. IRE 39 (1951) 1408 (from memory).
 */
export function radiationLoss(line: ParallelWireLine, frequency: number, length: number): RadiationLoss {
  if (!(length > 0)) throw new RangeError(`radiation of a pair: length ${length} m; expected more than 0`);
  const k = (2 * Math.PI * frequency) / speedOfLight;
  const phase = 2 * k * length;
  // For short lines the bracket loses digits: its series.
  const bracket = phase < 1e-2 ? phase ** 2 / 6 : 1 - Math.sin(phase) / phase;
  const resistance = (vacuumImpedance / (2 * Math.PI)) * (k * line.spacing.value) ** 2 * bracket;
  return { resistance, share: resistance / lineConstants(line, frequency).z0.re };
}
