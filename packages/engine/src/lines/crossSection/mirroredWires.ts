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
  /**
   * Harmonics of the current round the shield, from the even one on: each 2 pi R times the integral of its squared density over the
   * squared current of one wire. Empty without a shield.
   */
  readonly shieldHarmonics: readonly number[];
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
    shieldHarmonics:
      shield === null ? [] : harmonicsOfShield(wires, circle, charges, shield).map((h) => h / total ** 2),
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

/** By Poisson's kernel a charge at z leaves 1 + 2 sum (|z|/R)^m cos m(angle - arg z) of itself round the shield. */
function harmonicsOfShield(
  wires: MirroredWires,
  circle: readonly Point[],
  charges: readonly number[],
  shield: number,
): number[] {
  const all = circle.flatMap((from, k) =>
    [[from, 1] as const, ...imagesOf(wires, from)].map(([[x, y], sign]) => ({
      size: Math.hypot(x, y) / shield,
      angle: Math.atan2(y, x),
      charge: sign * charges[k]!,
    })),
  );
  const largest = Math.max(...all.map((c) => c.size));
  const count = Math.ceil(Math.log(1e-8) / Math.log(largest));
  return Array.from({ length: count + 1 }, (_, m) => {
    let [re, im] = [0, 0];
    for (const { size, angle, charge } of all) {
      re += charge * size ** m * Math.cos(m * angle);
      im += charge * size ** m * Math.sin(m * angle);
    }
    return (m === 0 ? 1 : 2) * (re * re + im * im);
  });
}
