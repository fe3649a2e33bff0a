/**
 * The way of integration over the horizontal wavenumber for soil in layers. Waves guided by a low-loss layer are poles
 * next to the real axis: half an ellipse goes around them through the first quadrant, then the real axis on.
 */
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type LayeredMedium, largestWavenumber } from "./layeredSoil";
import { decayingRoot } from "./soilMedium";
import { spectralEnd } from "./spectralEnd";

/** One node: horizontal wavenumber (rad/m) and weight, dkr included. */
export interface PathNode {
  readonly re: number;
  readonly im: number;
  readonly weightRe: number;
  readonly weightIm: number;
}

/** Distances the nodes must serve, m: rho from `nearest` to `distance`, s from `sum` to `largestSum`, or to twice `sum`. */
export interface PathReach {
  readonly nearest: number;
  readonly distance: number;
  readonly sum: number;
  readonly largestSum?: number;
}

const highest = ({ sum, largestSum }: PathReach): number => largestSum ?? 2 * sum;

const rule = gaussLegendre(10);
/** No low-loss medium met in nature guides waves slower than this share of light's speed (water: 1/9). */
const slowest = 12;
/** On the ellipse Bessel functions grow to e^5 at most. */
const mostGrowth = 5;
/** Decay kept of the tail beside ln(1 + rho/s), by which the direct field falls behind. */
const tail = 17;
/** Waves that have fallen to e^-10 in a layer no longer tell of what is below it. */
const forgotten = 10;

/** Wavenumber the ellipse ends at: past the poles of all layers. */
function ellipseEnd({ k, layers }: LayeredMedium): number {
  const indices = layers.map((layer) => decayingRoot(layer.permittivity).re);
  return 1.25 * k * Math.min(Math.max(1.2, ...indices), slowest / 1.25);
}

/** Metres of layers through which waves echo. */
function echoes({ k, layers }: LayeredMedium): number {
  return layers.slice(0, -1).reduce((sum, { permittivity, thickness }) => {
    const decay = -decayingRoot(permittivity).im * k;
    return sum + Math.min(thickness, decay > 0 ? forgotten / decay : thickness);
  }, 0);
}

function ellipseNodes(medium: LayeredMedium, end: number, reach: PathReach, density: number): PathNode[] {
  const { distance } = reach;
  const height = Math.min(0.6 * medium.k, mostGrowth / distance);
  const phase = (end * (distance + highest(reach) + 2 * echoes(medium))) / 6;
  const panels = Math.ceil(density * Math.max(3, phase, (0.8 * end) / height));
  const half = Math.PI / (2 * panels);
  return Array.from({ length: panels }, (_, p) =>
    [...rule.points].map((x, i) => {
      const t = half * (2 * p + 1 + x);
      const w = half * rule.weights[i]!;
      return {
        re: (end / 2) * (1 - Math.cos(t)),
        im: height * Math.sin(t),
        weightRe: w * (end / 2) * Math.sin(t),
        weightIm: w * height * Math.cos(t),
      };
    }),
  ).flat();
}

function tailNodes(medium: LayeredMedium, from: number, reach: PathReach, density: number): PathNode[] {
  const { nearest, distance, sum } = reach;
  const window = spectralEnd(
    largestWavenumber(medium),
    { smallestSum: sum, nearestDistance: nearest },
    tail + (sum > 0 ? Math.log1p(distance / sum) : 0),
  );
  const end = from + window.end;
  const widest = Math.min(6 / distance, 6 / highest(reach));
  const nodes: PathNode[] = [];
  for (let at = from; at < end; ) {
    const width = Math.min(widest, 0.6 * at) / density;
    const to = at + 1.2 * width >= end ? end : at + width;
    rule.points.forEach((x, i) => {
      const re = (at + to) / 2 + ((to - at) / 2) * x;
      const weightRe = ((to - at) / 2) * rule.weights[i]! * window.share(re - from);
      nodes.push({ re, im: 0, weightRe, weightIm: 0 });
    });
    at = to;
  }
  return nodes;
}

/** Nodes over kr from 0 on, those off the real axis first. `density` 2 doubles the panels, to see what is left. */
export function pathNodes(
  medium: LayeredMedium,
  reach: PathReach,
  density = 1,
): { readonly bent: PathNode[]; readonly straight: PathNode[] } {
  const end = ellipseEnd(medium);
  return { bent: ellipseNodes(medium, end, reach, density), straight: tailNodes(medium, end, reach, density) };
}
