/** Reflected kernels over two layers straight from their definition: by another route, slow, for tests. */
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  multiply,
  one,
  scale,
  subtract,
  zero,
} from "../numerics/complex";
import { adaptive, bessel } from "./adaptiveQuadrature.fixture";
import type { SoilLayer } from "./layeredSoil";
import { complexPermittivity, decayingRoot } from "./soilMedium";

/** Of the air, rad/m. */
export const wavenumber = (frequency: number): number => (2 * Math.PI * frequency) / 299792458;

/** Fresnel coefficient of the tangential field from one medium into the next, for one polarisation. */
function fresnel(from: Complex, to: Complex): Complex {
  return divide(subtract(to, from), add(to, from));
}

/** Two layers by the sum over echoes, r = (r01 + r12 q)/(1 + r01 r12 q): another route than the cascade. */
function airy(
  k: number,
  kr: number,
  kz: Complex,
  layers: readonly SoilLayer[],
  f: number,
): { te: Complex; tm: Complex } {
  const eps = [one, ...layers.map((l) => complexPermittivity(l, f))];
  const roots = [kz, ...eps.slice(1).map((e) => decayingRoot(subtract(scale(e, k * k), complex(kr * kr))))];
  const q = exponential(multiply(complex(0, -2 * layers[0]!.thickness!), roots[1]!));
  const impedances = {
    te: roots.map((root) => divide(one, root)),
    tm: roots.map((root, i) => divide(root, eps[i]!)),
  };
  const both = ([z0, z1, z2]: Complex[]): Complex => {
    const [first, second] = [fresnel(z0!, z1!), multiply(fresnel(z1!, z2!), q)];
    return divide(add(first, second), add(one, multiply(first, second)));
  };
  return { te: both(impedances.te), tm: both(impedances.tm) };
}

/** Of the integrals, absolute. Guided waves make narrow peaks: some halvings are always made. */
const goal = { error: 3e-10, leastHalvings: 3, mostHalvings: 40 };

/** The kernels from their definition along the real axis, kr = k sin t, then k cosh t. Order G_xx, K, G_zz, T. */
export function definition(frequency: number, layers: readonly SoilLayer[], rho: number, s: number): Complex[] {
  const k = wavenumber(frequency);
  const integrand = (kr: number, kz: Complex, jacobian: Complex): Complex[] => {
    const { te, tm } = airy(k, kr, kz, layers, frequency);
    const kz2 = multiply(kz, kz);
    const scalar = scale(subtract(scale(te, k * k), multiply(kz2, tm)), 1 / (kr * kr));
    const inner = add(multiply(subtract(complex(kr * kr), kz2), tm), multiply(kz2, te));
    const vertical = scale(inner, -1 / (kr * kr));
    const wave = multiply(exponential(multiply(complex(0, -s), kz)), jacobian);
    const forJ0 = scale(wave, bessel(0, kr * rho) / (4 * Math.PI));
    const cross = multiply(multiply(subtract(tm, te), divide(kz, complex(kr))), complex(0, 1));
    return [
      ...[te, scalar, vertical].map((f) => multiply(f, forJ0)),
      multiply(cross, scale(wave, bessel(1, kr * rho) / (4 * Math.PI))),
    ];
  };
  const below = (t: number) => integrand(k * Math.sin(t), complex(k * Math.cos(t)), complex(0, -k * Math.sin(t)));
  const above = (t: number) => integrand(k * Math.cosh(t), complex(0, -k * Math.sinh(t)), complex(k * Math.cosh(t)));
  const end = Math.asinh(22 / (k * s));
  const parts = [
    adaptive(below, 0, Math.PI / 2, goal),
    adaptive(above, 0, end / 2, goal),
    adaptive(above, end / 2, end, goal),
  ];
  return [0, 1, 2, 3].map((n) => parts.reduce((sum, p) => add(sum, p[n]!), zero));
}
