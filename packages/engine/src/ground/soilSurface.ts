/** Soil of one kind or in layers, as all above the ground folder ask it: what it reflects, takes in, and how deep fields go. */
import type { Complex } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { type LayeredMedium, layeredMedium, layeredReflection, type SoilLayer } from "./layeredSoil";
import { type Reflection, reflection } from "./reflection";
import { complexPermittivity, penetrationDepth, type SoilNumbers } from "./soilMedium";
import { writeLayeredTransmission, writeTransmission } from "./transmission";

export type RealSoil =
  | ({ readonly kind: "homogeneous" } & SoilNumbers)
  | { readonly kind: "layered"; readonly layers: readonly SoilLayer[] };

/** One frequency's answers. Vertical wavenumbers `kz` in rad/m, Im <= 0, in the air. */
export interface SoilSurface {
  /** Wavenumber of the air, rad/m. */
  readonly k: number;
  /** Complex relative permittivity of what lies at the surface. */
  readonly top: Complex;
  /** Null for one soil. */
  readonly layers: LayeredMedium | null;
  readonly reflect: (kz: Complex) => Pick<Reflection, "tm" | "te">;
  /** See writeTransmission. */
  readonly transmit: (re: number, im: number, out: Float64Array) => void;
}

/** The surface at a frequency in Hz. */
export function soilSurface(soil: RealSoil, frequency: number): SoilSurface {
  if (soil.kind === "homogeneous") {
    const k = (2 * Math.PI * frequency) / speedOfLight;
    const top = complexPermittivity(soil, frequency);
    return {
      k,
      top,
      layers: null,
      reflect: (kz) => reflection(kz, k, top),
      transmit: (re, im, out) => writeTransmission(re, im, k, top, out),
    };
  }
  const medium = layeredMedium(soil.layers, frequency);
  return {
    k: medium.k,
    top: medium.layers[0]!.permittivity,
    layers: medium,
    reflect: (kz) => layeredReflection(kz, medium),
    transmit: (re, im, out) => writeLayeredTransmission(re, im, medium, out),
  };
}

/**
 * Depth in metres at which a wave going straight down has fallen to 1/e, echoes between layers left out; Infinity where
 * it never does. Frequency in Hz.
 */
export function depthOfPenetration(soil: RealSoil, frequency: number): number {
  if (soil.kind === "homogeneous") return penetrationDepth(soil, frequency);
  let left = 1;
  let depth = 0;
  for (const layer of soil.layers) {
    const attenuation = 1 / penetrationDepth(layer, frequency);
    if (layer.thickness === null || attenuation * layer.thickness >= left) return depth + left / attenuation;
    left -= attenuation * layer.thickness;
    depth += layer.thickness;
  }
  return depth;
}
