/** The lattice of echoes of a carrier, as phasors on the line's true constants: every wave by its place in the order. */
import type { LineConstants } from "../lines/lineConstants";
import { voltageReflection } from "../lines/reflection";
import {
  add,
  type Complex,
  divide,
  exponential,
  magnitude,
  multiply,
  one,
  scale,
  subtract,
  zero,
} from "../numerics/complex";

/** Impedances in ohm; a load of null is an open end. `voltage` is the source's without load. Phasors are rms. */
export interface EchoRequest {
  readonly constants: LineConstants;
  readonly length: number;
  readonly source: Complex;
  readonly load: Complex | null;
  readonly voltage: Complex;
}

export interface EchoLattice {
  readonly constants: LineConstants;
  readonly length: number;
  readonly reflectionAtSource: Complex;
  readonly reflectionAtLoad: Complex;
  /** Factor of one way along the line. */
  readonly oneWay: Complex;
  /** Volts with which wave 0, 1, 2, ... sets out: even ones from the source, odd ones from the load. */
  readonly waves: readonly Complex[];
  /** Factor from one wave to the next but one. */
  readonly round: Complex;
  /** Both directions without end: the geometric series, which is the phasor answer. At the ends they set out from. */
  readonly forward: Complex;
  readonly reflected: Complex;
}

/** `count` waves, the first one included. */
export function echoLattice({ constants, length, source, load, voltage }: EchoRequest, count: number): EchoLattice {
  const { z0, gamma } = constants;
  const reflectionAtSource = voltageReflection(source, z0);
  const reflectionAtLoad = load === null ? one : voltageReflection(load, z0);
  const oneWay = exponential(scale(gamma, -length));
  const first = multiply(voltage, divide(z0, add(source, z0)));
  const waves = [first];
  while (waves.length < count) {
    const end = waves.length % 2 === 1 ? reflectionAtLoad : reflectionAtSource;
    waves.push(multiply(waves[waves.length - 1]!, multiply(oneWay, end)));
  }
  const round = multiply(multiply(reflectionAtSource, reflectionAtLoad), multiply(oneWay, oneWay));
  const forward = divide(first, subtract(one, round));
  const reflected = multiply(forward, multiply(oneWay, reflectionAtLoad));
  return { constants, length, reflectionAtSource, reflectionAtLoad, oneWay, waves, round, forward, reflected };
}

/** Voltage (V) and current (A) at `distance` metres from the source of waves 0 to `last`, each over the whole line; `last` null: without end. */
export function sumOfWaves(lattice: EchoLattice, last: number | null, distance: number) {
  const { constants, length, waves } = lattice;
  let [forward, reflected]: [Complex, Complex] = [zero, zero];
  if (last === null) [forward, reflected] = [lattice.forward, lattice.reflected];
  else {
    for (let k = 0; k <= last; k += 2) forward = add(forward, waves[k]!);
    for (let k = 1; k <= last; k += 2) reflected = add(reflected, waves[k]!);
  }
  const there = multiply(forward, exponential(scale(constants.gamma, -distance)));
  const back = multiply(reflected, exponential(scale(constants.gamma, distance - length)));
  return { voltage: add(there, back), current: divide(subtract(there, back), constants.z0), there, back };
}

/**
 * Echoes after which both directions stay within `share` of what they will be for good: what is missing shrinks by the
 * round factor each time. Null when it never does (no loss anywhere) or needs more than `most`.
 */
export function echoesToSettle({ waves, round, reflectionAtLoad, oneWay }: EchoLattice, share: number, most: number) {
  if (magnitude(multiply(reflectionAtLoad, oneWay)) < share || magnitude(waves[0]!) === 0) return 0;
  const factor = magnitude(round);
  if (factor <= share) return 1;
  if (!(factor < 1)) return null;
  const rounds = Math.ceil(Math.log(share) / Math.log(factor)) - 1;
  const echoes = 2 * rounds + 1;
  return echoes <= most ? echoes : null;
}

/** Net power (W) that passes towards the load. */
export const powerOf = (voltage: Complex, current: Complex): number =>
  voltage.re * current.re + voltage.im * current.im;

/** Voltage (V) a source of impedance `source` needs without load for the state at the line's start. */
export const sourceVoltage = (source: Complex, voltage: Complex, current: Complex): Complex =>
  add(voltage, multiply(source, current));
