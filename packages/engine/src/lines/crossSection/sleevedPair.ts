/** Two round wires, each in a sleeve of its own: capacitance by harmonics round the wires. */
import { add, type Complex, complex, divide, one, scale, subtract } from "../../numerics/complex";
import { solveComplexSystem } from "../../numerics/solveComplexSystem";

/** Metres: radius of the metal, of the sleeve, and spacing between centres. */
export interface SleevedPair {
  readonly radius: number;
  readonly outerRadius: number;
  readonly spacing: number;
}

const mostHarmonics = 64;

/**
 * Capacitance over eps0 times the permittivity around, `ratio` being the sleeves' permittivity over that around. Complex with
 * it. Exact to rounding while the sleeves leave a gap; sleeves that touch, within 1e-7 (permittivity to 5), the loss within 2e-6.
 * Source: harmonics of a coated cylinder, each carried over to the other wire: Rayleigh, Phil. Mag. 34 (1892) 481.
 */
export function sleevedPairCapacitance(pair: SleevedPair, ratio: Complex): Complex {
  const { radius, outerRadius, spacing } = pair;
  if (!(radius > 0 && outerRadius >= radius && spacing >= 2 * outerRadius && spacing > 2 * radius)) {
    throw new RangeError(
      `pair in sleeves: wires of ${radius} m radius, sleeves of ${outerRadius} m radius, ${spacing} m between centres; ` +
        "expected sleeves round the wires that do not overlap",
    );
  }
  const rho = outerRadius / spacing;
  const harmonics = Math.min(mostHarmonics, Math.max(4, Math.ceil(17 / Math.acosh(1 / (2 * rho)))));
  const coefficients = outerHarmonics(pair, ratio, rho, harmonics);
  // V 2 pi eps/charge of one wire: its own logarithm, the sleeve's, and what the other wire's harmonics add on its axis.
  let potential = add(complex(-Math.log(rho)), scale(divide(one, ratio), Math.log(outerRadius / radius)));
  coefficients.forEach((b, k) => {
    potential = subtract(potential, scale(b, rho ** (k + 1)));
  });
  return divide(complex(Math.PI), potential);
}

/** Coefficients of (b/r)^m cos(m t) outside a sleeve, for a charge of 2 pi eps. */
function outerHarmonics({ radius, outerRadius }: SleevedPair, ratio: Complex, rho: number, count: number): Complex[] {
  const orders = Array.from({ length: count }, (_, k) => k + 1);
  const answers = orders.map((m) => answerOf(ratio, (radius / outerRadius) ** (2 * m)));
  const matrix = orders.map((m, i) => {
    let carried = rho ** (m + 1);
    return orders.map((n, k) => {
      // binomial(n + m - 1, m) rho^(n + m), by recursion in n.
      if (n > 1) carried *= (rho * (n + m - 1)) / (n - 1);
      return subtract(i === k ? one : complex(0), scale(answers[i]!, carried));
    });
  });
  const right = orders.map((m, i) => scale(answers[i]!, rho ** m / m));
  const solved = solveComplexSystem(matrix, right);
  if (solved === null)
    throw new RangeError("pair in sleeves: the field has no unique solution; expected a passive sleeve");
  return solved;
}

/** Outer over incoming harmonic of a wire in its sleeve, sign turned; `within` is (a/b)^(2m). 1 for bare metal. */
function answerOf(ratio: Complex, within: number): Complex {
  if (within === 1) return one;
  const k = scale(ratio, (1 + within) / (1 - within));
  return divide(subtract(k, one), add(k, one));
}

/** Capacitance of bare wires over eps0 times the permittivity around: pi/acosh(D/d), exact. */
export const barePairCapacitance = (radius: number, spacing: number): number =>
  Math.PI / Math.acosh(spacing / (2 * radius));
