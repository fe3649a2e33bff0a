/** What the module offers; each operation lives in a file of its own. Addresses are bytes in the module's memory. */
import { bessel, j0, j1OverX } from "./bessel";
import { besselComplex, c0, c1, d0, d1 } from "./besselComplex";
import { exponential } from "./exponential";
import { logarithm } from "./logarithm";
import { cosine, sinCos, sine } from "./sinCos";

export { endOfKept } from "./kept";
export { findNear, nearMoments } from "./nearMoments";
export { pairTerms } from "./pairTerms";
export { solvePivoted } from "./pivotedSolve";
export { pairPower, reflectedTerms } from "./reflectedTerms";
export { residualOf } from "./residual";
export { sumSpectrum } from "./spectralSums";
export { solveUnpivoted } from "./symmetricSolve";
export { sumWaves } from "./waveSums";

/** Sine and cosine of `count` numbers (rounded up to an even count), for tests of the polynomials. */
export function sinCosOfAll(x: usize, count: i32, sines: usize, cosines: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    sinCos(v128.load(x + at));
    v128.store(sines + at, sine);
    v128.store(cosines + at, cosine);
  }
}

/** Exponentials of `count` numbers (rounded up to an even count), for tests. */
export function exponentialOfAll(x: usize, count: i32, out: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    v128.store(out + at, exponential(v128.load(x + at)));
  }
}

/** Natural logarithms of `count` positive numbers (rounded up to an even count), for tests. */
export function logarithmOfAll(x: usize, count: i32, out: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    v128.store(out + at, logarithm(v128.load(x + at)));
  }
}

/** J0(x) and J1(x)/x of `count` numbers (rounded up to an even count), for tests. */
export function besselOfAll(x: usize, count: i32, zeroth: usize, first: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    bessel(v128.load(x + at));
    v128.store(zeroth + at, j0);
    v128.store(first + at, j1OverX);
  }
}

/** re, im of J0(z), then of J1(z)/z, in planes of `stride` bytes, of `count` numbers (rounded up to an even count), for tests. */
export function besselComplexOfAll(re: usize, im: usize, count: i32, out: usize, stride: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    besselComplex(v128.load(re + at), v128.load(im + at));
    v128.store(out + at, c0);
    v128.store(out + stride + at, d0);
    v128.store(out + 2 * stride + at, c1);
    v128.store(out + 3 * stride + at, d1);
  }
}
