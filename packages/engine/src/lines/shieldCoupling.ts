/** What a shield lets through: power that a line's inside gives to the line that its shield makes with what lies outside. */
import type { BraidModel } from "../conductors/shieldImpedances";
import { transferImpedance } from "../conductors/shieldImpedances";
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  magnitude,
  magnitudeSquared,
  scale,
  subtract,
} from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { lineConstants } from "./lineConstants";
import type { CoaxialLine } from "./lineModel";

/** The circuit outside: the shield against soil, mast or the other wires, matched at both ends. */
export interface OutsideCircuit {
  /** Ohm. */
  readonly impedance: number;
  /** Of the wave along the outside. */
  readonly velocityFactor: number;
}

/**
 * Outside by which screening attenuation is compared: 150 ohm, and a wave a tenth faster than that inside.
 * Source: IEC 62153-4-4 (values from memory).
 */
export const comparedOutside = (insideVelocityFactor: number): OutsideCircuit => ({
  impedance: 150,
  velocityFactor: Math.min(1.1 * insideVelocityFactor, 1),
});

export interface ShieldCoupling {
  /** Ohm/m. */
  readonly transferImpedance: Complex;
  /** dB: power sent into the inside over that which leaves the outside's end near the source, and its far end. */
  readonly nearEnd: number;
  readonly farEnd: number;
  /** dB: power sent in over the greatest that either end can get from a line of any length; no ripple in it. */
  readonly screeningAttenuation: number;
}

/**
 * Coupling of `length` m of a matched line at `frequency` (Hz), or null where the transfer impedance is not known. The voltage Zt I
 * dx along every piece drives both ends of the outside: with currents I e^(-g1 x) inside, I_near = Zt I/(2 Z2) times the integral of
 * e^(-(g1 + g2) x), and I_far the same with e^(-g1 x - g2 (l - x)); g2 has no loss. From a long line the power is at most
 * |Zt|^2 |I|^2/(Z2 |b1 -+ b2|^2). Exact while what is coupled is little; coupling by the electric field through the holes
 * and radiation are left out. Infinity where nothing comes through.
 * Source: definitions of IEC 62153-4-1 and 62153-4-4 (from memory), the integrals elementary.
 */
export function shieldCoupling(
  line: CoaxialLine,
  frequency: number,
  length: number,
  outside?: OutsideCircuit,
  model?: BraidModel,
): ShieldCoupling | null {
  if (!(length > 0)) throw new RangeError(`coupling through a shield: length ${length} m; expected more than 0`);
  const omega = 2 * Math.PI * frequency;
  const transfer = transferImpedance(line.outer, omega, model);
  if (transfer === null) return null;
  const { gamma, z0, velocityFactor } = lineConstants(line, frequency);
  const { impedance, velocityFactor: outer } = outside ?? comparedOutside(velocityFactor);
  const along = complex(0, omega / (outer * speedOfLight));
  /** Power of either end over that of the inside, for the current's integral in metres. */
  const share = (metres: number): number => (magnitudeSquared(transfer) * metres ** 2) / (4 * impedance * z0.re);
  const near = magnitude(integral(add(gamma, along), length));
  const far = magnitude(integral(subtract(gamma, along), length));
  const longest = 2 / Math.min(magnitude(subtract(gamma, along)), magnitude(add(gamma, along)));
  return {
    transferImpedance: transfer,
    nearEnd: -10 * Math.log10(share(near)),
    farEnd: -10 * Math.log10(share(far)),
    screeningAttenuation: -10 * Math.log10(share(longest)),
  };
}

/** Integral of e^(-k x) from 0 to `length`. */
function integral(k: Complex, length: number): Complex {
  const whole = scale(k, length);
  if (magnitude(whole) < 1e-6) return scale(subtract(complex(1), scale(whole, 0.5)), length);
  return scale(divide(subtract(complex(1), exponential(scale(whole, -1))), whole), length);
}
