/** Reflected kernels and their derivatives at one distance and height sum. */
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
const bessel = new Float64Array(2);

/** J2(x)/x^2, from J0 and J1/x; the series (Abramowitz and Stegun 9.1.10) where they cancel. Error below 1e-13. */
export function besselJ2OverX2(x: number, j0: number, j1OverX: number): number {
  if (x > 1) return (2 * j1OverX - j0) / (x * x);
  const q = (x * x) / 4;
  let term = 1 / 8;
  let sum = term;
  for (let n = 1; n < 9; n++) {
    term *= -q / (n * (n + 2));
    sum += term;
  }
  return sum;
}

const sample = new Float64Array(2);

/** Adds weight times wave times `real`, and times `steps` for the others, to places of `out`. */
function addSample(re: number, im: number, factor: number, out: Float64Array, place: number): void {
  out[2 * place]! += re * factor;
  out[2 * place + 1]! += im * factor;
}

/** Sums a spectrum. */
export function sumNearKernels(spectrum: NearSpectrum, rho: number, s: number, out: Float64Array): void {
  const { radial, depth, weights } = spectrum;
  const last = forgotten + fall * Math.log1p(rho / s);
  out.fill(0);
  for (let n = 0; n < radial.length; n++) {
    const [zr, zi] = [depth.re[n]!, depth.im[n]!];
    if (-zi * s > last) break;
    const x = radial[n]! * rho;
    besselJ0J1(x, bessel);
    const b0 = bessel[0]!;
    const b1 = besselJ1OverX(x, bessel[1]!);
    const square = -radial[n]! * radial[n]!;
    const size = Math.exp(zi * s);
    const wr = size * Math.cos(zr * s);
    const wi = -size * Math.sin(zr * s);
    const turned = (w: number): void => {
      const [ar, ai] = [weights[w]!.re[n]!, weights[w]!.im[n]!];
      sample[0] = ar * wr - ai * wi;
      sample[1] = ar * wi + ai * wr;
    };
    // d/ds of e^{-j kz s} is the factor -j kz = zi - j zr.
    const addSlope = (factor: number, place: number): void =>
      addSample(sample[0]! * zi + sample[1]! * zr, sample[1]! * zi - sample[0]! * zr, factor, out, place);
    turned(0);
    addSample(sample[0]!, sample[1]!, b0, out, 0);
    addSlope(b0, 1);
    addSample(sample[0]!, sample[1]!, square * b1, out, 2);
    turned(1);
    addSlope(b0, 3);
    addSample(sample[0]!, sample[1]!, square * b1, out, 4);
    turned(2);
    addSample(sample[0]!, sample[1]!, b0, out, 5);
    addSample(sample[0]!, sample[1]!, square * b1, out, 6);
    turned(3);
    addSample(sample[0]!, sample[1]!, b1, out, 7);
    addSlope(b1, 8);
    addSample(sample[0]!, sample[1]!, square * besselJ2OverX2(x, b0, b1), out, 9);
  }
}

/** Shortest distance served by its own spectrum, as a share of the height sum. */
const nearest = 0.25;

/** Kernels that make and keep one spectrum for each octave of distance and height sum. */
export function keptKernels(build: (reach: NearReach) => NearSpectrum): NearKernels {
  const kept = new Map<string, NearSpectrum>();
  return (rho, s, out) => {
    const low = Math.floor(Math.log2(s));
    const far = Math.floor(Math.log2(Math.max(rho, nearest * s))) + 1;
    const key = `${low} ${far}`;
    let spectrum = kept.get(key);
    if (!spectrum) {
      spectrum = build({ sum: 2 ** low, distance: 2 ** far });
      kept.set(key, spectrum);
    }
    sumNearKernels(spectrum, rho, s, out);
  };
}
