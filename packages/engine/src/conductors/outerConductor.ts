/** The outer conductor of a coaxial line as the wave inside sees it. */
import { modifiedBessel } from "../numerics/besselModified";
import { add, type Complex, complex, divide, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import type { OuterConductor } from "./conductor";
import { skinDepth } from "./solidWire";

/**
 * Internal impedance per metre (ohm/m) of a tube whose return flows inside it, exact, with a finite wall or an endless one.
 * `angularFrequency` in rad/s, 0 gives the direct-current resistance (0 for an endless wall). The resistance factor
 * (braid) multiplies resistance and internal reactance alike.
 * Source: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532.
 */
export function outerConductorImpedance(outer: OuterConductor, angularFrequency: number): Complex {
  const { innerRadius, wall, metal, resistanceFactor } = outer;
  if (!(innerRadius > 0 && wall > 0 && metal.conductivity > 0 && metal.permeability > 0)) {
    throw new RangeError(
      `outer conductor: inner radius ${innerRadius} m, wall ${wall} m, ${metal.name}; expected positive values`,
    );
  }
  if (metal.conductivity === Number.POSITIVE_INFINITY) return zero;
  if (angularFrequency === 0) {
    const area = Math.PI * ((innerRadius + wall) ** 2 - innerRadius ** 2);
    return complex(resistanceFactor / (metal.conductivity * area));
  }
  const g = scale(complex(1, 1), 1 / skinDepth(metal.conductivity, metal.permeability, angularFrequency));
  const zeta = scale(g, resistanceFactor / (2 * Math.PI * innerRadius * metal.conductivity));
  const inner = modifiedBessel(scale(g, innerRadius));
  if (wall === Number.POSITIVE_INFINITY) return divide(multiply(zeta, inner.k0), inner.k1);
  const outside = modifiedBessel(scale(g, innerRadius + wall));
  const back = multiply(exponential(scale(g, -2 * wall)), outside.k1);
  const field = add(multiply(inner.k0, outside.i1), multiply(inner.i0, back));
  return divide(multiply(zeta, field), subtract(multiply(outside.i1, inner.k1), multiply(inner.i1, back)));
}
