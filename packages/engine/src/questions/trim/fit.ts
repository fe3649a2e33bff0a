/**
 * The feed point over one or two variables from a few exact solves, each fit held against exact ones between them.
 * Interpolated is the reflection on some hundreds of ohms: an antenna is nearly a line of such an impedance that ends
 * open, so that this reflection turns evenly where Z itself has its peaks. Berrut and Trefethen, SIAM Review 46 (2004).
 */
import { voltageReflection } from "../../lines/reflection";
import { chebyshevPoints, interpolateChebyshev } from "../../numerics/chebyshevPoints";
import { add, type Complex, complex, divide, magnitude, one, scale, subtract } from "../../numerics/complex";

/** Null where the exact result cannot be worked out. */
export type Exact<X extends readonly number[]> = (...x: X) => Complex | null;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Reference of the interpolated reflection, ohm: about the characteristic impedance of thin wires, from memory. */
const reference = 600;
/** Largest error allowed at the check points: this many ohms plus this share of the impedance. */
const allowedOhms = 0.1;
const allowedShare = 2e-3;

export interface Fit<X extends readonly number[]> {
  readonly at: (...x: X) => Complex;
  /** Largest difference to an exact result at the check points, ohm; 0 where none was made. */
  readonly error: number;
  /** The same as a share of the impedance there. */
  readonly share: number;
  /** True when all check points are within 0.1 ohm and 0.2 %. */
  readonly within: boolean;
  readonly solved: number;
}

const reflected = (z: Complex): Complex => voltageReflection(z, complex(reference));
const impedanceOf = (s: Complex): Complex => scale(divide(add(one, s), subtract(one, s)), reference);

const interpolated = (nodes: readonly number[], values: readonly Complex[], x: number): Complex => {
  const part = (pick: (z: Complex) => number) => interpolateChebyshev(nodes, values.map(pick), x);
  return complex(
    part((z) => z.re),
    part((z) => z.im),
  );
};

const between = (nodes: readonly number[], i: number): number => (nodes[i]! + nodes[i + 1]!) / 2;

interface Check {
  readonly exact: Complex | null;
  readonly guess: Complex;
}

function judged(checks: readonly Check[]): Pick<Fit<[]>, "error" | "share" | "within"> | null {
  let error = 0;
  let share = 0;
  let within = true;
  for (const { exact, guess } of checks) {
    if (exact === null) return null;
    const off = magnitude(subtract(exact, guess));
    error = Math.max(error, off);
    share = Math.max(share, off / magnitude(exact));
    within &&= off <= allowedOhms + allowedShare * magnitude(exact);
  }
  return { error, share, within };
}

/** Reflections at the nodes; null where one is not solved. */
function* solvedAt(nodes: readonly number[], exact: Exact<[number]>): Generator<void, Complex[] | null> {
  const values: Complex[] = [];
  for (const x of nodes) {
    yield;
    const value = exact(x);
    if (value === null) return null;
    values.push(reflected(value));
  }
  return values;
}

/** Chebyshev interpolant over a span, intervals doubled from 4 until the checks agree or `most` is reached; null where one is not solved. */
export function* fitLine(exact: Exact<[number]>, span: Span, most: number): Generator<void, Fit<[number]> | null> {
  for (let intervals = 4; ; intervals *= 2) {
    const nodes = chebyshevPoints(span.from, span.to, intervals);
    const values = yield* solvedAt(nodes, exact);
    if (values === null) return null;
    const at = (x: number) => impedanceOf(interpolated(nodes, values, x));
    const checks: Check[] = [];
    for (const i of [1, intervals - 2]) {
      yield;
      const x = between(nodes, i);
      checks.push({ exact: exact(x), guess: at(x) });
    }
    const verdict = judged(checks);
    if (verdict === null) return null;
    if (verdict.within || intervals >= most) return { at, ...verdict, solved: nodes.length };
  }
}

/** Few solves and no checks, for differences between stations that are fitted alike. */
export function* fitRoughly(exact: Exact<[number]>, span: Span): Generator<void, Fit<[number]> | null> {
  const nodes = chebyshevPoints(span.from, span.to, 3);
  const values = yield* solvedAt(nodes, exact);
  return (
    values && {
      at: (x) => impedanceOf(interpolated(nodes, values, x)),
      error: 0,
      share: 0,
      within: true,
      solved: nodes.length,
    }
  );
}

const planeIntervals: readonly number[] = [5, 7];

/** The same over two spans at once, 5 or 7 intervals in each. */
export function* fitPlane(
  exact: Exact<[number, number]>,
  first: Span,
  second: Span,
): Generator<void, Fit<[number, number]> | null> {
  for (const intervals of planeIntervals) {
    const xs = chebyshevPoints(first.from, first.to, intervals);
    const ys = chebyshevPoints(second.from, second.to, intervals);
    const rows: Complex[][] = [];
    for (const x of xs) {
      const row = yield* solvedAt(ys, (y) => exact(x, y));
      if (row === null) return null;
      rows.push(row);
    }
    const at = (x: number, y: number) =>
      impedanceOf(
        interpolated(
          xs,
          rows.map((row) => interpolated(ys, row, y)),
          x,
        ),
      );
    const checks: Check[] = [];
    for (const [i, k] of [
      [1, intervals - 2],
      [intervals - 2, 1],
    ] as const) {
      yield;
      const [x, y] = [between(xs, i), between(ys, k)];
      checks.push({ exact: exact(x, y), guess: at(x, y) });
    }
    const verdict = judged(checks);
    if (verdict === null) return null;
    if (verdict.within || intervals === planeIntervals.at(-1)) return { at, ...verdict, solved: xs.length * ys.length };
  }
  return null;
}
