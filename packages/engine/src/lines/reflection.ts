/** Reflection coefficients, SWR and what a meter of finite directivity makes of them. Every one names its reference. */
import { add, type Complex, conjugate, divide, magnitude, subtract } from "../numerics/complex";

/**
 * Power-wave reflection coefficient of `impedance` against a complex `reference` (ohm): (Z - Zr*)/(Z + Zr). Its magnitude is at
 * most 1 for every passive impedance. Source: Kurokawa, IEEE Trans. MTT-13 (1965) 194.
 */
export const powerWaveReflection = (impedance: Complex, reference: Complex): Complex =>
  divide(subtract(impedance, conjugate(reference)), add(impedance, reference));

/**
 * Voltage reflection coefficient on a line of characteristic impedance `z0`: (Z - Z0)/(Z + Z0). On a lossy line it may exceed 1
 * in magnitude without any power being made.
 */
export const voltageReflection = (impedance: Complex, z0: Complex): Complex =>
  divide(subtract(impedance, z0), add(impedance, z0));

/** SWR that belongs to a reflection coefficient of magnitude `rho`; Infinity from 1 on. */
export const swrOfReflection = (rho: number): number => (rho < 1 ? (1 + rho) / (1 - rho) : Number.POSITIVE_INFINITY);

/** Magnitude of the reflection coefficient that belongs to an SWR (1 or more). */
export const reflectionOfSwr = (swr: number): number => (swr === Number.POSITIVE_INFINITY ? 1 : (swr - 1) / (swr + 1));

/** SWR of `impedance` against a real `reference` in ohm. */
export const swr = (impedance: Complex, reference: number): number =>
  swrOfReflection(magnitude(powerWaveReflection(impedance, { re: reference, im: 0 })));

/** Return loss in dB, positive: -20 log10 |reflection coefficient|; Infinity for none. */
export const returnLoss = (rho: number): number => -20 * Math.log10(rho);

/**
 * SWR a meter may show when the true one is `trueSwr` and its directivity is `directivity` dB: the leak adds to the reflection
 * with unknown phase, so that the meter sees between |rho - D| and rho + D, D = 10^(-dB/20). `high` is null where the sum
 * reaches 1. First order: source match and tracking of the meter are not in it. Source: derivation; signal-flow graph of a
 * directional coupler in microwave texts.
 */
export function meterMayShow(
  trueSwr: number,
  directivity: number,
): { readonly low: number; readonly high: number | null } {
  if (!(trueSwr >= 1 && directivity > 0)) {
    throw new RangeError(`meter: SWR ${trueSwr}, directivity ${directivity} dB; expected at least 1 and above 0 dB`);
  }
  const rho = reflectionOfSwr(trueSwr);
  const leak = 10 ** (-directivity / 20);
  return { low: swrOfReflection(Math.abs(rho - leak)), high: rho + leak < 1 ? swrOfReflection(rho + leak) : null };
}
