/** An impedance known at a few frequencies as coil, capacitor and resistor: passive, and exact at one of them. */
import { type Complex, magnitude, reciprocal, subtract } from "../numerics/complex";
import { impedanceOf, resistor, type Termination } from "./termination";

export interface ImpedanceSample {
  /** Hz. */
  readonly frequency: number;
  /** Ohm. */
  readonly impedance: Complex;
}

export interface ResonatorFit {
  readonly termination: Termination;
  /** Greatest distance from a sample over that sample's magnitude. */
  readonly worstDeviation: number;
  /** Quality factor: slope of the reactance (or susceptance) against the resistance; null where one reactance stands alone. */
  readonly quality: number | null;
}

/**
 * Meets `at` exactly and the slope of the reactance (in series) or susceptance (side by side) through the other samples with least squares;
 * the form that comes closer to all samples is taken. Where both would need a negative coil or capacitor, one reactance in
 * series stands alone. Resistance is taken as it is at `at`. Throws RangeError for a resistance that is negative.
 */
export function fitResonator(at: ImpedanceSample, others: readonly ImpedanceSample[]): ResonatorFit {
  if (!(at.impedance.re >= 0)) {
    throw new RangeError(`resonator: a resistance of ${at.impedance.re} ohm; expected 0 or more`);
  }
  const omega = 2 * Math.PI * at.frequency;
  const admittance = (z: Complex): Complex => reciprocal(z);
  const forms = [
    { form: "in series" as const, here: at.impedance, side: (z: Complex) => z },
    ...(magnitude(at.impedance) > 0
      ? [{ form: "side by side" as const, here: admittance(at.impedance), side: admittance }]
      : []),
  ];
  const fits = forms.flatMap(({ form, here, side }): ResonatorFit[] => {
    const slope = slopeOf(omega, here, others, side);
    if (slope === null) return [];
    const [rising, falling] = [(slope + here.im / omega) / 2, (slope - here.im / omega) / 2];
    if (!(rising >= 0 && falling >= 0 && here.re > 0)) return [];
    // X = omega L - 1/(omega C), B = omega C - 1/(omega L): the same with coil and capacitor exchanged.
    const up = rising > 0 ? rising : null;
    const down = falling > 0 ? 1 / (omega * omega * falling) : null;
    const termination: Termination =
      form === "in series"
        ? { form, resistance: here.re, inductance: up, capacitance: down }
        : { form, resistance: 1 / here.re, inductance: down, capacitance: up };
    const worstDeviation = deviationOf(termination, [at, ...others]);
    return [{ termination, worstDeviation, quality: (omega * slope) / (2 * here.re) }];
  });
  const [best] = fits.sort((a, b) => a.worstDeviation - b.worstDeviation);
  if (best) return best;
  const alone = oneReactance(at.impedance, omega);
  return { termination: alone, worstDeviation: deviationOf(alone, [at, ...others]), quality: null };
}

/** A resistor and the coil or the capacitor that makes `impedance` at `omega`, rad/s. */
export function oneReactance({ re, im }: Complex, omega: number): Termination {
  const plain = resistor(re);
  if (im === 0 || plain.form === "side by side") return plain;
  return im > 0 ? { ...plain, inductance: im / omega } : { ...plain, capacitance: -1 / (omega * im) };
}

/** Least squares through the value at `omega`; null without another frequency. */
function slopeOf(
  omega: number,
  here: Complex,
  others: readonly ImpedanceSample[],
  side: (z: Complex) => Complex,
): number | null {
  let [over, under] = [0, 0];
  for (const { frequency, impedance } of others) {
    const step = 2 * Math.PI * frequency - omega;
    over += step * (side(impedance).im - here.im);
    under += step * step;
  }
  return under > 0 ? over / under : null;
}

function deviationOf(termination: Termination, samples: readonly ImpedanceSample[]): number {
  return Math.max(
    ...samples.map(({ frequency, impedance }) => {
      const modelled = impedanceOf(termination, 2 * Math.PI * frequency) ?? { re: Number.POSITIVE_INFINITY, im: 0 };
      return magnitude(subtract(modelled, impedance)) / magnitude(impedance);
    }),
  );
}
