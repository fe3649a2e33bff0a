/** Loss as circuits that can be stepped in time: passive and causal by their form. */
import { activeSetLeastSquares } from "../numerics/activeSetLeastSquares";

/**
 * The immittance  constant + sum of strength s / (s + pole):  read as an impedance, a resistance with resistors bridged by
 * coils in series (skin effect); as an admittance, a conductance with resistor-capacitor branches across (a dielectric).
 */
export interface LossLadder {
  /** Ohm/m or S/m. */
  readonly constant: number;
  readonly branches: readonly { readonly strength: number; readonly pole: number }[];
}

/** Samples of the real part of a loss immittance: rad/s, and ohm/m or S/m. */
export interface LossSamples {
  readonly omega: Float64Array;
  readonly real: Float64Array;
  /** All loss of the line there, series and shunt, in the same unit: what a part of it may be small against. */
  readonly whole: Float64Array;
}

export interface LadderFit extends LossLadder {
  /** Greatest deviation of the real part from a sample, as share of the line's whole loss there. */
  readonly worstDeviation: number;
}

const polesPerDecade = 2;
/** A side that makes less than this share of the loss is met to this share only: it may be rounding. */
const leastShare = 1e-3;

/**
 * Non-negative fit of a ladder to the real part of a loss, relative to each sample; the imaginary part follows, since a
 * causal network's real part decides it up to the limit of high frequency. `omega` in increasing order. All zero for a line
 * without loss.
 */
export function fitLadder({ omega, real, whole }: LossSamples): LadderFit {
  const used = real.map((x) => Math.max(0, x));
  if (!used.some((x, i) => x > 1e-6 * whole[i]!)) return { constant: 0, branches: [], worstDeviation: 0 };
  const poles = polesBetween(omega[0]!, omega[omega.length - 1]!);
  const weights = used.map((x, i) => 1 / Math.max(x, leastShare * whole[i]!));
  const weighted = (of: (w: number) => number) => omega.map((w, i) => weights[i]! * of(w));
  const columns = [weighted(() => 1), ...poles.map((p) => weighted((w) => (w * w) / (w * w + p * p)))];
  const found = activeSetLeastSquares(
    columns,
    used.map((x, i) => weights[i]! * x),
  );
  const branches = poles.flatMap((pole, k) => (found[k + 1]! > 0 ? [{ strength: found[k + 1]!, pole }] : []));
  const ladder: LossLadder = { constant: found[0]!, branches };
  const deviations = Array.from(omega, (w, i) => Math.abs(ladderAt(ladder, w).re - used[i]!) / whole[i]!);
  return { ...ladder, worstDeviation: Math.max(...deviations) };
}

/** Half a decade beyond either end, so that the slope at the ends is met too. */
function polesBetween(from: number, to: number): number[] {
  const decades = Math.log10(to / from) + 1;
  const count = Math.max(2, Math.ceil(decades * polesPerDecade));
  return Array.from({ length: count + 1 }, (_, k) => from * 10 ** (-0.5 + (k * decades) / count));
}

/** The ladder at a real angular frequency, rad/s. */
export function ladderAt({ constant, branches }: LossLadder, omega: number): { re: number; im: number } {
  let [re, im] = [constant, 0];
  for (const { strength, pole } of branches) {
    const square = omega * omega + pole * pole;
    re += (strength * omega * omega) / square;
    im += (strength * omega * pole) / square;
  }
  return { re, im };
}

/** The same ladder, everything `factor` times as strong. */
export const timesAsStrong = ({ constant, branches }: LossLadder, factor: number): LossLadder => ({
  constant: constant * factor,
  branches: branches.map(({ strength, pole }) => ({ strength: strength * factor, pole })),
});
