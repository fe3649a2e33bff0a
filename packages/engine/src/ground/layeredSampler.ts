/** Reflected kernels over soil in layers, at any distances and heights: Sommerfeld integrals along the deformed path. */
import type { ComplexPlane, SpectralSums } from "../kernels/door";
import { besselJComplex } from "../numerics/besselComplex";
import { besselJ0J1, besselJ1OverX } from "../numerics/besselJ";
import type { LayeredMedium } from "./layeredSoil";
import { buildLayeredSpectrum, type LayeredSpectrum, type TakenOut } from "./layeredSpectrum";

export interface LayeredOptions {
  /** Null, or left out: nothing is taken out of the spectra. */
  readonly takenOut?: TakenOut | null;
  /** Panels of the integration over those usually taken; 1 when left out. */
  readonly density?: number;
}

/** Distances below this share of the height sum are served by one spectrum. */
const nearest = 0.25;
/** Nodes that have decayed to e^-20 = 2e-9 are left out. */
const decayed = 20;

const octave = (x: number): number => Math.floor(Math.log2(x));
const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

const bessel = new Float64Array(4);

/** Writes the sums at (rho, s) into place p of the four planes. */
function sumAt(spectrum: LayeredSpectrum, rho: number, s: number, planes: readonly ComplexPlane[], p: number): void {
  const { bent, radial, depth, weights } = spectrum;
  const count = depth.re.length;
  for (let n = 0; n < count; n++) {
    const decay = -depth.im[n]! * s;
    if (n >= bent && decay > decayed + Math.log1p(rho / s)) break;
    const x = radial.re[n]! * rho;
    if (n < bent) {
      besselJComplex(x, radial.im[n]! * rho, bessel);
    } else {
      besselJ0J1(x, bessel);
      bessel[2] = besselJ1OverX(x, bessel[1]!);
      bessel[1] = bessel[3] = 0;
    }
    const fall = Math.exp(-decay);
    const wr = fall * Math.cos(depth.re[n]! * s);
    const wi = -fall * Math.sin(depth.re[n]! * s);
    for (let kind = 0; kind < 4; kind++) {
      const of = kind === 3 ? 2 : 0;
      const re = wr * bessel[of]! - wi * bessel[of + 1]!;
      const im = wr * bessel[of + 1]! + wi * bessel[of]!;
      const weight = weights[kind]!;
      planes[kind]!.re[p]! += weight.re[n]! * re - weight.im[n]! * im;
      planes[kind]!.im[p]! += weight.re[n]! * im + weight.im[n]! * re;
    }
  }
}

/**
 * A function from distances `rho` (m, >= 0) and height sums `s` (m, > 0) to the reflected kernels G_xx, K, G_zz (1/m) and
 * T/rho (1/m^2). Error below 1e-6 of the free-space kernel at the same distance; time and memory grow with rho/s.
 * Spectra are kept, one an octave of rho and s: make one sampler a frequency.
 */
export function layeredSampler(
  medium: LayeredMedium,
  { takenOut = null, density = 1 }: LayeredOptions = {},
): (rho: Float64Array, s: Float64Array) => SpectralSums {
  const kept = new Map<string, LayeredSpectrum>();
  const spectrumFor = (rho: number, s: number): LayeredSpectrum => {
    const isNear = rho < nearest * s;
    const [far, high] = [octave(isNear ? nearest * s : rho) + 1, octave(s)];
    const key = `${far} ${high} ${isNear}`;
    const known = kept.get(key);
    if (known) return known;
    const made = buildLayeredSpectrum(
      medium,
      { nearest: isNear ? 0 : 2 ** (far - 1), distance: 2 ** far, sum: 2 ** high },
      takenOut,
      density,
    );
    kept.set(key, made);
    return made;
  };
  return (rho, s) => {
    const planes = [plane(rho.length), plane(rho.length), plane(rho.length), plane(rho.length)];
    for (let p = 0; p < rho.length; p++) sumAt(spectrumFor(rho[p]!, s[p]!), rho[p]!, s[p]!, planes, p);
    const [horizontal, scalar, vertical, cross] = planes;
    return { horizontal: horizontal!, scalar: scalar!, vertical: vertical!, cross: cross! };
  };
}
