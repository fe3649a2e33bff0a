/** At what voltage air lets go: gaps between plates, and glow on wires. Peak values. */
import { type AirState, gapReference, peekReference, relativeDensity } from "./standardAir";

const pascalPerTorr = 101_325 / 760;
/** 1/(Pa m), V/(Pa m), 1: 15 1/(Torr cm), 365 V/(Torr cm) and 0.01. */
const townsend = { a: 1500 / pascalPerTorr, b: 36_500 / pascalPerTorr, gamma: 0.01 } as const;

/**
 * Paschen's law for air: V = B pd / [ln(A pd) − ln ln(1 + 1/γ)], peak volts. `pressureGap` is pressure times gap in Pa m at
 * 20 °C. Infinity where the law has no breakdown (left of its pole). The formula is exact; against air it is off by 10 % and more.
 * Source: gas-discharge texts; A = 15 and B = 365 per Torr cm, γ = 0.01 (from memory).
 */
export function paschenVoltage(pressureGap: number): number {
  if (!(pressureGap > 0)) throw new RangeError(`Paschen: pressure times gap ${pressureGap} Pa m; expected above 0`);
  const denominator = Math.log(townsend.a * pressureGap) - Math.log(Math.log(1 + 1 / townsend.gamma));
  return denominator > 0 ? (townsend.b * pressureGap) / denominator : Number.POSITIVE_INFINITY;
}

/** Where the law is least: pd = (e/A) ln(1 + 1/γ), in Pa m. */
export const paschenMinimum: number = (Math.E / townsend.a) * Math.log(1 + 1 / townsend.gamma);

/**
 * Breakdown (peak V) of a gap of `gap` metres between wide parallel plates, 0.1 mm to 0.1 m: 24.22 δd + 6.08 √(δd) kV, d in cm,
 * δ the density of the air over that at 20 °C. Within about 5 %; 30.3 kV at 1 cm. Source: handbooks of high voltage (from memory).
 */
export function uniformFieldVoltage(gap: number, density: number): number {
  const d = 100 * gap * density;
  return 1000 * (24.22 * d + 6.08 * Math.sqrt(d));
}

/**
 * What a gap between rounded or flat metal stands (peak V): the less of Paschen's law and of the uniform-field law, and no less
 * than Paschen's minimum. Points and edges glow earlier. At radio frequency the same in short gaps, some 10 to 20 % less in wide
 * ones (from memory).
 */
export function gapBreakdown(gap: number, air: AirState): number {
  if (!(gap > 0)) throw new RangeError(`air gap: ${gap} m; expected above 0`);
  const density = relativeDensity(air, gapReference);
  const pressureGap = density * 101_325 * gap;
  if (pressureGap <= paschenMinimum) return paschenVoltage(paschenMinimum);
  return Math.min(paschenVoltage(pressureGap), uniformFieldVoltage(gap, density));
}

export type WireFieldOf = "parallel wires" | "coaxial";

/** kV/cm and √cm of Peek's law. */
const peek = { "parallel wires": [30, 0.301], coaxial: [31, 0.308] } as const;

/**
 * Field (V/m, peak) at the surface of a smooth wire of `radius` metres from which it glows, in air of density `density` over
 * that at 25 °C: g0 m δ (1 + c/√(δ r)), r in cm. `surface`: 1 polished, 0.93 to 0.98 weathered, 0.83 to 0.87 stranded.
 * Within 10 % at mains frequency; at radio frequency glow starts a little lower. Valid for radii of 0.1 mm and more.
 * Source: Peek, Dielectric Phenomena in High Voltage Engineering, 3rd ed. 1929; the coaxial pair from memory.
 */
export function coronaOnsetField(radius: number, density: number, of: WireFieldOf, surface = 1): number {
  if (!(radius > 0 && density > 0)) {
    throw new RangeError(`corona onset: radius ${radius} m, density ${density}; expected both above 0`);
  }
  const [field, root] = peek[of];
  return 1e5 * field * surface * density * (1 + root / Math.sqrt(density * radius * 100));
}

/** Density of the air that Peek's law takes. */
export const peekDensity = (air: AirState): number => relativeDensity(air, peekReference);
