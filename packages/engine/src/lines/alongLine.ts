/** Voltage, current and net power along a line, and what a real load makes of its loss. Phasors are rms. */
import { add, type Complex, divide, hyperbolicCosine, hyperbolicSine, multiply, scale } from "../numerics/complex";
import { type LineConstants, matchedLoss } from "./lineConstants";

/** Voltage (V) across and current (A) through a joint, current counted towards the antenna; rms phasors. */
export interface PortState {
  readonly voltage: Complex;
  readonly current: Complex;
}

/** Net real power (W) that passes a joint towards the antenna. */
export const netPower = ({ voltage, current }: PortState): number => voltage.re * current.re + voltage.im * current.im;

/** State at `distance` metres from the load end, towards the transmitter: the telegrapher's equations, exact. */
export function stateAt(constants: LineConstants, load: PortState, distance: number): PortState {
  const theta = scale(constants.gamma, distance);
  const [c, s] = [hyperbolicCosine(theta), hyperbolicSine(theta)];
  return {
    voltage: add(multiply(load.voltage, c), multiply(multiply(load.current, constants.z0), s)),
    current: add(multiply(load.current, c), multiply(divide(load.voltage, constants.z0), s)),
  };
}

/**
 * States at `steps` + 1 equal places from the transmitter's end (first) to the load end (last) of a line of `length` metres,
 * with the net power at each in W. `load` is the state at the load end.
 */
export function alongLine(
  constants: LineConstants,
  length: number,
  load: PortState,
  steps: number,
): { readonly voltage: readonly Complex[]; readonly current: readonly Complex[]; readonly power: readonly number[] } {
  const states = Array.from({ length: steps + 1 }, (_, i) => stateAt(constants, load, length * (1 - i / steps)));
  return {
    voltage: states.map((s) => s.voltage),
    current: states.map((s) => s.current),
    power: states.map(netPower),
  };
}

export interface LineLoss {
  /** dB with the line closed by its own impedance. */
  readonly matched: number;
  /** dB with the real load: net power in over net power out. */
  readonly atLoad: number;
  /** dB that the load's mismatch adds; slightly negative where a low or high load current or voltage favours the line. */
  readonly extra: number;
}

/** Loss of `length` metres that end in `load` (ohm, Re > 0). Exact, also where Z0 is complex. */
export function lineLoss(constants: LineConstants, length: number, load: Complex): LineLoss {
  if (!(load.re > 0)) {
    throw new RangeError(
      `line loss: a load of ${load.re} + j ${load.im} ohm takes no power; expected a resistance above 0`,
    );
  }
  const input = stateAt(constants, { voltage: load, current: { re: 1, im: 0 } }, length);
  const atLoad = 10 * Math.log10(netPower(input) / load.re);
  const matched = matchedLoss(constants, length);
  return { matched, atLoad, extra: atLoad - matched };
}

/**
 * Loss in dB of a line of matched loss `matched` dB that ends in an SWR of `swrAtLoad`: 10 log((a^2 - r^2)/(a (1 - r^2))). Exact for a
 * real Z0 only; a check and a rule of thumb beside `lineLoss`. Source: handbooks, derivation elementary.
 */
export function lossByStandingWave(matched: number, swrAtLoad: number): number {
  const a = 10 ** (matched / 10);
  const r2 = ((swrAtLoad - 1) / (swrAtLoad + 1)) ** 2;
  return 10 * Math.log10((a * a - r2) / (a * (1 - r2)));
}

/** Input impedance (ohm) of `length` metres that end in `load`. */
export function inputImpedance(constants: LineConstants, length: number, load: Complex): Complex {
  const { voltage, current } = stateAt(constants, { voltage: load, current: { re: 1, im: 0 } }, length);
  return divide(voltage, current);
}
