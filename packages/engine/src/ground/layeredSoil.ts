/**
 * Soil in level layers as plane waves meet it, propagating and evanescent: the impedance at its surface, cascaded from
 * below. e^{+jwt}, roots with Im <= 0. The cascade is that of transmission lines, one a polarisation (textbook).
 */
import { add, type Complex, complex, divide, exponential, multiply, one, scale, subtract } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { complexPermittivity, contrast, decayingRoot, type SoilNumbers } from "./soilMedium";

/** One layer; `thickness` in m, null for the lowest, which goes down without end. */
export interface SoilLayer extends SoilNumbers {
  readonly thickness: number | null;
}

/** Layers from the top at one frequency. */
export interface LayeredMedium {
  /** Wavenumber of the air, rad/m. */
  readonly k: number;
  readonly layers: readonly { readonly permittivity: Complex; readonly thickness: number }[];
}

/** Layers at a frequency in Hz. Throws RangeError where a layer above the lowest has no thickness. */
export function layeredMedium(layers: readonly SoilLayer[], frequency: number): LayeredMedium {
  const last = layers.length - 1;
  layers.forEach(({ thickness }, i) => {
    if (i < last && !(thickness !== null && thickness > 0 && Number.isFinite(thickness)))
      throw new RangeError(`layer ${i + 1} of the soil has thickness ${thickness}: expected metres above 0`);
  });
  return {
    k: (2 * Math.PI * frequency) / speedOfLight,
    layers: layers.map((layer, i) => ({
      permittivity: complexPermittivity(layer, frequency),
      thickness: i === last ? Number.POSITIVE_INFINITY : layer.thickness!,
    })),
  };
}

/** Wavenumber below which all layers have theirs, and the waves along their surfaces; rad/m. */
export const largestWavenumber = ({ k, layers }: LayeredMedium): number =>
  k * Math.sqrt(Math.max(...layers.map((layer) => contrast(layer.permittivity))));

/** What a wave meets at the surface, in terms of vertical wavenumbers (rad/m). */
export interface SurfaceImmittance {
  /** TM impedance times w eps0; kz over the permittivity for a half-space. */
  readonly tm: Complex;
  /** TE admittance times w mu0; kz for a half-space. */
  readonly te: Complex;
}

/** Seen from the top of a layer of immittance `own` over `below`; `q` is the wave's factor down and up again. */
function throughLayer(own: Complex, below: Complex, q: Complex): Complex {
  const back = multiply(divide(subtract(below, own), add(below, own)), q);
  return multiply(own, divide(add(one, back), subtract(one, back)));
}

/** Surface immittance for vertical wavenumber `kz` (rad/m, Im <= 0) in the air. */
export function surfaceImmittance(kz: Complex, { k, layers }: LayeredMedium): SurfaceImmittance {
  const square = multiply(kz, kz);
  let surface: SurfaceImmittance | null = null;
  for (let i = layers.length - 1; i >= 0; i--) {
    const { permittivity, thickness } = layers[i]!;
    const inside = decayingRoot(add(square, scale(complex(permittivity.re - 1, permittivity.im), k * k)));
    const own = { tm: divide(inside, permittivity), te: inside };
    if (!surface) {
      surface = own;
      continue;
    }
    const q = exponential(multiply(complex(0, -2 * thickness), inside));
    surface = { tm: throughLayer(own.tm, surface.tm, q), te: throughLayer(own.te, surface.te, q) };
  }
  if (!surface) throw new RangeError("layered soil has no layer: expected at least one");
  return surface;
}

/** Coefficients of the tangential electric field for vertical wavenumber `kz`, as of `reflection` for a half-space. */
export function layeredReflection(
  kz: Complex,
  medium: LayeredMedium,
): { readonly tm: Complex; readonly te: Complex; readonly surface: SurfaceImmittance } {
  const surface = surfaceImmittance(kz, medium);
  return {
    tm: divide(subtract(surface.tm, kz), add(surface.tm, kz)),
    te: divide(subtract(kz, surface.te), add(kz, surface.te)),
    surface,
  };
}
