/** Sums a sampled Sommerfeld spectrum at many places. */
import { besselJ0J1, besselJ1OverX } from "../../numerics/besselJ";
import type { ComplexPlane, SpectralSums, Spectrum } from "../door";

/** Evanescent nodes that have decayed to e^-18 = 1.5e-8 are left out. */
const forgotten = 18;

const plane = (length: number): ComplexPlane => ({ re: new Float64Array(length), im: new Float64Array(length) });

interface Samples {
  /** Depth factor times J0, and times J1(x)/x. */
  readonly j0: ComplexPlane;
  readonly j1: ComplexPlane;
}

const pair = new Float64Array(2);

/** Samples of all nodes at (rho, s); returns how many matter. */
function sampleNodes(spectrum: Spectrum, rho: number, s: number, out: Samples): number {
  const { depth, radial, propagating, steep } = spectrum;
  for (let n = 0; n < depth.length; n++) {
    const wave = n < propagating;
    const argument = depth[n]! * s;
    if (!wave && argument > forgotten) return n;
    const re = wave ? Math.cos(argument) : Math.exp(-argument);
    const im = wave ? -Math.sin(argument) : 0;
    const x = radial[n]! * rho;
    besselJ0J1(x, pair);
    out.j0.re[n] = pair[0]! * re;
    out.j0.im[n] = pair[0]! * im;
    if (!steep) continue;
    const ratio = besselJ1OverX(x, pair[1]!);
    out.j1.re[n] = ratio * re;
    out.j1.im[n] = ratio * im;
  }
  return depth.length;
}

/** Sum of weight times sample over the first nodes, into place p of `sum`. */
function weighted(weights: ComplexPlane, sample: ComplexPlane, nodes: number, sum: ComplexPlane, p: number): void {
  let re = 0;
  let im = 0;
  for (let n = 0; n < nodes; n++) {
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
  const samples = { j0: plane(spectrum.depth.length), j1: plane(spectrum.depth.length) };
  for (let p = 0; p < count; p++) {
    const nodes = sampleNodes(spectrum, rho[p]!, s[p]!, samples);
    weighted(spectrum.horizontal, samples.j0, nodes, sums.horizontal, p);
    weighted(spectrum.scalar, samples.j0, nodes, sums.scalar, p);
    if (!spectrum.steep) continue;
    weighted(spectrum.vertical, samples.j0, nodes, sums.vertical, p);
    weighted(spectrum.cross, samples.j1, nodes, sums.cross, p);
  }
  return sums;
}
