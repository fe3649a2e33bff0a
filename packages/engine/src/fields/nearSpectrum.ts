/**
 * What a half-space reflects, sampled for fields at any distance: over the angle of elevation for waves that propagate
 * (the kernels' own variable, kz, is too coarse near the zenith at many wavelengths), over the decay for the others.
 */
import { reflection } from "../ground/reflection";
import { contrast } from "../ground/soilMedium";
import { evanescentNodes as decays } from "../ground/spectralNodes";
import type { ComplexPlane } from "../kernels/door";
import { add, type Complex, complex, multiply, negate, scale } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";

/** Nodes with all but e^{-j kz s} and Bessel functions; the spectrum of soil in layers is of the same form. */
export interface NearSpectrum {
  /** So many of the first nodes have a complex horizontal wavenumber. */
  readonly bent: number;
  /** Horizontal wavenumber, rad/m. */
  readonly radial: ComplexPlane;
  /** Vertical wavenumber in the air, rad/m, Im <= 0. */
  readonly depth: ComplexPlane;
  /** For J0: G_xx, K, G_zz; for J1(x)/x: T/rho. */
  readonly weights: readonly ComplexPlane[];
}

/** Places the spectrum must serve, m: height sums from `sum` to twice that, distances from `nearest` to `distance`. */
export interface NearReach {
  readonly nearest: number;
  readonly sum: number;
  readonly distance: number;
}

const rule = gaussLegendre(10);
/** Decay kept of evanescent waves; far along the surface the fields fall as the cube of distance. */
const tail = 18;
const fall = 3;

interface Node {
  readonly kz: Complex;
  /** dkz over 4 pi j, or da over 4 pi. */
  readonly weight: Complex;
}

/** Angles from the horizon up to the zenith, fine near the horizon, where the surface wave's pole is. */
function propagatingNodes(k: number, eps: Complex, { sum, distance }: NearReach): Node[] {
  const widest = (2.4 * Math.PI) / (k * (2 * sum + distance));
  const nodes: Node[] = [];
  let width = Math.min(widest, 1 / Math.sqrt(contrast(eps)));
  for (let from = 0; from < Math.PI / 2; ) {
    const to = from + 1.2 * width >= Math.PI / 2 ? Math.PI / 2 : from + width;
    rule.points.forEach((x, i) => {
      const angle = from + ((to - from) * (1 + x)) / 2;
      const step = ((to - from) / 2) * rule.weights[i]! * k * Math.cos(angle);
      nodes.push({ kz: complex(k * Math.sin(angle)), weight: complex(0, -step / (4 * Math.PI)) });
    });
    from = to;
    width = Math.min(2.5 * width, widest);
  }
  return nodes;
}

function evanescentNodes(k: number, eps: Complex, { sum, nearest, distance }: NearReach): Node[] {
  const reach = {
    smallestSum: sum,
    largestSum: 2 * sum,
    largestDistance: distance,
    nearestDistance: nearest,
    steep: true,
  };
  const kept = tail + fall * Math.log1p(distance / sum);
  const { depth, weight } = decays(k, eps, reach, kept);
  return Array.from(depth, (a, n) => ({ kz: complex(0, -a), weight: complex(weight[n]! / (4 * Math.PI)) }));
}

/** The spectrum for air wavenumber `k` (rad/m) over complex relative permittivity `eps`. */
export function buildNearSpectrum(k: number, eps: Complex, reach: NearReach): NearSpectrum {
  const nodes = [...propagatingNodes(k, eps, reach), ...evanescentNodes(k, eps, reach)];
  const plane = (): ComplexPlane => ({ re: new Float64Array(nodes.length), im: new Float64Array(nodes.length) });
  const spectrum = { bent: 0, radial: plane(), depth: plane(), weights: [0, 1, 2, 3].map(plane) };
  const put = (at: ComplexPlane, n: number, value: Complex): void => {
    at.re[n] = value.re;
    at.im[n] = value.im;
  };
  nodes.forEach(({ kz, weight }, n) => {
    const square = multiply(kz, kz).re;
    const { tm, te, difference } = reflection(kz, k, eps);
    const forCross = multiply(scale(difference, square - k * k), multiply(complex(0, 1), multiply(kz, weight)));
    spectrum.radial.re[n] = Math.sqrt(k * k - square);
    put(spectrum.depth, n, kz);
    put(spectrum.weights[0]!, n, multiply(te, weight));
    put(spectrum.weights[1]!, n, multiply(add(tm, scale(difference, k * k)), weight));
    put(spectrum.weights[2]!, n, multiply(negate(add(tm, scale(difference, square))), weight));
    put(spectrum.weights[3]!, n, forCross);
  });
  return spectrum;
}
