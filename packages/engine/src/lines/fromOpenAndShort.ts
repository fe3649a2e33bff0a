/** A line from two measurements at one end: with its far end open, and shorted. */
import {
  add,
  type Complex,
  complex,
  divide,
  logarithm,
  magnitude,
  multiply,
  one,
  scale,
  squareRoot,
  subtract,
} from "../numerics/complex";

export interface MeasuredLine {
  /** Ohm. */
  readonly z0: Complex;
  /** Np + j rad of the whole length; the phase between 0 and pi: whole half waves cannot be told from one frequency. */
  readonly gammaLength: Complex;
}

/**
 * Z0 = sqrt(Zo Zs) and tanh(gamma l) = sqrt(Zs/Zo), exact for a uniform line whatever its loss. `open` and `shorted` in ohm.
 * Best where the line is near an odd number of eighth waves long; at whole quarter waves one of the two is too small or too
 * large to be measured. Throws RangeError for impedances of no passive line. Source: telegrapher's equations.
 */
export function lineFromOpenAndShort(open: Complex, shorted: Complex): MeasuredLine {
  const usable = [open, shorted].every((z) => z.re >= 0 && magnitude(z) > 0 && Number.isFinite(magnitude(z)));
  if (!usable) {
    throw new RangeError(
      `open and short: ${open.re} + j ${open.im} and ${shorted.re} + j ${shorted.im} ohm; expected resistances of 0 or more, and neither zero nor without end`,
    );
  }
  const root = squareRoot(divide(shorted, open));
  // Of the two roots the one with gain going forward belongs to a line that takes power.
  const tanh = root.re < 0 ? scale(root, -1) : root;
  const twice = logarithm(divide(add(one, tanh), subtract(one, tanh)));
  const phase = twice.im < 0 ? twice.im + 2 * Math.PI : twice.im;
  return { z0: multiply(open, tanh), gammaLength: complex(twice.re / 2, phase / 2) };
}
