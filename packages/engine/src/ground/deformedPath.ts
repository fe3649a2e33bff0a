/**
 * The way of integration over the horizontal wavenumber for soil in layers. Waves guided by a low-loss layer are poles
 * next to the real axis: half an ellipse goes around them through the first quadrant, then the real axis on.
 */
import type { ComplexPlane } from "../kernels/door";
import { gaussLegendre } from "../numerics/gaussLegendre";
import { type LayeredMedium, largestWavenumber } from "./layeredSoil";
import { decayingRoot } from "./soilMedium";
import { spectralEnd } from "./spectralEnd";

/** Horizontal wavenumbers (rad/m) and weights, dkr included, in order. */
export interface PathNodes {
  /** So many of the first nodes lie off the real axis. */
  readonly bent: number;
  readonly radial: ComplexPlane;
  readonly weight: ComplexPlane;
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

const perPanel = rule.points.length;

/** Panels of the half-ellipse that ends at `end`. */
function ellipsePanels(medium: LayeredMedium, end: number, height: number, reach: PathReach, density: number): number {
  const phase = (end * (reach.distance + highest(reach) + 2 * echoes(medium))) / 6;
  return Math.ceil(density * Math.max(3, phase, (0.8 * end) / height));
}

function putEllipse({ radial, weight }: PathNodes, panels: number, end: number, height: number): void {
  const half = Math.PI / (2 * panels);
  for (let n = 0; n < panels * perPanel; n++) {
    const t = half * (2 * Math.floor(n / perPanel) + 1 + rule.points[n % perPanel]!);
    const w = half * rule.weights[n % perPanel]!;
    radial.re[n] = (end / 2) * (1 - Math.cos(t));
    radial.im[n] = height * Math.sin(t);
    weight.re[n] = w * (end / 2) * Math.sin(t);
    weight.im[n] = w * height * Math.cos(t);
  }
}

/** Edges of the panels of the real axis from `from` on. */
function tailEdges(from: number, end: number, reach: PathReach, density: number): number[] {
  const widest = Math.min(6 / reach.distance, 6 / highest(reach));
  const edges = [from];
  for (let at = from; at < end; ) {
    const width = Math.min(widest, 0.6 * at) / density;
    at = at + 1.2 * width >= end ? end : at + width;
    edges.push(at);
  }
  return edges;
}

/** Nodes over kr from 0 on, those off the real axis first. `density` 2 doubles the panels, to see what is left. */
export function pathNodes(medium: LayeredMedium, reach: PathReach, density = 1): PathNodes {
  const { nearest, distance, sum } = reach;
  const from = ellipseEnd(medium);
  const height = Math.min(0.6 * medium.k, mostGrowth / distance);
  const window = spectralEnd(
    largestWavenumber(medium),
    { smallestSum: sum, nearestDistance: nearest },
    tail + (sum > 0 ? Math.log1p(distance / sum) : 0),
  );
  const panels = ellipsePanels(medium, from, height, reach, density);
  const edges = tailEdges(from, from + window.end, reach, density);
  const bent = panels * perPanel;
  const count = bent + (edges.length - 1) * perPanel;
  const plane = (): ComplexPlane => ({ re: new Float64Array(count), im: new Float64Array(count) });
  const nodes = { bent, radial: plane(), weight: plane() };
  putEllipse(nodes, panels, from, height);
  for (let n = bent; n < count; n++) {
    const p = Math.floor((n - bent) / perPanel);
    const half = (edges[p + 1]! - edges[p]!) / 2;
    const re = edges[p]! + half * (1 + rule.points[n % perPanel]!);
    nodes.radial.re[n] = re;
    nodes.weight.re[n] = half * rule.weights[n % perPanel]! * window.share(re - from);
  }
  return nodes;
}
