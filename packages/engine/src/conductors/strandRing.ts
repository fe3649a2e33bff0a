/** The field around a ring of equal round wires at one potential: what strands make of a conductor's size and surface. */
import { type Complex, complex, divide, exponential, multiply, subtract } from "../numerics/complex";
import { solveComplexSystem } from "../numerics/solveComplexSystem";

export interface StrandRing {
  /** Radius of the smooth cylinder of the same field far out, over that of the circle round all strands. */
  readonly effectiveRadiusRatio: number;
  /** Resistance over that of a smooth cylinder as large as the circle round all strands, skin depth far below a strand. */
  readonly surfaceFactor: number;
}

/** Multipoles kept on each strand, and places on half a strand. */
const orders = 20;
const places = 64;

/**
 * `count` (2 or more) round wires of radius 1 with their axes on a circle of radius `circle`, touching or nearly so: what lies
 * within is hidden by them. Current of small skin depth spreads over a conductor as charge does, so that the static
 * field tells both: multipoles on every wire, the potential equal on it in the mean with each cosine. Error below 1e-6.
 */
export function strandRing(count: number, circle: number): StrandRing {
  if (!(count >= 2 && circle * Math.sin(Math.PI / count) > 1 - 1e-9)) {
    throw new RangeError(
      `ring of ${count} strands on a circle of ${circle} strand radii; expected strands beside each other`,
    );
  }
  const samples = Array.from({ length: places }, (_, i) => sampleAt(((i + 0.5) * Math.PI) / places, count, circle));
  const strengths = multipoles(samples);
  const fields = samples.map(({ slopes }) => strengths.reduce((sum, s, m) => sum + s * slopes[m]!, 0));
  const mean = fields.reduce((a, b) => a + b, 0) / places;
  const square = fields.reduce((a, b) => a + b * b, 0) / places;
  const potential =
    samples.reduce((sum, s) => sum + strengths.reduce((v, c, m) => v + c * s.potentials[m]!, 0), 0) / places;
  const outside = circle + 1;
  return {
    effectiveRadiusRatio: Math.exp(potential / count) / outside,
    surfaceFactor: (square / mean ** 2) * (outside / count),
  };
}

interface Sample {
  readonly angle: number;
  /** Potential and outward slope at a place of one strand by unit sources of every order on all strands. */
  readonly potentials: readonly number[];
  readonly slopes: readonly number[];
}

function sampleAt(angle: number, count: number, circle: number): Sample {
  const outward = exponential(complex(0, angle));
  const place = complex(circle + outward.re, outward.im);
  const [potentials, slopes] = [new Array<number>(orders + 1).fill(0), new Array<number>(orders + 1).fill(0)];
  for (let strand = 0; strand < count; strand++) {
    const turn = exponential(complex(0, (2 * Math.PI * strand) / count));
    const away = subtract(place, complex(circle * turn.re, circle * turn.im));
    potentials[0]! += Math.log(Math.hypot(away.re, away.im));
    const inverse = divide(outward, away);
    slopes[0]! += inverse.re;
    const step = divide(turn, away);
    let power: Complex = step;
    for (let m = 1; m <= orders; m++) {
      potentials[m]! += power.re;
      slopes[m]! -= m * multiply(power, inverse).re;
      power = multiply(power, step);
    }
  }
  return { angle, potentials, slopes };
}

/** Strengths of all orders, the charge of a strand (order 0) being 1, that leave no potential varying round a strand. */
function multipoles(samples: readonly Sample[]): readonly number[] {
  const matrix = Array.from({ length: orders }, (_, k) =>
    Array.from({ length: orders + 1 }, (_, m) =>
      samples.reduce((sum, s) => sum + Math.cos((k + 1) * s.angle) * s.potentials[m]!, 0),
    ),
  );
  const solved = solveComplexSystem(
    matrix.map((row) => row.slice(1).map((x) => complex(x))),
    matrix.map((row) => complex(-row[0]!)),
  );
  if (solved === null) throw new Error("ring of strands: no unique solution");
  return [1, ...solved.map((s) => s.re)];
}
