/** Permittivity of two materials mixed finely against the wavelength: foams, air with spacers, water in a foam. */
import {
  add,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  one,
  scale,
  squareRoot,
  subtract,
} from "../numerics/complex";

/**
 * How far bodies weaken the field within themselves (depolarisation factor): along the field, round, cylinders across it, sheets
 * across it. Source: elementary electrostatics.
 */
export const depolarisation = { along: 0, round: 1 / 3, cylinders: 1 / 2, across: 1 } as const;

/**
 * Relative permittivity of a share (0 to 1, by volume) of `inclusion` in `host`, both complex: Maxwell Garnett's rule for bodies of
 * one depolarisation factor, none touching. With 0 and 1 it is Wiener's bounds (layers along and across the field), exactly.
 * Source: Sihvola, Electromagnetic Mixing Formulas and Applications (1999), chapter 4.
 */
export function mixture(host: Complex, inclusion: Complex, share: number, factor: number): Complex {
  checkShare(share);
  const contrast = subtract(inclusion, host);
  const weakened = add(one, scale(divide(contrast, host), factor * (1 - share)));
  return add(host, divide(scale(contrast, share), weakened));
}

/** Looyenga's rule: cube roots add by volume. Physica 31 (1965) 401. For grains of every shape that touch. */
export function looyenga(host: Complex, inclusion: Complex, share: number): Complex {
  checkShare(share);
  const root = add(scale(cubeRoot(host), 1 - share), scale(cubeRoot(inclusion), share));
  return multiply(root, multiply(root, root));
}

/** Bruggeman's rule, both materials alike in the mixture: Ann. Phys. 416 (1935) 636. Passive root of its quadratic. */
export function bruggeman(host: Complex, inclusion: Complex, share: number): Complex {
  checkShare(share);
  const half = scale(add(scale(host, 2 - 3 * share), scale(inclusion, 3 * share - 1)), 1 / 4);
  return add(half, squareRoot(add(multiply(half, half), scale(multiply(host, inclusion), 1 / 2))));
}

/** A real permittivity by every rule, with what no isotropic mixture can leave. */
export interface MixtureSpread {
  /** Closed cells of the first material in walls of the second. */
  readonly cells: number;
  readonly looyenga: number;
  readonly bruggeman: number;
  /** Bounds of Hashin and Shtrikman, J. Appl. Phys. 33 (1962) 3125: isotropic mixtures. */
  readonly isotropic: readonly [low: number, high: number];
  /** Bounds of Wiener (1912): any mixture. */
  readonly any: readonly [low: number, high: number];
}

/** Share `gas` (0 to 1) of gas of permittivity 1 in a solid of `solid`, by every rule. */
export function foamSpread(solid: number, gas: number): MixtureSpread {
  const [host, inside] = [complex(solid), one];
  const real = (factor: number) => mixture(host, inside, gas, factor).re;
  const cells = real(depolarisation.round);
  return {
    cells,
    looyenga: looyenga(host, inside, gas).re,
    bruggeman: bruggeman(host, inside, gas).re,
    isotropic: [mixture(inside, host, 1 - gas, depolarisation.round).re, cells],
    any: [real(depolarisation.across), real(depolarisation.along)],
  };
}

/**
 * Share of gas in a closed-cell foam from its permittivity and the solid's: the inverse of the rule of closed cells. The other
 * rules differ from it by less than 0.02 for polyethylene. RangeError outside 1 to `solid`.
 */
export function gasFraction(solid: number, foam: number): number {
  if (!(solid > 1 && foam >= 1 && foam <= solid)) {
    throw new RangeError(`foam: permittivity ${foam} of a solid of ${solid}; expected 1 to that of the solid`);
  }
  // (foam - solid)/(foam + 2 solid) = share (1 - solid)/(1 + 2 solid): Clausius and Mossotti's form of the rule.
  return ((solid - foam) * (1 + 2 * solid)) / ((solid - 1) * (foam + 2 * solid));
}

/** Share of gas in a foam from the velocity factor of a line filled with it (no other dielectric, conductors perfect). */
export const gasFractionOfVelocity = (solid: number, velocityFactor: number): number =>
  gasFraction(solid, 1 / velocityFactor ** 2);

function cubeRoot(a: Complex): Complex {
  const size = Math.cbrt(magnitude(a));
  const angle = Math.atan2(a.im, a.re) / 3;
  return complex(size * Math.cos(angle), size * Math.sin(angle));
}

function checkShare(share: number): void {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`mixture: a share of ${share}; expected 0 to 1`);
}
