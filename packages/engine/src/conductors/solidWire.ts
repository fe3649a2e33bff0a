/** A straight round wire, its return far away: what skin effect makes of its resistance. */
import { modifiedBessel } from "../numerics/besselModified";
import { type Complex, complex, divide, multiply, scale, zero } from "../numerics/complex";
import { vacuumPermeability } from "../numerics/vacuum";

/** Depth in metres at which the current density has fallen to 1/e: sqrt(2/(omega mu sigma)). `permeability` is relative. */
export const skinDepth = (conductivity: number, permeability: number, angularFrequency: number): number =>
  Math.sqrt(2 / (angularFrequency * permeability * vacuumPermeability * conductivity));

/** Surface resistance of a thick flat conductor, ohm: 1/(sigma delta). Zero for a perfect conductor. */
export const surfaceResistance = (conductivity: number, permeability: number, angularFrequency: number): number =>
  conductivity === Number.POSITIVE_INFINITY
    ? 0
    : Math.sqrt((angularFrequency * permeability * vacuumPermeability) / (2 * conductivity));

/**
 * Internal impedance per metre (ohm/m) of a solid round wire, exact at every frequency for axially symmetric current:
 * zeta I0(g a) / (2 pi a I1(g a)), g = (1 + j)/delta, zeta = g/sigma. Proximity of other wires is not in it.
 * `radius` in m, `conductivity` in S/m (Infinity: perfect, gives zero), `permeability` relative, `angularFrequency` in rad/s
 * (0 gives the direct-current resistance). Source: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532.
 */
export function solidWireImpedance(
  radius: number,
  conductivity: number,
  permeability: number,
  angularFrequency: number,
): Complex {
  if (!(radius > 0 && conductivity > 0 && permeability > 0 && angularFrequency >= 0)) {
    throw new RangeError(
      `round wire: radius ${radius} m, conductivity ${conductivity} S/m, permeability ${permeability}, ` +
        `angular frequency ${angularFrequency} rad/s; expected the first three positive and the last not negative`,
    );
  }
  if (conductivity === Number.POSITIVE_INFINITY) return zero;
  if (angularFrequency === 0) return complex(1 / (Math.PI * radius * radius * conductivity));
  const g = scale(complex(1, 1), 1 / skinDepth(conductivity, permeability, angularFrequency));
  const { i0, i1 } = modifiedBessel(scale(g, radius));
  return scale(divide(multiply(g, i0), i1), 1 / (2 * Math.PI * radius * conductivity));
}
