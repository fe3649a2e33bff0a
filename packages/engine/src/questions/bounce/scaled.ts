/** The echoes of a line in volts: from a source that delivers what the station does. */
import { netPower, stateAt } from "../../lines/alongLine";
import type { LineConstants } from "../../lines/lineConstants";
import { type Complex, complex, divide, magnitude, scale } from "../../numerics/complex";
import { type EchoLattice, echoLattice, sourceVoltage, sumOfWaves } from "../../pulses/echoes";
import type { LineLooked } from "./looked";
import { type BounceAsked, lowOver, type SourceWord } from "./parameters";

/** Share of the final waves within which they stay for good. */
export const settledWithin = 0.01;
export const mostEchoes = 200;

export interface Steady {
  readonly voltage: Complex;
  readonly current: Complex;
  readonly power: number;
}

/** Ohm of a source called by a word. */
export function wordedSource(word: SourceWord, z0: Complex): number {
  return word === "matched" ? z0.re : word === "low" ? z0.re / lowOver : z0.re * lowOver;
}

/** A carrier delivers the station's power into the line; a step or a pulse comes from 1 V without load. */
export function scaledLattice(
  looked: LineLooked,
  asked: BounceAsked,
  constants: LineConstants,
  source: Complex,
): EchoLattice {
  const { length, load, powerIn, ratedPower } = looked;
  const request = { constants, length, source, load };
  if (asked.signal !== "carrier") return echoLattice({ ...request, voltage: complex(1) }, mostEchoes + 1);
  if (powerIn === null || load === null) {
    // The first wave carries the rated power into the line's own impedance.
    const wave = complex(Math.sqrt(ratedPower / divide(complex(1), constants.z0).re));
    const voltage = sourceVoltage(source, wave, divide(wave, constants.z0));
    return echoLattice({ ...request, voltage }, mostEchoes + 1);
  }
  const state = stateAt(constants, { voltage: load, current: complex(1) }, length);
  const factor = Math.sqrt(powerIn / netPower(state));
  const voltage = scale(sourceVoltage(source, state.voltage, state.current), factor);
  return echoLattice({ ...request, voltage }, mostEchoes + 1);
}

export function steadyAt(lattice: EchoLattice, distance: number): Steady {
  const { voltage, current } = sumOfWaves(lattice, null, distance);
  return { voltage, current, power: netPower({ voltage, current }) };
}

/** W that the first wave carries before any echo is home. */
export const firstWavePower = ({ waves, constants }: EchoLattice): number =>
  magnitude(waves[0]!) ** 2 * divide(complex(1), constants.z0).re;
