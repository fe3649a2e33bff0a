/** Why coaxial lines have the impedances they have: loss, voltage and power against impedance for a fixed outer size. */
import type { Metal } from "../conductors/conductor";
import { surfaceResistance } from "../conductors/solidWire";
import { vacuumImpedance } from "../numerics/vacuum";
import { lineConstants, matchedLoss } from "./lineConstants";
import type { CoaxialLine, Dielectric } from "./lineModel";

export interface StudyInput {
  readonly dielectric: Dielectric;
  /** Field (V/m, peak) at the inner conductor that limits voltage and power. */
  readonly breakdown: number;
  readonly inner: Metal;
  readonly outer: Metal;
  /** Inner diameter of the outer conductor, m. */
  readonly outerSize: number;
  /** Hz. */
  readonly frequency: number;
}

export interface StudyPoint {
  /** Ohm, of the line without loss. */
  readonly impedance: number;
  /** D/d. */
  readonly ratio: number;
  /** dB/m at the frequency of the study, conductors and insulation, exact for smooth solid conductors and an endless wall. */
  readonly attenuation: number;
  /** V, peak, at which the field at the inner conductor reaches breakdown. */
  readonly peakVoltage: number;
  /** W, peak envelope, matched, at that voltage. */
  readonly peakPower: number;
}

/** Impedance (ohm) of a coaxial line without loss: eta0/(2 pi sqrt(eps)) ln(D/d). */
export const impedanceOfRatio = (ratio: number, permittivity: number): number =>
  (vacuumImpedance / (2 * Math.PI * Math.sqrt(permittivity))) * Math.log(ratio);

/** D/d of a coaxial line without loss from its impedance (ohm). */
export const ratioOfImpedance = (impedance: number, permittivity: number): number =>
  Math.exp((2 * Math.PI * Math.sqrt(permittivity) * impedance) / vacuumImpedance);

/** Surface resistance of the outer conductor over that of the inner one, in the limit of small skin depth. */
export const surfaceRatio = ({ inner, outer, frequency }: StudyInput): number => {
  const at = (metal: Metal) => surfaceResistance(metal.conductivity, metal.permeability, 2 * Math.PI * frequency);
  return at(outer) / at(inner);
};

/** Conductor loss against D/d, outer size fixed, up to a factor: (x + r)/ln x. `r` is the surface ratio. */
export const conductorLoss = (ratio: number, r: number): number => (ratio + r) / Math.log(ratio);

/**
 * D/d of least conductor loss for a fixed outer size: root of ln x = 1 + r/x, the stationary point of (x + r)/ln x, by
 * Newton's method to rounding. `r` is the outer conductor's surface resistance over the inner one's, 0 or more and finite.
 */
export function ratioOfLeastLoss(r: number): number {
  if (!(r >= 0 && r < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`ratio of surface resistances ${r}: expected a finite number of 0 or more`);
  }
  let x = Math.E + r;
  for (let step = 0; step < 50; step++) {
    const next = x - (x * (Math.log(x) - 1) - r) / Math.log(x);
    if (Math.abs(next - x) <= 4e-16 * x) return next;
    x = next;
  }
  return x;
}

/** D/d of greatest voltage for a given field (ln x = 1) and of greatest power (ln x = 1/2), outer size fixed. */
export const ratioOfGreatestVoltage = Math.E;
export const ratioOfGreatestPower = Math.sqrt(Math.E);

const coaxial = (input: StudyInput, ratio: number): CoaxialLine => ({
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: input.inner, outerRadius: input.outerSize / 2 / ratio }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  outer: {
    innerRadius: input.outerSize / 2,
    wall: Number.POSITIVE_INFINITY,
    metal: input.outer,
    resistanceFactor: 1,
  },
  dielectric: input.dielectric,
});

/** Everything about one impedance (ohm, above 0). Voltage and power: V = E (D/2) ln x / x, P = V^2/(2 Z0). */
export function studyPoint(input: StudyInput, impedance: number): StudyPoint {
  const ratio = ratioOfImpedance(impedance, input.dielectric.permittivity);
  const peakVoltage = (input.breakdown * (input.outerSize / 2) * Math.log(ratio)) / ratio;
  return {
    impedance,
    ratio,
    attenuation: matchedLoss(lineConstants(coaxial(input, ratio), input.frequency), 1),
    peakVoltage,
    peakPower: peakVoltage ** 2 / (2 * impedance),
  };
}

/**
 * Impedance (ohm) of least attenuation at the frequency of the study, with the true skin depth: golden section on the exact
 * attenuation between half and twice the impedance of `ratioOfLeastLoss`, to 0.001 ohm.
 */
export function impedanceOfLeastAttenuation(input: StudyInput): number {
  const start = impedanceOfRatio(ratioOfLeastLoss(surfaceRatio(input)), input.dielectric.permittivity);
  const golden = (Math.sqrt(5) - 1) / 2;
  const at = (z: number) => studyPoint(input, z).attenuation;
  let [low, high] = [start / 2, 2 * start];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [atLeft, atRight] = [at(left), at(right)];
  while (high - low > 1e-3) {
    if (atLeft < atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - golden * (high - low);
      atLeft = at(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + golden * (high - low);
      atRight = at(right);
    }
  }
  return (low + high) / 2;
}
