/** What loss a line of one size must have at least, and what any line may have: the yardstick of data-sheet points. */
import { surfaceResistance } from "../conductors/solidWire";
import { speedOfLight, vacuumImpedance } from "../numerics/vacuum";

const decibelsPerNeper = 20 / Math.LN10;
/** S/m, annealed copper (IEC 60028). */
const copper = 58e6;

export interface SizedLine {
  /** Ohm. */
  readonly impedance: number;
  readonly velocityFactor: number;
  /** Inner diameter of the outer conductor, m. */
  readonly outerSize: number;
}

/**
 * Attenuation (dB/m) of a coaxial line with smooth solid copper conductors and insulation without loss, in the limit of
 * small skin depth: (Rs/(2 pi Z0)) (1/d + 1/D). A line of this size and impedance takes at least this; silver is 3 % better.
 */
export function leastAttenuation(line: SizedLine, frequency: number): number {
  const ratio = Math.exp((2 * Math.PI * line.impedance) / (vacuumImpedance * line.velocityFactor));
  const surface = surfaceResistance(copper, 1, 2 * Math.PI * frequency);
  const resistance = (surface / Math.PI) * ((ratio + 1) / line.outerSize);
  return (decibelsPerNeper * resistance) / (2 * line.impedance);
}

/** dB/m that insulation of this loss tangent takes: (omega/2v) tan delta. */
export const insulationAttenuation = (velocityFactor: number, lossTangent: number, frequency: number): number =>
  (decibelsPerNeper * Math.PI * frequency * lossTangent) / (velocityFactor * speedOfLight);

/** Between what loss any line made lies, dB/m: copper tube of 0.3 m down to coaxial wire of half a millimetre with its braid. */
export function anyAttenuation(
  frequency: number,
  velocityFactor: number,
): { readonly least: number; readonly most: number } {
  const root = Math.sqrt(frequency / 1e6);
  return { least: 1e-4 * root, most: 0.25 * root + insulationAttenuation(velocityFactor, 0.02, frequency) };
}
