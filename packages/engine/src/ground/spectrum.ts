/**
 * Samples the Sommerfeld integrals of a half-space along real vertical wavenumber kz: kr dkr = -kz dkz removes the
 * branch point of the air and the factor 1/kz, and only real Bessel functions remain.
 */
import type { ComplexPlane, Spectrum } from "../kernels/door";
import { type Complex, zero } from "../numerics/complex";
import { type QuasiStaticImages, quasiStaticImages } from "./quasiStaticImages";
import { writeReflection } from "./reflection";
import { evanescentNodes, propagatingNodes, type Reach } from "./spectralNodes";

/** Decay kept of the evanescent tail: what is cut is below 2 e^-15 = 6e-7 of the free-space kernel. */
const impedanceTail = 15;

/**
 * The spectrum for air wavenumber `k` (rad/m) and complex permittivity `eps`. Errors of the summed kernels below 1e-6
 * of the free-space kernel at the same distance, inside the reach.
 */
export function buildSpectrum(k: number, eps: Complex, reach: Reach): Spectrum {
  const propagating = propagatingNodes(k, eps, reach);
  const evanescent = evanescentNodes(k, eps, reach, impedanceTail);
  const waves = propagating.depth.length;
  const count = waves + evanescent.depth.length;
  const plane = (): ComplexPlane => ({ re: new Float64Array(count), im: new Float64Array(count) });
  const spectrum = {
    waves,
    steep: reach.steep,
    depth: plane(),
    radial: plane(),
    horizontal: plane(),
    scalar: plane(),
    vertical: plane(),
    cross: plane(),
  };
  const images = reach.lessImages ? quasiStaticImages(eps) : noImages;
  const filling = { k, eps, images };
  for (let n = 0; n < waves; n++) fillNode(spectrum, n, propagating.depth[n]!, propagating.weight[n]!, filling);
  for (let e = 0; e + waves < count; e++)
    fillNode(spectrum, waves + e, evanescent.depth[e]!, evanescent.weight[e]!, filling);
  return spectrum;
}

const noImages: QuasiStaticImages = { scalar: zero, vertical: zero, cross: zero };

interface Filling {
  readonly k: number;
  readonly eps: Complex;
  readonly images: QuasiStaticImages;
}

const eight = new Float64Array(8);

/** Weights of one node: F/(4 pi j) and so on, F from reflection(), less the images. */
function fillNode(spectrum: Spectrum, n: number, depth: number, weight: number, { k, eps, images }: Filling): void {
  const { horizontal, scalar, vertical, cross } = spectrum;
  const isWave = n < spectrum.waves;
  const square = isWave ? depth * depth : -depth * depth;
  const radialSquared = k * k - square;
  writeReflection(isWave ? depth : 0, isWave ? 0 : -depth, k, eps, eight);
  const tmRe = eight[2]!;
  const tmIm = eight[3]!;
  const differenceRe = eight[6]!;
  const differenceIm = eight[7]!;
  const w = weight / (4 * Math.PI);
  spectrum.radial.re[n] = Math.sqrt(radialSquared);
  spectrum.depth.re[n] = isWave ? depth : 0;
  spectrum.depth.im[n] = isWave ? 0 : -depth;
  putWeighted(horizontal, n, w, isWave, eight[4]!, eight[5]!);
  const scalarRe = tmRe + k * k * differenceRe - images.scalar.re;
  putWeighted(scalar, n, w, isWave, scalarRe, tmIm + k * k * differenceIm - images.scalar.im);
  const verticalRe = -(tmRe + square * differenceRe) - images.vertical.re;
  putWeighted(vertical, n, w, isWave, verticalRe, -(tmIm + square * differenceIm) - images.vertical.im);
  cross.re[n] = -w * depth * (radialSquared * differenceRe + images.cross.re);
  cross.im[n] = -w * depth * (radialSquared * differenceIm + images.cross.im);
}

/** Puts w f, divided by j for a wave. */
function putWeighted(plane: ComplexPlane, n: number, w: number, isWave: boolean, re: number, im: number): void {
  plane.re[n] = isWave ? w * im : w * re;
  plane.im[n] = isWave ? -w * re : w * im;
}
