/** Reflected kernels over soil in layers, at any distances and heights: Sommerfeld integrals along the deformed path. */
import { chosenKernels } from "../kernels/chosen";
import type { Spectrum } from "../kernels/door";
import type { LayeredMedium } from "./layeredSoil";
import { buildLayeredSpectrum, type TakenOut } from "./layeredSpectrum";
import { sampleByOctaves } from "./octaveSampler";
import type { GridSampler, Sampler } from "./tablePieces";

export interface LayeredOptions {
  /** Null, or left out: nothing is taken out of the spectra. */
  readonly takenOut?: TakenOut | null;
  /** Panels of the integration over those usually taken; 1 when left out. */
  readonly density?: number;
  /** Left out: that of the chosen kernels. */
  readonly sum?: Sampler;
}

/** Distances this many octaves below the height sum are served by one spectrum. */
const nearOctaves = 3;

/**
 * A function from distances `rho` (m, >= 0) and height sums `s` (m, > 0) to the reflected kernels G_xx, K, G_zz (1/m) and
 * T/rho (1/m^2). Error below 1e-6 of the free-space kernel at the same distance; time and memory grow with rho/s.
 * Spectra are kept, one an octave of rho and s: make one sampler a frequency.
 */
export function layeredSampler(
  medium: LayeredMedium,
  { takenOut = null, density = 1, sum = chosenKernels().sumSpectrum }: LayeredOptions = {},
): GridSampler {
  return sampleByOctaves(
    ({ nearest, farthest, smallestSum, largestSum }) => {
      const reach = { nearest, distance: farthest, sum: smallestSum, largestSum };
      const { bent, radial, depth, weights } = buildLayeredSpectrum(medium, reach, takenOut, density);
      const [horizontal, scalar, vertical, cross] = weights as [Weights, Weights, Weights, Weights];
      return { waves: bent, steep: true, radial, depth, horizontal, scalar, vertical, cross };
    },
    sum,
    nearOctaves,
  );
}

type Weights = Spectrum["cross"];
