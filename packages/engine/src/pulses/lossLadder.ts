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
}

export interface LadderFit extends LossLadder {
  /** Greatest relative deviation of the real part from a sample. */
  readonly worstDeviation: number;
}

const polesPerDecade = 2;

/**
 * Non-negative fit of a ladder to the real part of a loss, relative to each sample; the imaginary part follows, since a
 * causal network's real part decides it up to the limit of high frequency. `omega` in increasing order. All zero for a line without loss.
 */
export function fitLadder({ omega, real }: LossSamples): LadderFit {
  const used = real.every((x) => x >= 0) ? real : real.map((x) => Math.max(0, x));
  const floor = 1e-12 * Math.max(...used);
  if (!(floor > 0)) return { constant: 0, branches: [], worstDeviation: 0 };
  const poles = polesBetween(omega[0]!, omega[omega.length - 1]!);
  const weighted = (of: (w: number) => number) => omega.map((w, i) => of(w) / Math.max(used[i]!, floor));
  const columns = [weighted(() => 1), ...poles.map((p) => weighted((w) => (w * w) / (w * w + p * p)))];
  const found = activeSetLeastSquares(
    columns,
    omega.map(() => 1),
  );
  const branches = poles.flatMap((pole, k) => (found[k + 1]! > 0 ? [{ strength: found[k + 1]!, pole }] : []));
  const ladder: LossLadder = { constant: found[0]!, branches };
  let worstDeviation = 0;
  omega.forEach((w, i) => {
    const deviation = Math.abs(ladderAt(ladder, w).re / Math.max(used[i]!, floor) - 1);
    worstDeviation = Math.max(worstDeviation, deviation);
  });
  return { ...ladder, worstDeviation };
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
