/** Soil as a wave medium: complex permittivity, penetration depth. e^{+jwt}. */
import { type Complex, complex, magnitudeSquared, squareRoot } from "../numerics/complex";
import { speedOfLight, vacuumPermittivity } from "../numerics/vacuum";

/** A half-space of real relative permittivity and conductivity (S/m). */
export interface SoilNumbers {
  readonly relativePermittivity: number;
  readonly conductivity: number;
}

/** Complex relative permittivity eps_r - j sigma/(w eps0) at a frequency in Hz. */
export const complexPermittivity = (soil: SoilNumbers, frequency: number): Complex =>
  complex(soil.relativePermittivity, -soil.conductivity / (2 * Math.PI * frequency * vacuumPermittivity));

/** Root with Im <= 0: waves that decay away from the surface. */
export function decayingRoot(square: Complex): Complex {
  const root = squareRoot(square);
  return root.im > 0 ? complex(-root.re, -root.im) : root;
}

/** Depth in metres at which a plane wave going straight down has fallen to 1/e; Infinity in lossless soil. */
export function penetrationDepth(soil: SoilNumbers, frequency: number): number {
  const index = decayingRoot(complexPermittivity(soil, frequency));
  const attenuation = (-index.im * 2 * Math.PI * frequency) / speedOfLight;
  return attenuation > 0 ? 1 / attenuation : Number.POSITIVE_INFINITY;
}

/** |1 + eps|, finite for every soil. */
export const contrast = (permittivity: Complex): number =>
  Math.sqrt(magnitudeSquared(complex(1 + permittivity.re, permittivity.im)));
