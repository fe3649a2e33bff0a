/** What a tube of metal shows on its inner side, its outer side, and from one to the other. */
import { modifiedBessel } from "../numerics/besselModified";
import { add, type Complex, complex, divide, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import type { Metal } from "./conductor";
import { skinDepth } from "./solidWire";

/** Ohm/m. With the currents Ia (return inside) and Ib (return outside), both counted along the tube, the field along it is
 * inside Ia + transfer Ib on the inner surface and transfer Ia + outside Ib on the outer one. */
export interface ShieldImpedances {
  readonly inside: Complex;
  readonly transfer: Complex;
  readonly outside: Complex;
}

/** Walls of more skin depths than this are as good as endless: denominator that a double can hold comes through. */
const endless = 40;

/**
 * Impedances of a smooth round tube, exact: inner radius and wall in m (the wall may be Infinity above direct current),
 * `angularFrequency` in rad/s, 0 for direct current. Zero for a perfect conductor.
 * Source: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532, equations 75 to 82 (numbers from memory).
 */
export function tubeImpedances(
  innerRadius: number,
  wall: number,
  metal: Metal,
  angularFrequency: number,
): ShieldImpedances {
  if (metal.conductivity === Number.POSITIVE_INFINITY) return { inside: zero, transfer: zero, outside: zero };
  if (angularFrequency === 0) {
    const direct = complex(1 / (metal.conductivity * Math.PI * ((innerRadius + wall) ** 2 - innerRadius ** 2)));
    return { inside: direct, transfer: direct, outside: direct };
  }
  const depth = skinDepth(metal.conductivity, metal.permeability, angularFrequency);
  const thickness = wall === Number.POSITIVE_INFINITY ? endless * depth : wall;
  const outerRadius = innerRadius + thickness;
  const g = scale(complex(1, 1), 1 / depth);
  const zeta = scale(g, 1 / (2 * Math.PI * metal.conductivity));
  const [a, b] = [modifiedBessel(scale(g, innerRadius)), modifiedBessel(scale(g, outerRadius))];
  const across = exponential(scale(g, -thickness));
  const twice = multiply(across, across);
  const denominator = subtract(multiply(b.i1, a.k1), multiply(multiply(a.i1, b.k1), twice));
  const inside = add(multiply(b.i1, a.k0), multiply(multiply(a.i0, b.k1), twice));
  const outside = add(multiply(b.i0, a.k1), multiply(multiply(a.i1, b.k0), twice));
  const through = scale(across, 1 / (2 * Math.PI * metal.conductivity * innerRadius * outerRadius));
  return {
    inside: divide(multiply(zeta, scale(inside, 1 / innerRadius)), denominator),
    transfer: divide(through, denominator),
    outside: divide(multiply(zeta, scale(outside, 1 / outerRadius)), denominator),
  };
}

/**
 * Two shields joined at their ends, `first` within: the current between them is the one that leaves no field there. `space`
 * H/m is the inductance of the room between them, 0 where they are one wall. Source: Vance, IEEE Trans. EMC-17 (1975) 71;
 * two-ports in a chain.
 */
export function joinShields(
  first: ShieldImpedances,
  second: ShieldImpedances,
  angularFrequency = 0,
  space = 0,
): ShieldImpedances {
  const between = add(add(first.outside, second.inside), complex(0, angularFrequency * space));
  if (between.re === 0 && between.im === 0) return { inside: first.inside, transfer: zero, outside: second.outside };
  return {
    inside: subtract(first.inside, divide(multiply(first.transfer, first.transfer), between)),
    transfer: divide(multiply(first.transfer, second.transfer), between),
    outside: subtract(second.outside, divide(multiply(second.transfer, second.transfer), between)),
  };
}
