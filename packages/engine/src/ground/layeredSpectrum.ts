/** What layers reflect, sampled along the deformed path: all that does not hang on distance and height, but its range. */
import type { ComplexPlane } from "../kernels/door";
import { type Complex, zero } from "../numerics/complex";
import { divideInto, lowerRootInto } from "../numerics/complexInto";
import { type PathReach, pathNodes } from "./deformedPath";
import { type LayeredMedium, writeImmittance } from "./layeredSoil";

/** Constant coefficients taken out of the spectra of K, G_zz and T: images of strength `scalar`, `vertical`, `cross`. */
export interface TakenOut {
  readonly scalar: Complex;
  readonly vertical: Complex;
  readonly cross: Complex;
}

/** The first `bent` nodes have a complex horizontal wavenumber. Weights include all but e^{-j kz s} and Bessel function. */
export interface LayeredSpectrum {
  readonly bent: number;
  readonly radial: ComplexPlane;
  /** Vertical wavenumber in the air, rad/m, Im < 0. */
  readonly depth: ComplexPlane;
  /** For J0: G_xx, K, G_zz; for J1(x)/x: T/rho. */
  readonly weights: readonly ComplexPlane[];
}

/** Spectrum for distances and heights of a reach. */
export function buildLayeredSpectrum(
  medium: LayeredMedium,
  reach: PathReach,
  takenOut: TakenOut | null,
  density: number,
): LayeredSpectrum {
  const { bent, radial, weight } = pathNodes(medium, reach, density);
  const count = radial.re.length;
  const plane = (): ComplexPlane => ({ re: new Float64Array(count), im: new Float64Array(count) });
  const spectrum = { bent, radial, depth: plane(), weights: [plane(), plane(), plane(), plane()] };
  const images = takenOut ?? nothing;
  for (let n = 0; n < count; n++) fillNode(spectrum, n, weight.re[n]!, weight.im[n]!, medium, images);
  return spectrum;
}

const nothing: TakenOut = { scalar: zero, vertical: zero, cross: zero };

/** Surface immittances (4), kz, tm, te, difference, weight for J0: re and im each. */
const x = new Float64Array(14);

function putProduct(plane: ComplexPlane, n: number, ar: number, ai: number, br: number, bi: number): void {
  plane.re[n] = ar * br - ai * bi;
  plane.im[n] = ar * bi + ai * br;
}

function fillNode(
  { radial, depth, weights }: LayeredSpectrum,
  n: number,
  stepRe: number,
  stepIm: number,
  medium: LayeredMedium,
  { scalar, vertical, cross }: TakenOut,
): void {
  const k2 = medium.k ** 2;
  const re = radial.re[n]!;
  const im = radial.im[n]!;
  const radialRe = re * re - im * im;
  const radialIm = 2 * re * im;
  lowerRootInto(x, 4, k2 - radialRe, -radialIm);
  const kzRe = x[4]!;
  const kzIm = x[5]!;
  writeImmittance(kzRe, kzIm, medium, x);
  divideInto(x, 6, x[0]! - kzRe, x[1]! - kzIm, x[0]! + kzRe, x[1]! + kzIm);
  divideInto(x, 8, kzRe - x[2]!, kzIm - x[3]!, kzRe + x[2]!, kzIm + x[3]!);
  const tmRe = x[6]!;
  const tmIm = x[7]!;
  const teRe = x[8]!;
  const teIm = x[9]!;
  divideInto(x, 10, teRe - tmRe, teIm - tmIm, radialRe, radialIm);
  const dRe = x[10]!;
  const dIm = x[11]!;
  const weightRe = (re * stepRe - im * stepIm) / (4 * Math.PI);
  const weightIm = (re * stepIm + im * stepRe) / (4 * Math.PI);
  // For J0 over j kz.
  divideInto(x, 12, weightRe, weightIm, -kzIm, kzRe);
  const wRe = x[12]!;
  const wIm = x[13]!;
  depth.re[n] = kzRe;
  depth.im[n] = kzIm;
  putProduct(weights[0]!, n, teRe, teIm, wRe, wIm);
  putProduct(weights[1]!, n, tmRe + k2 * dRe - scalar.re, tmIm + k2 * dIm - scalar.im, wRe, wIm);
  const squareRe = k2 - radialRe;
  const upRe = -(tmRe + squareRe * dRe + radialIm * dIm) - vertical.re;
  const upIm = -(tmIm + squareRe * dIm - radialIm * dRe) - vertical.im;
  putProduct(weights[2]!, n, upRe, upIm, wRe, wIm);
  putProduct(weights[3]!, n, tmRe - teRe - cross.re, tmIm - teIm - cross.im, weightRe, weightIm);
}
