/**
 * Samples the Sommerfeld integrals of a half-space along real vertical wavenumber kz: kr dkr = -kz dkz removes the
 * branch point of the air and the factor 1/kz, and only real Bessel functions remain. Composite Gauss panels, fine
 * near kz = 0 (surface-wave pole) and near the branch point of nearly lossless soil.
 */
import type { ComplexPlane, Spectrum } from "../kernels/door";
import { type Complex, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type QuasiStaticImages, quasiStaticImages } from "./quasiStaticImages";
import { writeReflection } from "./reflection";
import { contrast } from "./soilMedium";
import { spectralEnd } from "./spectralEnd";

/** Ranges the spectrum must serve: s = sum of heights, rho = horizontal distance, metres. */
export interface Reach {
  readonly smallestSum: number;
  readonly largestSum: number;
  readonly largestDistance: number;
  /** The height sums that occur (m, ascending) where they are not too many to list. */
  readonly sums?: Float64Array;
  /** Whether vertical currents exist. */
  readonly steep: boolean;
  /** Smallest horizontal distance; far from it the tail may end early (spectralEnd). 0 when left out. */
  readonly nearestDistance?: number;
  /** Whether the quasi-static images are integrated elsewhere and left out of the kernels here. */
  readonly lessImages?: boolean;
}

const rule = gaussLegendre(10);
/** Decay kept of the evanescent tail: what is cut is below 2 e^-15 = 6e-7 of the free-space kernel. */
const impedanceTail = 15;

/** Panels are no wider than this share of the distance from 0: the soil's branch point lies some panels behind then. */
const widestShare = 1.2;

/** Edges from 0 to `end`: first panel `first`, growing by 2.5, never wider than `widest`, with extra edges `breaks`. */
function panelEdges(end: number, first: number, widest: number, breaks: readonly number[]): number[] {
  const edges = [0];
  const stops = [...breaks.filter((b) => b > 0 && b < end).sort((a, b) => a - b), end];
  let width = Math.min(first, widest);
  let at = 0;
  for (const stop of stops) {
    while (at < stop) {
      const step = Math.min(width, Math.max(first, widestShare * at));
      at = at + 1.2 * step >= stop ? stop : at + step;
      edges.push(at);
      width = Math.min(width * 2.5, widest);
    }
  }
  return edges;
}

/** Branch point of the soil on the evanescent axis, with panels closing in on it, when it lies close to the axis. */
function soilBranch(k: number, eps: Complex): number[] {
  if (eps.re <= 1) return [];
  const at = k * Math.sqrt(eps.re - 1);
  const off = Math.max((at * -eps.im) / (4 * eps.re), 1e-4 * at);
  const edges = [at];
  for (let distance = off; distance < at; distance *= 3) edges.push(at - distance, at + distance);
  return edges;
}

/** Nodes of the integration: kz or, past the air's wavenumber, the decay a (kz = -ja), rad/m, with their Gauss weights. */
export interface SpectralNodes {
  readonly depth: Float64Array;
  readonly weight: Float64Array;
}

/** The same with what the soil lets in at each, see writeTransmission. */
export interface PowerNodes extends SpectralNodes {
  readonly tm: Float64Array;
  readonly te: Float64Array;
}

function gaussNodes(edges: readonly number[]): SpectralNodes {
  const { points, weights } = rule;
  const count = points.length * (edges.length - 1);
  const nodes = { depth: new Float64Array(count), weight: new Float64Array(count) };
  for (let p = 1, n = 0; p < edges.length; p++) {
    const half = (edges[p]! - edges[p - 1]!) / 2;
    for (let i = 0; i < points.length; i++, n++) {
      nodes.depth[n] = edges[p - 1]! + half * (1 + points[i]!);
      nodes.weight[n] = half * weights[i]!;
    }
  }
  return nodes;
}

/** The width of a panel at 0 that the surface-wave pole asks for, and the widest anywhere. */
const panelWidths = (k: number, eps: Complex, { largestSum, largestDistance }: Reach): readonly [number, number] => [
  k / Math.sqrt(contrast(eps)),
  (2.4 * Math.PI) / (largestSum + largestDistance),
];

/** Over real kz from 0 to k. */
export const propagatingNodes = (k: number, eps: Complex, reach: Reach): SpectralNodes =>
  gaussNodes(panelEdges(k, ...panelWidths(k, eps, reach), []));

/** Over the decay until e^-tail at the smallest height sum, or earlier where all distances are large against it. */
export function evanescentNodes(k: number, eps: Complex, reach: Reach, tail: number): SpectralNodes {
  const [first, widest] = panelWidths(k, eps, reach);
  const { end, share } = spectralEnd(k * Math.sqrt(contrast(eps)), reach, tail);
  const widestDecay = Math.min(widest, 6 / reach.smallestSum);
  const { depth, weight } = gaussNodes(panelEdges(end, first, widestDecay, soilBranch(k, eps)));
  for (let n = 0; n < depth.length; n++) weight[n]! *= share(depth[n]!);
  return { depth, weight };
}

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
