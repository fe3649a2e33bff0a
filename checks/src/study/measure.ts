/** One structure of the study: what the engine reports of its own error, and the error found by finer meshes. */
import {
  type AntennaSolution,
  type Complex,
  coarseTwin,
  driveAntenna,
  gainError,
  powerAccount,
  solveAntenna,
  strongestDirection,
  timesFiner,
} from "@feedpath/engine";
import type { Study } from "./pieces";

export interface Finding {
  readonly name: string;
  readonly unknowns: number;
  readonly impedance: Complex;
  /** Ohm, as reported. */
  readonly estimate: number;
  /** Ohm: largest difference of a port impedance to the finest mesh. */
  readonly error: number;
  /** Error over the larger of 0.5 ohm and 0.5 % of the port's own impedance. */
  readonly errorOverGoal: number;
  /** dB, of the greatest gain: as reported, and found. */
  readonly gainEstimate: number;
  readonly gainError: number;
  readonly residue: number;
  /** Largest |Z12 - Z21| over |Z12|; 0 with one feed. */
  readonly nonReciprocity: number;
  /** Ohm: how far the finest mesh still moved from the one before, a bound of what "true" means here. */
  readonly doubt: number;
}

const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const size = ({ re, im }: Complex): number => Math.hypot(re, im);
const times = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re });
const over = (a: Complex, b: Complex): Complex => {
  const d = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
};

/** Impedances of one or two ports, ohm, row by row. */
function impedances({ admittance: y }: AntennaSolution): Complex[] {
  if (y.length === 1) return [over({ re: 1, im: 0 }, y[0]![0]!)];
  const [a, b, c, d] = [y[0]![0]!, y[0]![1]!, y[1]![0]!, y[1]![1]!];
  const determinant = minus(times(a, d), times(b, c));
  return [d, { re: -b.re, im: -b.im }, { re: -c.re, im: -c.im }, a].map((x) => over(x, determinant));
}

const driven = (solution: AntennaSolution) =>
  driveAntenna(
    solution,
    solution.admittance.map((_, i) => ({ re: i === 0 ? 1 : 0, im: 0 })),
  );

const decibels = (solution: AntennaSolution): number => 10 * Math.log10(strongestDirection(driven(solution)).gain);

function gainEstimate(solution: AntennaSolution): number {
  const fine = driven(solution);
  const { elevation, azimuth, gain } = strongestDirection(fine);
  return gainError(fine, driven(coarseTwin(solution)), elevation, azimuth, gain).decibels;
}

const most = (a: readonly Complex[], b: readonly Complex[]): number =>
  Math.max(...a.map((z, i) => size(minus(z, b[i]!))));

/** Solves as the engine chooses, then on meshes finer by the two factors. */
export function measure({ name, structure, soil, frequency }: Study, [finer, finest] = [2, 3]): Finding {
  const chosen = solveAntenna(structure, soil, frequency);
  const at = (factor: number) =>
    solveAntenna(structure, soil, frequency, undefined, { refinement: timesFiner(chosen.method.refinement, factor) });
  const truth = at(finest);
  const [z, before, exact] = [chosen, at(finer), truth].map(impedances) as [Complex[], Complex[], Complex[]];
  const error = most(z, exact);
  return {
    name,
    unknowns: chosen.unknowns,
    impedance: exact[0]!,
    estimate: chosen.errorEstimate,
    error,
    errorOverGoal: error / Math.max(0.5, 0.005 * size(exact[0]!)),
    gainEstimate: gainEstimate(chosen),
    gainError: Math.abs(decibels(chosen) - decibels(truth)),
    residue: Math.abs(powerAccount(driven(chosen)).residue),
    nonReciprocity: z.length === 4 ? size(minus(z[1]!, z[2]!)) / size(z[1]!) : 0,
    doubt: most(before, exact),
  };
}
