/** Capacitance of a pair with a web over its permittivity: solved a few times, then asked at will. */
import { chebyshevTransform, chebyshevZeros } from "../../numerics/chebyshevTransform";
import { add, type Complex, complex, divide, multiply, one, scale, subtract } from "../../numerics/complex";
import { barePairCapacitance } from "./sleevedPair";
import { webbedField } from "./webbedPair";
import type { WebbedPair } from "./webbedPanels";

/** Greatest (k - 1)/(k + 1) of the interpolation, a permittivity of 5.7 over that around; beyond it each is solved. */
const greatest = 0.7;
/** The capacitance has its poles at |(k - 1)/(k + 1)| of 1 and more: ten points leave 1e-6. */
const nodes = 10;

/**
 * Capacitance over eps0 times the permittivity around, for the web's permittivity over that around, complex. Scaled so that it
 * is exact where there is no dielectric; within 3e-4, its loss within 1 %.
 */
export function webbedCapacitance(pair: WebbedPair): (ratio: Complex) => Complex {
  const zeros = chebyshevZeros(nodes);
  const atZeros = zeros.map((z) => webbedField(pair, permittivityOf((greatest * (1 + z)) / 2)).capacitance.re);
  const coefficients = chebyshevTransform(atZeros, nodes, 1);
  const scaled = barePairCapacitance(pair.radius, pair.spacing) / clenshaw(coefficients, complex(-1)).re;
  return (ratio) => {
    const t = divide(subtract(ratio, one), add(ratio, one));
    const inside = t.re >= 0 && t.re <= greatest && Math.abs(t.im) < 0.1;
    const found = inside
      ? clenshaw(coefficients, subtract(scale(t, 2 / greatest), one))
      : webbedField(pair, ratio).capacitance;
    return scale(found, scaled);
  };
}

const permittivityOf = (t: number): Complex => complex((1 + t) / (1 - t));

/** Chebyshev series at a complex place near [-1, 1]. */
function clenshaw(coefficients: Float64Array, x: Complex): Complex {
  let [later, last] = [complex(0), complex(0)];
  for (let k = coefficients.length - 1; k > 0; k--) {
    [last, later] = [subtract(add(complex(coefficients[k]!), scale(multiply(x, last), 2)), later), last];
  }
  return subtract(add(complex(coefficients[0]!), multiply(x, last)), later);
}
