/** A line known by its data sheet: nominal impedance, velocity factor, and loss at a few frequencies. */
import { complex, multiply, squareRoot } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import type { LineImmittance } from "./immittance";
import type { DataSheetLine } from "./lineModel";

const nepersPerDecibel = Math.LN10 / 20;

/** Physical parameters that stand behind loss points. */
export interface LossFit {
  /** Conductors: resistance per metre over the square root of frequency, ohm/(m sqrt(Hz)); the internal reactance equals it. */
  readonly rootResistance: number;
  /** Insulation: loss tangent, constant over frequency. */
  readonly lossTangent: number;
  /** Greatest deviation of the fit from a point, relative. */
  readonly worstDeviation: number;
  /** Frequencies in Hz between which points exist. */
  readonly from: number;
  readonly to: number;
}

/**
 * Fits R = R1 sqrt(f) and a constant loss tangent, neither negative, to the loss points so that the exact attenuation of the
 * line meets them with least relative squares. One point fixes R1 alone. Nominal impedance and velocity factor are taken as
 * the limits of high frequency.
 */
export function fitLoss(line: DataSheetLine): LossFit {
  const points = line.loss.map((p) => ({ frequency: p.frequency, loss: p.decibelsPerMetre.value * nepersPerDecibel }));
  checkPoints(points);
  let wanted = points.map((p) => p.loss);
  let fit = { rootResistance: 0, lossTangent: 0 };
  for (let round = 0; round < 6; round++) {
    fit = linearFit(line, points, wanted);
    wanted = points.map((p) => p.loss * (linearLoss(line, fit, p.frequency) / exactLoss(line, fit, p.frequency)));
  }
  const deviations = points.map((p) => Math.abs(exactLoss(line, fit, p.frequency) / p.loss - 1));
  const frequencies = points.map((p) => p.frequency);
  return {
    ...fit,
    worstDeviation: Math.max(...deviations),
    from: Math.min(...frequencies),
    to: Math.max(...frequencies),
  };
}

type LossPoint = { readonly frequency: number; readonly loss: number };
type Parameters = { readonly rootResistance: number; readonly lossTangent: number };

function checkPoints(points: readonly LossPoint[]): void {
  if (points.length === 0 || points.some((p) => !(p.frequency > 0 && p.loss > 0))) {
    throw new RangeError("data-sheet line: expected at least one loss point, each with frequency and loss above zero");
  }
}

/** Attenuation in Np/m, low-loss form: R/(2 Z0) + (omega/2v) tan delta. The two columns of the linear fit. */
const columns = (line: DataSheetLine, frequency: number): readonly [number, number] => [
  Math.sqrt(frequency) / (2 * line.impedance.value),
  (Math.PI * frequency) / (line.velocityFactor.value * speedOfLight),
];

function linearLoss(line: DataSheetLine, fit: Parameters, frequency: number): number {
  const [root, straight] = columns(line, frequency);
  return fit.rootResistance * root + fit.lossTangent * straight;
}

function exactLoss(line: DataSheetLine, fit: Parameters, frequency: number): number {
  const { series, shunt } = immittance(line, fit, 2 * Math.PI * frequency, 1);
  return multiply(squareRoot(series), squareRoot(shunt)).re;
}

/** Least relative squares in two unknowns that may not be negative: the inner solution, or the better edge. */
function linearFit(line: DataSheetLine, points: readonly LossPoint[], wanted: readonly number[]): Parameters {
  let [rr, rs, ss, rw, sw] = [0, 0, 0, 0, 0];
  points.forEach((point, i) => {
    const [root, straight] = columns(line, point.frequency).map((c) => c / point.loss) as [number, number];
    const target = (wanted[i] ?? point.loss) / point.loss;
    rr += root * root;
    rs += root * straight;
    ss += straight * straight;
    rw += root * target;
    sw += straight * target;
  });
  const determinant = rr * ss - rs * rs;
  if (points.length > 1 && determinant > 1e-12 * rr * ss) {
    const rootResistance = (rw * ss - sw * rs) / determinant;
    const lossTangent = (sw * rr - rw * rs) / determinant;
    if (rootResistance >= 0 && lossTangent >= 0) return { rootResistance, lossTangent };
    if (rootResistance < 0) return { rootResistance: 0, lossTangent: sw / ss };
  }
  return { rootResistance: rw / rr, lossTangent: 0 };
}

function immittance(
  line: DataSheetLine,
  fit: Parameters,
  omega: number,
  heating: number,
): Omit<LineImmittance, "notes"> {
  const z0 = line.impedance.value;
  const velocity = line.velocityFactor.value * speedOfLight;
  const resistance = fit.rootResistance * Math.sqrt(omega / (2 * Math.PI)) * heating;
  const capacitive = omega / (velocity * z0);
  return {
    series: complex(resistance, resistance + (omega * z0) / velocity),
    shunt: complex(capacitive * fit.lossTangent, capacitive),
  };
}

/** Series impedance and shunt admittance per metre from the fit, with a note where the frequency lies outside the points. */
export function dataSheetImmittance(line: DataSheetLine, omega: number, heating: number): LineImmittance {
  const fit = fitLoss(line);
  return { ...immittance(line, fit, omega, heating), notes: fitNotes(fit, omega / (2 * Math.PI)) };
}

function fitNotes(fit: LossFit, frequency: number): readonly string[] {
  const notes: string[] = [];
  const megahertz = (f: number): string => `${Number((f / 1e6).toPrecision(4))} MHz`;
  if (frequency < fit.from || frequency > fit.to) {
    const points =
      fit.from === fit.to
        ? `one point, at ${megahertz(fit.from)}`
        : `points from ${megahertz(fit.from)} to ${megahertz(fit.to)}`;
    notes.push(
      `Loss at ${megahertz(frequency)} is extended by skin effect from ${points}; ` +
        "below them a clad or foil conductor takes more than this.",
    );
  }
  if (fit.worstDeviation > 0.05) {
    notes.push(
      `The loss points fit conductor and insulation loss only within ${(100 * fit.worstDeviation).toFixed(0)} %.`,
    );
  }
  return notes;
}
