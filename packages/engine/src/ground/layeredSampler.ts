/** Reflected kernels over soil in layers, at any distances and heights: Sommerfeld integrals along the deformed path. */
import { chosenKernels } from "../kernels/chosen";
import type { Spectrum } from "../kernels/door";
import type { LayeredMedium } from "./layeredSoil";
import { buildLayeredSpectrum, type TakenOut } from "./layeredSpectrum";
import { sumByOctaves } from "./octaveSampler";
import type { GridSampler, Sampler } from "./tablePieces";

export interface LayeredOptions {
  /** Null, or left out: nothing is taken out of the spectra. */
  readonly takenOut?: TakenOut | null;
  /** Panels of the integration over those usually taken; 1 when left out. */
  readonly density?: number;
  /** Left out: that of the chosen kernels. */
  readonly sum?: Sampler;
}

/** Distances below this share of the height sum are served by one spectrum. */
const nearest = 0.25;

const octave = (x: number): number => Math.floor(Math.log2(x));

/**
 * A function from distances `rho` (m, >= 0) and height sums `s` (m, > 0) to the reflected kernels G_xx, K, G_zz (1/m) and
 * T/rho (1/m^2). Error below 1e-6 of the free-space kernel at the same distance; time and memory grow with rho/s.
 * Spectra are kept, one an octave of rho and s: make one sampler a frequency.
 */
export function layeredSampler(
  medium: LayeredMedium,
  { takenOut = null, density = 1, sum = chosenKernels().sumSpectrum }: LayeredOptions = {},
): GridSampler {
  const kept = new Map<string, Spectrum>();
  const spectrumOf = (far: number, high: number): Spectrum => {
    const key = `${far} ${high}`;
    const known = kept.get(key);
    if (known) return known;
    const isNear = 2 ** far < nearest * 2 ** high;
    const reach = { nearest: isNear ? 0 : 2 ** far, distance: 2 ** (far + 1), sum: 2 ** high };
    const { bent, radial, depth, weights } = buildLayeredSpectrum(medium, reach, takenOut, density);
    const [horizontal, scalar, vertical, cross] = weights as [Weights, Weights, Weights, Weights];
    const made = { waves: bent, steep: true, radial, depth, horizontal, scalar, vertical, cross };
    kept.set(key, made);
    return made;
  };
  const farOf = (distance: number, high: number): number => Math.max(octave(distance), octave(nearest * 2 ** high) - 1);
  return (rho, s) => sumByOctaves(rho, s, farOf, (r, h, far, high) => sum(spectrumOf(far, high), r, h));
}

type Weights = Spectrum["cross"];
