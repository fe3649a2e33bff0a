/** Field of equal round wires that are mirror images of one another, with or without a round shield: static, in two dimensions. */
import { complex } from "../../numerics/complex";
import { solveComplexSystem } from "../../numerics/solveComplexSystem";

/** One wire and its images in the planes x = 0 and y = 0. Metres; the charge of an image is that of the wire times `sign`. */
export interface MirroredWires {
  readonly radius: number;
  readonly x: number;
  readonly y: number;
  readonly images: readonly { readonly alongX: 1 | -1; readonly alongY: 1 | -1; readonly sign: 1 | -1 }[];
  /** Inner radius of a grounded shield about the origin; none when null. */
  readonly shield: number | null;
}

export interface WiresField {
  /** V 2 pi eps/charge of the wire at x, y: V against the zero of the arrangement, charge per metre. */
  readonly potential: number;
  /** Mean square of the charge (and so of the current in the limit of small skin depth) round a wire over its squared mean. */
  readonly crowding: number;
  /** 2 pi R times the integral of the squared current density round the shield, over the squared current of one wire. */
  readonly shieldCrowding: number;
}

/** Points round a wire: the error falls as exp(-points * log of the gap), the bound keeps wires that all but touch solvable. */
const [fewest, most] = [16, 320];

/**
 * Charge round the wire from one integral equation, by quadrature that converges exponentially (Kress, Linear Integral Equations,
 * chapter 12); the shield enters by its image charges. Relative error below 1e-11 while the nearest gap exceeds a tenth of the
 * radius, some 1e-6 at a fiftieth.
 */
export function fieldOfWires(wires: MirroredWires): WiresField {
  const n = pointsFor(wires);
  const { radius, x, y, shield } = wires;
  const angles = Array.from({ length: n }, (_, i) => (2 * Math.PI * i) / n);
  const circle = angles.map((t): Point => [x + radius * Math.cos(t), y + radius * Math.sin(t)]);
  const own = ownKernel(n);
  const matrix = circle.map((at, i) =>
    circle.map((from, k) => {
      const self = own[Math.abs(i - k)]! - Math.log(radius) + (shield === null ? 0 : shieldPart(at, from, shield));
      return complex(imagesOf(wires, from).reduce((sum, [p, sign]) => sum + sign * kernel(at, p, shield), self));
    }),
  );
  const solved = solveComplexSystem(
    matrix,
    circle.map(() => complex(1)),
  );
  if (solved === null)
    throw new RangeError("wires: the field has no unique solution; expected wires that do not touch");
  const charges = solved.map((q) => q.re);
  const total = charges.reduce((sum, q) => sum + q, 0);
  return {
    potential: 1 / total,
    crowding: (n * charges.reduce((sum, q) => sum + q * q, 0)) / total ** 2,
    shieldCrowding: shield === null ? 0 : crowdingOfShield(wires, circle, charges, shield) / total ** 2,
  };
}

type Point = readonly [x: number, y: number];

const imagesOf = ({ images }: MirroredWires, [x, y]: Point): (readonly [Point, number])[] =>
  images.map(({ alongX, alongY, sign }) => [[alongX * x, alongY * y], sign] as const);

/** Potential at a point of a unit line charge elsewhere, times 2 pi eps. */
const kernel = (at: Point, from: Point, shield: number | null): number =>
  -Math.log(Math.hypot(at[0] - from[0], at[1] - from[1])) + (shield === null ? 0 : shieldPart(at, from, shield));

/** What the shield adds: the image charge at R^2/z. */
const shieldPart = ([x, y]: Point, [u, v]: Point, shield: number): number =>
  Math.log(Math.hypot(x * u + y * v - shield * shield, y * u - x * v) / shield);

/** Quadrature weights of -ln|2 sin(t/2)| between points that lie `k` apart, per point's charge. */
function ownKernel(n: number): number[] {
  const half = n / 2;
  return Array.from({ length: n }, (_, k) => {
    let sum = 0;
    for (let m = 1; m < half; m++) sum += Math.cos((2 * Math.PI * m * k) / n) / m;
    return sum + (k % 2 === 0 ? 1 : -1) / n;
  });
}

function pointsFor(wires: MirroredWires): number {
  const { x, y, radius, shield } = wires;
  const distances = imagesOf(wires, [x, y]).map(([[u, v]]) => Math.hypot(x - u, y - v) - radius);
  if (shield !== null) {
    const far = Math.hypot(x, y);
    distances.push((shield * shield) / (far + radius) - far);
  }
  const nearest = Math.min(...distances) / radius;
  if (!(nearest > 1)) {
    throw new RangeError(
      `wires of ${radius} m radius at ${x} m, ${y} m${shield === null ? "" : ` in a shield of ${shield} m radius`}: expected wires that touch nothing`,
    );
  }
  return Math.min(most, Math.max(fewest, 2 * Math.ceil(16 / Math.log(nearest))));
}

/** Poisson's kernel gives the charge that every line charge leaves on the shield. */
function crowdingOfShield(
  wires: MirroredWires,
  circle: readonly Point[],
  charges: readonly number[],
  shield: number,
): number {
  const n = 4 * circle.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const t = (2 * Math.PI * i) / n;
    const at: Point = [shield * Math.cos(t), shield * Math.sin(t)];
    let density = 0;
    circle.forEach((from, k) => {
      for (const [[u, v], sign] of [[from, 1] as const, ...imagesOf(wires, from)]) {
        density += (sign * charges[k]! * (shield ** 2 - u * u - v * v)) / ((at[0] - u) ** 2 + (at[1] - v) ** 2);
      }
    });
    sum += density ** 2 / n;
  }
  return sum;
}
