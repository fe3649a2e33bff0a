/** Sums a sampled Sommerfeld spectrum at many places. */
import { besselJ0, besselJ1OverX } from "../../numerics/besselJ";
import type { ComplexPlane, SpectralSums, Spectrum } from "../door";

const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

/** Depth factor times Bessel function of every node at (rho, s), for one Bessel function. */
function samples(spectrum: Spectrum, rho: number, s: number, bessel: (x: number) => number, out: ComplexPlane): void {
  const { depth, radial, propagating } = spectrum;
  for (let n = 0; n < propagating; n++) {
    const value = bessel(radial[n]! * rho);
    out.re[n] = value * Math.cos(depth[n]! * s);
    out.im[n] = -value * Math.sin(depth[n]! * s);
  }
  for (let n = propagating; n < depth.length; n++) {
    out.re[n] = bessel(radial[n]! * rho) * Math.exp(-depth[n]! * s);
    out.im[n] = 0;
  }
}

/** Sum of weight times sample over all nodes, into place p of `sum`. */
function weighted(weights: ComplexPlane, sample: ComplexPlane, sum: ComplexPlane, p: number): void {
  let re = 0;
  let im = 0;
  for (let n = 0; n < sample.re.length; n++) {
    re += weights.re[n]! * sample.re[n]! - weights.im[n]! * sample.im[n]!;
    im += weights.re[n]! * sample.im[n]! + weights.im[n]! * sample.re[n]!;
  }
  sum.re[p] = re;
  sum.im[p] = im;
}

/** See Kernels.sumSpectrum. `rho` >= 0 and `s` > 0 in metres, same length. */
export function sumSpectrum(spectrum: Spectrum, rho: Float64Array, s: Float64Array): SpectralSums {
  const count = rho.length;
  const sums = { horizontal: plane(count), scalar: plane(count), vertical: plane(count), cross: plane(count) };
  const sample = plane(spectrum.depth.length);
  for (let p = 0; p < count; p++) {
    samples(spectrum, rho[p]!, s[p]!, besselJ0, sample);
    weighted(spectrum.horizontal, sample, sums.horizontal, p);
    weighted(spectrum.scalar, sample, sums.scalar, p);
    if (!spectrum.steep) continue;
    weighted(spectrum.vertical, sample, sums.vertical, p);
    samples(spectrum, rho[p]!, s[p]!, besselJ1OverX, sample);
    weighted(spectrum.cross, sample, sums.cross, p);
  }
  return sums;
}
