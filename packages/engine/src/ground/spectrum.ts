/**
 * Samples the Sommerfeld integrals of a half-space along real vertical wavenumber kz: kr dkr = -kz dkz removes the
 * branch point of the air and the factor 1/kz, and only real Bessel functions remain. Composite Gauss panels, fine
 * near kz = 0 (surface-wave pole) and near the branch point of nearly lossless soil.
 */
import type { ComplexPlane, Spectrum } from "../kernels/door";
import { add, type Complex, complex, negate, scale, subtract, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type QuasiStaticImages, quasiStaticImages } from "./quasiStaticImages";
import { reflection } from "./reflection";
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

/** One node of the integration: kz or, past the air's wavenumber, the decay a (kz = -ja), rad/m, with its Gauss weight. */
export interface SpectralNode {
  readonly depth: number;
  readonly weight: number;
}

function gaussNodes(edges: readonly number[]): SpectralNode[] {
  const nodes: SpectralNode[] = [];
  for (let p = 1; p < edges.length; p++) {
    const half = (edges[p]! - edges[p - 1]!) / 2;
    rule.points.forEach((x, i) => {
      nodes.push({ depth: edges[p - 1]! + half * (1 + x), weight: half * rule.weights[i]! });
    });
  }
  return nodes;
}

/**
 * Integration nodes over real kz from 0 to k, then over the decay until e^-tail at the smallest height sum, or earlier
 * where all distances are large against it.
 */
export function spectralNodes(
  k: number,
  eps: Complex,
  reach: Reach,
  tail: number,
): { propagating: SpectralNode[]; evanescent: SpectralNode[] } {
  const first = k / Math.sqrt(contrast(eps));
  const widest = (2.4 * Math.PI) / (reach.largestSum + reach.largestDistance);
  const { end, share } = spectralEnd(k * Math.sqrt(contrast(eps)), reach, tail);
  const widestDecay = Math.min(widest, 6 / reach.smallestSum);
  return {
    propagating: gaussNodes(panelEdges(k, first, widest, [])),
    evanescent: gaussNodes(panelEdges(end, first, widestDecay, soilBranch(k, eps))).map(({ depth, weight }) => ({
      depth,
      weight: weight * share(depth),
    })),
  };
}

/**
 * The spectrum for air wavenumber `k` (rad/m) and complex permittivity `eps`. Errors of the summed kernels below 1e-6
 * of the free-space kernel at the same distance, inside the reach.
 */
export function buildSpectrum(k: number, eps: Complex, reach: Reach): Spectrum {
  const { propagating, evanescent } = spectralNodes(k, eps, reach, impedanceTail);
  const count = propagating.length + evanescent.length;
  const plane = (): ComplexPlane => ({ re: new Float64Array(count), im: new Float64Array(count) });
  const spectrum = {
    waves: propagating.length,
    steep: reach.steep,
    depth: plane(),
    radial: plane(),
    horizontal: plane(),
    scalar: plane(),
    vertical: plane(),
    cross: plane(),
  };
  const images = reach.lessImages ? quasiStaticImages(eps) : noImages;
  [...propagating, ...evanescent].forEach((node, n) => {
    fillNode(spectrum, n, node, { k, eps, images, propagating: n < propagating.length });
  });
  return spectrum;
}

const noImages: QuasiStaticImages = { scalar: zero, vertical: zero, cross: zero };

interface Filling {
  readonly k: number;
  readonly eps: Complex;
  readonly images: QuasiStaticImages;
  readonly propagating: boolean;
}

const put = (plane: ComplexPlane, n: number, value: Complex): void => {
  plane.re[n] = value.re;
  plane.im[n] = value.im;
};

/** Weights of one node: F/(4 pi j) and so on, F from reflection(), less the images. */
function fillNode(spectrum: Spectrum, n: number, node: SpectralNode, { k, eps, images, propagating }: Filling): void {
  const kz = propagating ? complex(node.depth) : complex(0, -node.depth);
  const kzSquared = propagating ? node.depth ** 2 : -(node.depth ** 2);
  const radial = Math.sqrt(k * k - kzSquared);
  const { tm, te, difference } = reflection(kz, k, eps);
  const w = node.weight / (4 * Math.PI);
  const weigh = (f: Complex): Complex => (propagating ? complex(w * f.im, -w * f.re) : scale(f, w));
  const scalar = add(tm, scale(difference, k * k));
  const vertical = negate(add(tm, scale(difference, kzSquared)));
  put(spectrum.depth, n, kz);
  spectrum.radial.re[n] = radial;
  put(spectrum.horizontal, n, weigh(te));
  put(spectrum.scalar, n, weigh(subtract(scalar, images.scalar)));
  put(spectrum.vertical, n, weigh(subtract(vertical, images.vertical)));
  put(spectrum.cross, n, scale(add(scale(difference, radial * radial), images.cross), -w * node.depth));
}
