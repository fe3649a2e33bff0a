/** Slow and sure quadrature, for tests that integrate a definition. */
import { add, type Complex, scale, zero } from "../numerics/complex";
import { gaussLegendre } from "../numerics/gaussLegendre";

const rule = gaussLegendre(12);

export interface QuadratureGoal {
  /** Largest difference, absolute, between an interval and its halves. */
  readonly error: number;
  /** Halvings made in any case: narrow peaks may hide between the points. */
  readonly leastHalvings: number;
  readonly mostHalvings: number;
}

type Functions = (x: number) => Complex[];

function panel(f: Functions, from: number, to: number): Complex[] {
  let sum: Complex[] = [zero, zero, zero, zero];
  rule.points.forEach((x, i) => {
    const values = f((from + to) / 2 + ((to - from) / 2) * x);
    sum = sum.map((s, n) => add(s, scale(values[n]!, ((to - from) / 2) * rule.weights[i]!)));
  });
  return sum;
}

/** Adaptive integral of four functions: halves until both halves agree with the whole. */
export function adaptive(
  f: Functions,
  from: number,
  to: number,
  goal: QuadratureGoal,
  whole = panel(f, from, to),
  depth = 0,
): Complex[] {
  const middle = (from + to) / 2;
  const [left, right] = [panel(f, from, middle), panel(f, middle, to)];
  const both = left.map((l, n) => add(l, right[n]!));
  const error = Math.max(...both.map((b, n) => Math.hypot(b.re - whole[n]!.re, b.im - whole[n]!.im)));
  if ((error < goal.error && depth >= goal.leastHalvings) || depth > goal.mostHalvings) return both;
  const [a, b] = [adaptive(f, from, middle, goal, left, depth + 1), adaptive(f, middle, to, goal, right, depth + 1)];
  return a.map((x, n) => add(x, b[n]!));
}

/** J_n by the trapezoid rule on the integral representation (DLMF 10.9.2). */
export function bessel(n: number, x: number): number {
  const count = 40 + 2 * Math.ceil(x);
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    sum += Math.cos(n * t - x * Math.sin(t));
  }
  return sum / count;
}
