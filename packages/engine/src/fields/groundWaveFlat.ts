/**
 * Attenuation of a wave along flat ground (Norton, Proc. IRE 1936 and 1937): field over that on a perfect plane.
 * e^{+jwt}; the surface is told by its normalised impedance at grazing incidence.
 */
import {
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  negate,
  one,
  scale,
  squareRoot,
  subtract,
} from "../numerics/complex";
import { faddeeva } from "../numerics/faddeeva";

/** Beyond this the asymptotic series is as good as the closed form, which cancels. */
const farAway = 40;

/** Surface "impedances" at grazing incidence over permittivity eps: TM impedance, TE admittance, of free space's. */
export const grazingImpedance = (eps: Complex): { readonly vertical: Complex; readonly horizontal: Complex } => {
  const root = squareRoot(subtract(eps, one));
  const decaying = root.im > 0 ? negate(root) : root;
  return { vertical: divide(decaying, eps), horizontal: decaying };
};

/** Norton's numerical distance w = p e^{-jb} for wavenumber `k` (rad/m), distance (m), normalised surface impedance. */
export const numericalDistance = (k: number, distance: number, impedance: Complex): Complex =>
  multiply(complex(0, (-k * distance) / 2), multiply(impedance, impedance));

/** -sum of (2m - 1)!!/(2w)^m to the smallest term. */
function farSeries(w: Complex): Complex {
  const half = divide(complex(0.5), w);
  let term = negate(half);
  let sum = term;
  for (let m = 2; m < 80; m++) {
    const next = scale(multiply(term, half), 2 * m - 1);
    if (magnitude(next) >= magnitude(term) || magnitude(next) < 1e-17 * magnitude(sum)) break;
    term = next;
    sum = { re: sum.re + term.re, im: sum.im + term.im };
  }
  return sum;
}

/**
 * F(w) = 1 - j sqrt(pi w) e^{-w} erfc(j sqrt w), relative error below 1e-10. The complex root is that with Re >= 0; for
 * w in the upper half plane (inductive surfaces) the surface wave proper is in it.
 */
export function flatAttenuation(w: Complex): Complex {
  if (magnitude(w) > farAway && w.im <= 0) return farSeries(w);
  const root = squareRoot(w);
  const product = multiply(scale(root, Math.sqrt(Math.PI)), faddeeva(negate(root)));
  return complex(1 + product.im, -product.re);
}
