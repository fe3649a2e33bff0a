/** The standing wave on a line in closed form: squares of voltage and current anywhere, and where a mixture of both is largest. */
import type { PortState } from "../lines/alongLine";
import type { LineConstants } from "../lines/lineConstants";
import { add, type Complex, conjugate, magnitude, multiply, scale, subtract } from "../numerics/complex";
import { leastBetween } from "../numerics/crossings";

export interface StandingWave {
  /** Np/m and rad/m. */
  readonly attenuation: number;
  readonly phase: number;
  /** m. */
  readonly length: number;
  /** V² rms of the two waves at the load end, and V times V*, forward times backward. */
  readonly forward: number;
  readonly backward: number;
  readonly cross: Complex;
  /** Ohm, magnitude of the line's own impedance. */
  readonly impedance: number;
}

/** Of a line of `length` metres whose load end is at `load` (rms). Exact, also for complex Z0. */
export function standingWave(constants: LineConstants, length: number, load: PortState): StandingWave {
  const across = multiply(load.current, constants.z0);
  const forward = scale(add(load.voltage, across), 0.5);
  const backward = scale(subtract(load.voltage, across), 0.5);
  return {
    attenuation: constants.gamma.re,
    phase: constants.gamma.im,
    length,
    forward: magnitude(forward) ** 2,
    backward: magnitude(backward) ** 2,
    cross: multiply(forward, conjugate(backward)),
    impedance: magnitude(constants.z0),
  };
}

export interface Squares {
  /** V² and A², rms. */
  readonly voltage: number;
  readonly current: number;
}

/**
 * Squares of voltage and current `distance` metres from the load end. `swing` multiplies what alternates every half
 * wavelength: 1 as it is, 0 the mean of both waves, between them what conduction along the metal leaves of it.
 */
export function squaresAt(wave: StandingWave, distance: number, swing = 1): Squares {
  const growth = Math.exp(2 * wave.attenuation * distance);
  const mean = wave.forward * growth + wave.backward / growth;
  const angle = 2 * wave.phase * distance;
  const alternating = 2 * swing * (wave.cross.re * Math.cos(angle) - wave.cross.im * Math.sin(angle));
  return { voltage: mean + alternating, current: (mean - alternating) / wave.impedance ** 2 };
}

export interface Greatest {
  readonly value: number;
  /** m from the load end. */
  readonly distance: number;
}

const samples = 64;

/**
 * Largest value along the line of `of` (a sum with positive weights of the two squares). One half wavelength further from the
 * load the alternating part is the same and the rest larger, so that the largest of all lies in the half wave next to the
 * transmitter; only that is searched.
 */
export function greatestAlong(wave: StandingWave, of: (squares: Squares) => number, swing = 1): Greatest {
  const from = Math.max(0, wave.length - Math.PI / wave.phase);
  const value = (distance: number): number => of(squaresAt(wave, distance, swing));
  const step = (wave.length - from) / samples;
  const places = Array.from({ length: samples + 1 }, (_, i) => (i === samples ? wave.length : from + i * step));
  const best = places.reduce((a, b) => (value(b) > value(a) ? b : a));
  const low = Math.max(from, best - step);
  const high = Math.min(wave.length, best + step);
  const refined = high > low ? leastBetween((d) => -value(d), low, high, 1e-5 * step) : best;
  const distance = value(refined) > value(best) ? refined : best;
  return { value: value(distance), distance };
}
