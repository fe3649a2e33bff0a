/** Reflected kernels and their derivatives at one distance and height sum. */
import type { ComplexPlane } from "../kernels/door";
import { besselJComplex } from "../numerics/besselComplex";
import { besselJ0J1, besselJ1OverX } from "../numerics/besselJ";
import type { NearReach, NearSpectrum } from "./nearSpectrum";

/**
 * Writes re and im of, in this order: G_xx, dG_xx/ds, (dG_xx/drho)/rho, dK/ds, (dK/drho)/rho, G_zz, (dG_zz/drho)/rho,
 * T/rho, d(T/rho)/ds, (d(T/rho)/drho)/rho, at distance rho >= 0 and height sum s > 0 (m).
 */
export type NearKernels = (rho: number, s: number, out: Float64Array) => void;

/** Waves that have decayed to e^-18 beside what distance leaves are left out. */
const forgotten = 18;
const fall = 3;

/** J0, J1(z)/z, J2(z)/z^2 of one node, re and im. */
const bessel = new Float64Array(6);

/**
 * Writes J2(z)/z^2 to places 4 and 5, from the others; by its series (Abramowitz and Stegun 9.1.10) where they cancel.
 * Error below 1e-9 for complex z, 1e-13 for real z.
 */
function writeSecond(re: number, im: number): void {
  const [sr, si] = [re * re - im * im, 2 * re * im];
  const size = sr * sr + si * si;
  if (size > 1) {
    const [a, b] = [2 * bessel[2]! - bessel[0]!, 2 * bessel[3]! - bessel[1]!];
    bessel[4] = (a * sr + b * si) / size;
    bessel[5] = (b * sr - a * si) / size;
    return;
  }
  let [tr, ti] = [1 / 8, 0];
  let [ar, ai] = [tr, ti];
  for (let n = 1; n < 9; n++) {
    const c = -1 / (4 * n * (n + 2));
    [tr, ti] = [c * (tr * sr - ti * si), c * (tr * si + ti * sr)];
    ar += tr;
    ai += ti;
  }
  bessel[4] = ar;
  bessel[5] = ai;
}

function writeBessel(re: number, im: number, bent: boolean): void {
  if (bent) {
    besselJComplex(re, im, bessel);
  } else {
    besselJ0J1(re, bessel);
    bessel[2] = besselJ1OverX(re, bessel[1]!);
    bessel[1] = bessel[3] = 0;
  }
  writeSecond(re, im);
}

/** Depth factor times J0, J1(z)/z, J2(z)/z^2; and one of them times a weight. */
const waves = new Float64Array(6);
const sample = new Float64Array(2);

function weigh(weight: ComplexPlane, n: number, of: number): void {
  const [ar, ai] = [weight.re[n]!, weight.im[n]!];
  const [br, bi] = [waves[2 * of]!, waves[2 * of + 1]!];
  sample[0] = ar * br - ai * bi;
  sample[1] = ar * bi + ai * br;
}

/** Adds the sample times a factor to a place of the sums. */
function addTimes(re: number, im: number, place: number, out: Float64Array): void {
  out[2 * place]! += sample[0]! * re - sample[1]! * im;
  out[2 * place + 1]! += sample[0]! * im + sample[1]! * re;
}

/** Adds all ten kernels of one node: d/ds is the factor -j kz = zi - j zr, (d/drho)/rho is -kr^2 and the next order. */
function addNode(spectrum: NearSpectrum, n: number, out: Float64Array): void {
  const { radial, depth, weights } = spectrum;
  const [zr, zi] = [depth.re[n]!, depth.im[n]!];
  const [kr, ki] = [radial.re[n]!, radial.im[n]!];
  const [sr, si] = [ki * ki - kr * kr, -2 * kr * ki];
  const [horizontal, scalar, vertical, cross] = weights as [ComplexPlane, ComplexPlane, ComplexPlane, ComplexPlane];
  weigh(horizontal, n, 0);
  addTimes(1, 0, 0, out);
  addTimes(zi, -zr, 1, out);
  weigh(horizontal, n, 1);
  addTimes(sr, si, 2, out);
  weigh(scalar, n, 0);
  addTimes(zi, -zr, 3, out);
  weigh(scalar, n, 1);
  addTimes(sr, si, 4, out);
  weigh(vertical, n, 0);
  addTimes(1, 0, 5, out);
  weigh(vertical, n, 1);
  addTimes(sr, si, 6, out);
  weigh(cross, n, 1);
  addTimes(1, 0, 7, out);
  addTimes(zi, -zr, 8, out);
  weigh(cross, n, 2);
  addTimes(sr, si, 9, out);
}

/** Sums a spectrum. */
export function sumNearKernels(spectrum: NearSpectrum, rho: number, s: number, out: Float64Array): void {
  const { bent, radial, depth } = spectrum;
  const last = forgotten + fall * Math.log1p(rho / s);
  out.fill(0);
  for (let n = 0; n < depth.re.length; n++) {
    const decay = -depth.im[n]! * s;
    if (n >= bent && decay > last) break;
    writeBessel(radial.re[n]! * rho, radial.im[n]! * rho, n < bent);
    const size = Math.exp(-decay);
    const re = size * Math.cos(depth.re[n]! * s);
    const im = -size * Math.sin(depth.re[n]! * s);
    for (let order = 0; order < 6; order += 2) {
      waves[order] = re * bessel[order]! - im * bessel[order + 1]!;
      waves[order + 1] = re * bessel[order + 1]! + im * bessel[order]!;
    }
    addNode(spectrum, n, out);
  }
}

/** Distances below this share of the height sum are served by one spectrum. */
const close = 0.25;

/** Kernels that make and keep one spectrum for each octave of distance and height sum. */
export function keptKernels(build: (reach: NearReach) => NearSpectrum): NearKernels {
  const kept = new Map<string, NearSpectrum>();
  return (rho, s, out) => {
    const low = Math.floor(Math.log2(s));
    const isClose = rho < close * s;
    const far = Math.floor(Math.log2(isClose ? close * s : rho)) + 1;
    const key = `${low} ${far} ${isClose}`;
    let spectrum = kept.get(key);
    if (!spectrum) {
      spectrum = build({ sum: 2 ** low, nearest: isClose ? 0 : 2 ** (far - 1), distance: 2 ** far });
      kept.set(key, spectrum);
    }
    sumNearKernels(spectrum, rho, s, out);
  };
}
