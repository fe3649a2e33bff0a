/**
 * Where Sommerfeld integrals are sampled: composite Gauss panels over real vertical wavenumbers, fine near kz = 0
 * (surface-wave pole) and near the branch point of nearly lossless soil.
 */
import type { Complex } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";
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
