/** Smooth complex results of one or two variables from a few exact ones, each fit held against exact results between them. */
import { chebyshevPoints, interpolateChebyshev } from "../../numerics/chebyshevPoints";
import { type Complex, complex, magnitude, subtract } from "../../numerics/complex";

/** Null where the exact result cannot be worked out. */
export type Exact<X extends readonly number[]> = (...x: X) => Complex | null;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Largest error allowed at the check points: this many ohms plus this share of the impedance. */
const allowedOhms = 0.05;
const allowedShare = 1e-3;

export interface Fit<X extends readonly number[]> {
  readonly at: (...x: X) => Complex;
  /** Largest difference to an exact result at the check points, ohm. */
  readonly error: number;
  /** True when all check points are within 0.05 ohm and 0.1 %. */
  readonly within: boolean;
  readonly solved: number;
}

const interpolated = (nodes: readonly number[], values: readonly Complex[], x: number): Complex =>
  complex(
    interpolateChebyshev(
      nodes,
      values.map((z) => z.re),
      x,
    ),
    interpolateChebyshev(
      nodes,
      values.map((z) => z.im),
      x,
    ),
  );

const between = (nodes: readonly number[], i: number): number => (nodes[i]! + nodes[i + 1]!) / 2;

interface Check {
  readonly exact: Complex | null;
  readonly guess: Complex;
}

function judged(checks: readonly Check[]): { readonly error: number; readonly within: boolean } | null {
  let error = 0;
  let within = true;
  for (const { exact, guess } of checks) {
    if (exact === null) return null;
    const off = magnitude(subtract(exact, guess));
    error = Math.max(error, off);
    within &&= off <= allowedOhms + allowedShare * magnitude(exact);
  }
  return { error, within };
}

/** Chebyshev interpolant over a span, intervals doubled from 4 until the checks agree or `most` is reached; null where one is not solved. */
export function* fitLine(exact: Exact<[number]>, span: Span, most: number): Generator<void, Fit<[number]> | null> {
  for (let intervals = 4; ; intervals *= 2) {
    const nodes = chebyshevPoints(span.from, span.to, intervals);
    const values: Complex[] = [];
    for (const x of nodes) {
      yield;
      const value = exact(x);
      if (value === null) return null;
      values.push(value);
    }
    const at = (x: number) => interpolated(nodes, values, x);
    const checks: Check[] = [];
    for (const i of [1, Math.floor(intervals / 2), intervals - 2]) {
      yield;
      const x = between(nodes, i);
      checks.push({ exact: exact(x), guess: at(x) });
    }
    const verdict = judged(checks);
    if (verdict === null) return null;
    if (verdict.within || intervals >= most) return { at, ...verdict, solved: nodes.length };
  }
}

/** The same over two spans at once, 4 or 8 intervals in each. */
export function* fitPlane(
  exact: Exact<[number, number]>,
  first: Span,
  second: Span,
): Generator<void, Fit<[number, number]> | null> {
  for (const intervals of [4, 8]) {
    const xs = chebyshevPoints(first.from, first.to, intervals);
    const ys = chebyshevPoints(second.from, second.to, intervals);
    const rows: Complex[][] = [];
    for (const x of xs) {
      const row: Complex[] = [];
      for (const y of ys) {
        yield;
        const value = exact(x, y);
        if (value === null) return null;
        row.push(value);
      }
      rows.push(row);
    }
    const at = (x: number, y: number) =>
      interpolated(
        xs,
        rows.map((row) => interpolated(ys, row, y)),
        x,
      );
    const checks: Check[] = [];
    for (const [i, k] of [
      [1, intervals - 2],
      [Math.floor(intervals / 2), Math.floor(intervals / 2)],
      [intervals - 2, 1],
    ] as const) {
      yield;
      const [x, y] = [between(xs, i), between(ys, k)];
      checks.push({ exact: exact(x, y), guess: at(x, y) });
    }
    const verdict = judged(checks);
    if (verdict === null) return null;
    if (verdict.within || intervals === 8) return { at, ...verdict, solved: xs.length * ys.length };
  }
  return null;
}
