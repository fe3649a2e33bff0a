/** What layers reflect, sampled along the deformed path: all that does not hang on distance and height, but its range. */
import type { ComplexPlane } from "../kernels/door";
import { add, type Complex, complex, divide, multiply, negate, scale, subtract } from "../numerics/complex";
import { type PathNode, type PathReach, pathNodes } from "./deformedPath";
import { type LayeredMedium, layeredReflection } from "./layeredSoil";
import { decayingRoot } from "./soilMedium";

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

const put = (plane: ComplexPlane, n: number, value: Complex): void => {
  plane.re[n] = value.re;
  plane.im[n] = value.im;
};

/** Spectrum for distances and heights of a reach. */
export function buildLayeredSpectrum(
  medium: LayeredMedium,
  reach: PathReach,
  takenOut: TakenOut | null,
  density: number,
): LayeredSpectrum {
  const { bent, straight } = pathNodes(medium, reach, density);
  const nodes = [...bent, ...straight];
  const plane = (): ComplexPlane => ({ re: new Float64Array(nodes.length), im: new Float64Array(nodes.length) });
  const spectrum = {
    bent: bent.length,
    radial: plane(),
    depth: plane(),
    weights: [plane(), plane(), plane(), plane()],
  };
  nodes.forEach((node, n) => {
    fillNode(spectrum, n, node, medium, takenOut);
  });
  return spectrum;
}

function fillNode(
  spectrum: LayeredSpectrum,
  n: number,
  node: PathNode,
  medium: LayeredMedium,
  takenOut: TakenOut | null,
): void {
  const k2 = medium.k ** 2;
  const kr = complex(node.re, node.im);
  const krSquared = multiply(kr, kr);
  const kzSquared = subtract(complex(k2), krSquared);
  const kz = decayingRoot(kzSquared);
  const { tm, te } = layeredReflection(kz, medium);
  const difference = divide(subtract(te, tm), krSquared);
  const weight = multiply(scale(kr, 1 / (4 * Math.PI)), complex(node.weightRe, node.weightIm));
  const forJ0 = divide(weight, multiply(complex(0, 1), kz));
  const less = (f: Complex, constant: Complex | undefined): Complex => (constant ? subtract(f, constant) : f);
  const scalar = less(add(tm, scale(difference, k2)), takenOut?.scalar);
  const vertical = less(negate(add(tm, multiply(kzSquared, difference))), takenOut?.vertical);
  const cross = less(subtract(tm, te), takenOut?.cross);
  put(spectrum.radial, n, kr);
  put(spectrum.depth, n, kz);
  [te, scalar, vertical].forEach((f, i) => {
    put(spectrum.weights[i]!, n, multiply(f, forJ0));
  });
  put(spectrum.weights[3]!, n, multiply(cross, weight));
}
