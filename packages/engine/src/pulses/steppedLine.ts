/** A line as delays with lumped losses between them, made from its true constants. */
import type { LineConstants } from "../lines/lineConstants";
import { divide, magnitude, multiply } from "../numerics/complex";
import { fitLadder, type LossLadder, ladderAt, timesAsStrong } from "./lossLadder";

export interface SteppedLine {
  /** Metres. */
  readonly length: number;
  /** Equal delays along the line; even. Losses sit between them: in series at odd places, across at even ones. */
  readonly sections: number;
  /** Seconds of one delay. */
  readonly timeStep: number;
  /** Ohm: square root of L over C in the limit of high frequency; real. */
  readonly surgeImpedance: number;
  /** Ohm/m and S/m. */
  readonly series: LossLadder;
  readonly shunt: LossLadder;
  /** Greatest deviation of the two fits, as share of the line's whole loss, and the span they hold for in Hz. */
  readonly worstDeviation: number;
  readonly from: number;
  readonly to: number;
}

export interface SteppedLineRequest {
  /** Constants of the line at a frequency in Hz. */
  readonly constantsAt: (frequency: number) => LineConstants;
  readonly length: number;
  /** Hz at which the stepped line has the true series impedance and shunt admittance. */
  readonly frequency: number;
  readonly sections: number;
  /** Hz between which losses are fitted; as far up as steps tell waves apart when the second is left out. */
  readonly lowest: number;
  readonly highest?: number;
}

const samplesPerDecade = 6;
/** Highest share of pi that a step may turn a wave by, in the fit: beyond, steps do not tell waves apart. */
const highestTurn = 0.7;

/**
 * Losses as passive ladders, what is left as inductance and capacitance per metre that meet the line's imaginary parts at
 * `frequency`. Frequencies are bent as stepping bends them (bilinear rule), so that the steps meet the true values.
 */
export function steppedLine(request: SteppedLineRequest): SteppedLine {
  const { constantsAt, length, frequency, sections, lowest } = request;
  const middle = immittancesOf(constantsAt(frequency));
  const omega = 2 * Math.PI * frequency;
  let timeStep = (length / sections) * Math.sqrt((middle.series.im * middle.shunt.im) / (omega * omega));
  const to = Math.max(
    1.5 * frequency,
    Math.min(request.highest ?? Number.POSITIVE_INFINITY, highestTurn / (2 * timeStep)),
  );
  const from = Math.min(lowest, frequency / 10);
  const count = Math.ceil(Math.log10(to / from) * samplesPerDecade);
  const frequencies = Array.from({ length: count + 1 }, (_, i) => from * (to / from) ** (i / count));
  const samples = frequencies.map((f) => immittancesOf(constantsAt(f)));
  let made = { series: noLoss, shunt: noLoss, inductance: 0, capacitance: 0, worstDeviation: 0 };
  for (let round = 0; round < 3; round++) {
    const bent = (f: number): number => bentFrequency(2 * Math.PI * f, timeStep);
    const fit = (side: "series" | "shunt") => {
      const real = Float64Array.from(samples, (s) => s[side].re);
      const whole = Float64Array.from(samples, (s) => wholeLoss(s, side));
      const ladder = fitLadder({ omega: Float64Array.from(frequencies, bent), real, whole });
      const there = ladderAt(ladder, bent(frequency)).re;
      const exact = timesAsStrong(ladder, there > 0 ? Math.max(0, middle[side].re) / there : 1);
      const left = (middle[side].im - ladderAt(exact, bent(frequency)).im) / omega;
      return { ladder: exact, left, worst: ladder.worstDeviation };
    };
    const [series, shunt] = [fit("series"), fit("shunt")];
    made = {
      series: series.ladder,
      shunt: shunt.ladder,
      inductance: series.left,
      capacitance: shunt.left,
      worstDeviation: Math.max(series.worst, shunt.worst),
    };
    if (!(made.inductance > 0 && made.capacitance > 0)) {
      throw new RangeError(
        `stepped line: at ${frequency} Hz its conductors' reactance is all there is; expected a higher frequency`,
      );
    }
    timeStep = (length / sections) * Math.sqrt(made.inductance * made.capacitance);
  }
  const { series, shunt, inductance, capacitance, worstDeviation } = made;
  const surgeImpedance = Math.sqrt(inductance / capacitance);
  return { length, sections, timeStep, surgeImpedance, series, shunt, worstDeviation, from, to };
}

const noLoss: LossLadder = { constant: 0, branches: [] };

const immittancesOf = ({ z0, gamma }: LineConstants) => ({ series: multiply(gamma, z0), shunt: divide(gamma, z0) });

/** Series and shunt loss together, in ohm/m (`series`) or S/m: they count alike through |Z0| squared. Above 0. */
function wholeLoss({ series, shunt }: ReturnType<typeof immittancesOf>, side: "series" | "shunt"): number {
  const square = magnitude(series) / magnitude(shunt);
  const ohms = Math.abs(series.re) + Math.abs(shunt.re) * square;
  return Math.max(side === "series" ? ohms : ohms / square, Number.MIN_VALUE);
}

/** rad/s that the bilinear rule makes of `omega`: 2/T tan(omega T/2). */
const bentFrequency = (omega: number, timeStep: number): number => (2 / timeStep) * Math.tan((omega * timeStep) / 2);

/** rad/s for `steppedTermination`: coils and capacitors are then exact at `omega`. */
export const bendExactAt = (omega: number, timeStep: number): number => omega / Math.tan((omega * timeStep) / 2);
