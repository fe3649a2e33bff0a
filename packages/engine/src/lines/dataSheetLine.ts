/** A line known by its data sheet: nominal impedance, velocity factor, and loss at a few frequencies. */
import { add, type Complex, complex, multiply, scale, squareRoot } from "../numerics/complex";
import { nonNegativeLeastSquares } from "../numerics/nonNegativeLeastSquares";
import { speedOfLight } from "../numerics/vacuum";
import type { LineImmittance } from "./immittance";
import type { DataSheetLine } from "./lineModel";

const nepersPerDecibel = Math.LN10 / 20;

/** Physical parameters that stand behind loss points. None is negative. */
export interface LossParameters {
  /** Conductors: resistance over the square root of frequency, ohm/(m sqrt(Hz)); the internal reactance equals it. */
  readonly rootResistance: number;
  /** Conductors: resistance that stays, ohm/m: the next term of skin effect, and foil thinner than a skin depth. */
  readonly steadyResistance: number;
  /** Loss tangent, constant over frequency: insulation, and whatever of a braid grows with frequency itself. */
  readonly lossTangent: number;
}

export interface LossFit extends LossParameters {
  /** Greatest deviation of the fit from a point, relative. */
  readonly worstDeviation: number;
  /** Frequencies in Hz between which points exist. */
  readonly from: number;
  readonly to: number;
}

/**
 * Fits R = R1 sqrt(f) + R0 and a constant loss tangent to the loss points so that the exact attenuation of the line meets
 * them with least relative squares. One point fixes R1 alone, two or three leave R0 at zero. Nominal impedance and velocity
 * factor are taken as the limits of high frequency.
 */
export function fitLoss(line: DataSheetLine): LossFit {
  const known = fits.get(line) ?? fitPoints(line);
  fits.set(line, known);
  return known;
}

/** A line is fitted once and asked at many frequencies; stations are frozen, so a line never changes under its fit. */
const fits = new WeakMap<DataSheetLine, LossFit>();

function fitPoints(line: DataSheetLine): LossFit {
  const points = line.loss.map((p) => ({ frequency: p.frequency, loss: p.decibelsPerMetre.value * nepersPerDecibel }));
  checkPoints(points);
  let wanted = points.map(() => 1);
  let fit = linearFit(line, points, wanted);
  for (let round = 0; round < 6; round++) {
    wanted = points.map((p) => linearLoss(line, fit, p.frequency) / exactLoss(line, fit, p.frequency));
    fit = linearFit(line, points, wanted);
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

interface LossPoint {
  readonly frequency: number;
  /** Np/m. */
  readonly loss: number;
}

function checkPoints(points: readonly LossPoint[]): void {
  if (points.length === 0 || points.some((p) => !(p.frequency > 0 && p.loss > 0))) {
    throw new RangeError("data-sheet line: expected at least one loss point, each with frequency and loss above zero");
  }
}

/** Low-loss attenuation in Np/m for a unit of each parameter: R/(2 Z0), and (omega/2v) tan delta. */
const columns = (line: DataSheetLine, frequency: number): readonly [number, number, number] => [
  Math.sqrt(frequency) / (2 * line.impedance.value),
  (Math.PI * frequency) / (line.velocityFactor.value * speedOfLight),
  1 / (2 * line.impedance.value),
];

function linearLoss(line: DataSheetLine, fit: LossParameters, frequency: number): number {
  const [root, straight, steady] = columns(line, frequency);
  return fit.rootResistance * root + fit.lossTangent * straight + fit.steadyResistance * steady;
}

function exactLoss(line: DataSheetLine, fit: LossParameters, frequency: number): number {
  const { series, shunt } = immittance(line, fit, 2 * Math.PI * frequency, 1);
  return multiply(squareRoot(series), squareRoot(shunt)).re;
}

function linearFit(line: DataSheetLine, points: readonly LossPoint[], wanted: readonly number[]): LossParameters {
  const rows = points.map((p) => columns(line, p.frequency).map((c) => c / p.loss));
  const used = points.length > 3 ? 3 : Math.min(points.length, 2);
  const found = nonNegativeLeastSquares(
    rows.map((row) => row.slice(0, used)),
    wanted,
  );
  return { rootResistance: found[0] ?? 0, lossTangent: found[1] ?? 0, steadyResistance: found[2] ?? 0 };
}

function immittance(
  line: DataSheetLine,
  fit: LossParameters,
  omega: number,
  heating: number,
): Omit<LineImmittance, "notes"> {
  const z0 = line.impedance.value;
  const velocity = line.velocityFactor.value * speedOfLight;
  const conductors = scale(conductorImpedance(fit, omega, line.loopResistance?.value ?? null), heating);
  const capacitive = omega / (velocity * z0);
  return {
    series: add(conductors, complex(0, (omega * z0) / velocity)),
    shunt: complex(capacitive * fit.lossTangent, capacitive),
  };
}

/**
 * Impedance of the conductors, ohm/m. Without a direct-current resistance R0 + (1 + j) R1 sqrt(f). With one, Rdc, the root
 * law ends there: R0 + sqrt((Rdc - R0)^2 + 2j R1^2 f), which is causal, has both limits, and between them meets the resistance
 * of a solid round wire within a fifth (15 % measured, where it is about two skin depths thick). `omega` in rad/s.
 */
function conductorImpedance(fit: LossParameters, omega: number, loopResistance: number | null): Complex {
  const skin = fit.rootResistance * Math.sqrt(omega / (2 * Math.PI));
  if (loopResistance === null) return complex(skin + fit.steadyResistance, skin);
  const steady = Math.min(fit.steadyResistance, loopResistance);
  return add(complex(steady), squareRoot(complex((loopResistance - steady) ** 2, 2 * skin * skin)));
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
        ? `its one listed point, ${megahertz(fit.from)}`
        : `its listed points, ${megahertz(fit.from)} to ${megahertz(fit.to)}`;
    const caution = frequency < fit.from ? "; a foil or clad conductor may take more" : "";
    notes.push(`loss at ${megahertz(frequency)} worked out by skin effect from ${points}${caution}`);
  }
  if (fit.worstDeviation > 0.05) {
    notes.push(
      `the listed losses follow conductor and insulation loss only within ${(100 * fit.worstDeviation).toFixed(0)} %`,
    );
  }
  return notes;
}
