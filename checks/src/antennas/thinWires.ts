/** Structures of lossless thin wires that the antenna topics share. Metres. */
import type { Point, Structure, Wire } from "@feedpath/engine";

export const speedOfLight = 299792458;

const wire = (from: Point, to: Point, radius: number): Wire => ({
  name: `${from} to ${to}`,
  from,
  to,
  radius,
  conductivity: Number.POSITIVE_INFINITY,
  permeability: 1,
  insulation: null,
});

/** Two arms from a feed at `middle`, along a unit vector. */
export interface Dipole {
  readonly length: number;
  readonly radius: number;
  readonly middle: Point;
  readonly along: Point;
}

export const level: Point = [0, 1, 0];
export const upright: Point = [0, 0, 1];

/** Dipoles, each with its own feed, in the order given. */
export function dipoles(...all: readonly Dipole[]): Structure {
  const end = ({ length, middle, along }: Dipole, sign: 1 | -1): Point => [
    middle[0] + (sign * length * along[0]) / 2,
    middle[1] + (sign * length * along[1]) / 2,
    middle[2] + (sign * length * along[2]) / 2,
  ];
  return {
    wires: all.flatMap((d) => [wire(end(d, -1), d.middle, d.radius), wire(d.middle, end(d, 1), d.radius)]),
    feeds: all.map((d, i) => ({ name: `feed ${i + 1}`, at: d.middle, from: [2 * i], into: [2 * i + 1] })),
    loads: [],
  };
}
