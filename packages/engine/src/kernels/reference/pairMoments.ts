/** Ramp moments of the free-space kernel e^{-jkR}/R between two elements, by quadrature. */
import { gaussLegendre } from "../../numerics/gaussLegendre";
import type { Elements } from "../door";

/** Quadrature orders by centre distance over the longer element; near pairs integrate only the smooth remainder. */
const orders = [2, 3, 4] as const;
const nearOrder = 3;
const distanceForTwo = 8;
const distanceForThree = 4;

/** Gauss points of every element for one order: x, y, z of each. */
function gaussPoints(elements: Elements, order: number): Float64Array {
  const { points } = gaussLegendre(order);
  const out = new Float64Array(3 * order * elements.count);
  for (let e = 0; e < elements.count; e++) {
    for (let p = 0; p < order; p++) {
      const along = (elements.length[e]! * (1 + points[p]!)) / 2;
      for (let c = 0; c < 3; c++) {
        out[3 * (e * order + p) + c] = elements.start[3 * e + c]! + along * elements.direction[3 * e + c]!;
      }
    }
  }
  return out;
}

/** Elements with their Gauss points for every order in use. */
export interface Sampled {
  readonly elements: Elements;
  readonly points: ReadonlyMap<number, Float64Array>;
}

export const sampled = (elements: Elements): Sampled => ({
  elements,
  points: new Map(orders.map((order) => [order, gaussPoints(elements, order)])),
});

/**
 * Ramp moments of e^{-jkR}/R (re 0..3, im 4..7; order as in NearMoments), averaged over both tubes to second order in
 * the radii: mean g = g + (a^2/4)(part of the Laplacian across the axis), which is g at the distance
 * R^2 + (a^2/2)(3 c^2 - 1), c = cosine to the axis, times 1 - (k a)^2 (1 - c^2)/4. 1e-4 of g at R = 10 a.
 */
export function distantMoments(
  tests: Sampled,
  e: number,
  sources: Sampled,
  f: number,
  order: number,
  k: number,
  m: Float64Array,
) {
  const { points, weights } = gaussLegendre(order);
  const p = tests.points.get(order)!;
  const q = sources.points.get(order)!;
  const t = tests.elements.direction;
  const u = sources.elements.direction;
  const at = tests.elements.radius[e]! ** 2 / 2;
  const as = sources.elements.radius[f]! ** 2 / 2;
  const scale = (tests.elements.length[e]! * sources.elements.length[f]!) / 4;
  m.fill(0);
  for (let i = 0; i < order; i++) {
    const pi = 3 * (e * order + i);
    const rise = (1 + points[i]!) / 2;
    for (let j = 0; j < order; j++) {
      const qj = 3 * (f * order + j);
      const dx = p[pi]! - q[qj]!;
      const dy = p[pi + 1]! - q[qj + 1]!;
      const dz = p[pi + 2]! - q[qj + 2]!;
      const r2 = dx * dx + dy * dy + dz * dz;
      const ct = dx * t[3 * e]! + dy * t[3 * e + 1]! + dz * t[3 * e + 2]!;
      const cu = dx * u[3 * f]! + dy * u[3 * f + 1]! + dz * u[3 * f + 2]!;
      const c2 = (ct * ct) / r2;
      const d2 = (cu * cu) / r2;
      const r = Math.sqrt(r2 + at * (3 * c2 - 1) + as * (3 * d2 - 1));
      const tubes = 1 - (k * k * (at * (1 - c2) + as * (1 - d2))) / 2;
      const w = (scale * weights[i]! * weights[j]! * tubes) / r;
      addRamps(m, rise, (1 + points[j]!) / 2, w * Math.cos(k * r), -w * Math.sin(k * r));
    }
  }
}

/** Adds one sample at the given heights of both rising ramps to re 0..3 and im 4..7. */
export function addRamps(m: Float64Array, rise: number, sourceRise: number, re: number, im: number): void {
  const ff = (1 - rise) * (1 - sourceRise);
  const fr = (1 - rise) * sourceRise;
  const rf = rise * (1 - sourceRise);
  const rr = rise * sourceRise;
  m[0]! += ff * re;
  m[1]! += fr * re;
  m[2]! += rf * re;
  m[3]! += rr * re;
  m[4]! += ff * im;
  m[5]! += fr * im;
  m[6]! += rf * im;
  m[7]! += rr * im;
}

/** Same moments of the remainder (e^{-jkR} - 1)/R, smooth except for a kink where the points meet. */
export function remainderMoments(
  tests: Elements,
  e: number,
  sources: Elements,
  f: number,
  k: number,
  m: Float64Array,
): void {
  const rule = gaussLegendre(nearOrder);
  const radii = tests.radius[e]! ** 2 + sources.radius[f]! ** 2;
  const l = tests.length[e]!;
  const length = sources.length[f]!;
  const offset = (c: number, s: number): number =>
    tests.start[3 * e + c]! + s * tests.direction[3 * e + c]! - sources.start[3 * f + c]!;
  m.fill(0);
  for (let i = 0; i < nearOrder; i++) {
    const rise = (1 + rule.points[i]!) / 2;
    const x = offset(0, rise * l);
    const y = offset(1, rise * l);
    const z = offset(2, rise * l);
    const u = sources.direction;
    const foot = x * u[3 * f]! + y * u[3 * f + 1]! + z * u[3 * f + 2]!;
    const aside = Math.max(0, x * x + y * y + z * z - foot * foot) + radii;
    const kink = Math.min(1, Math.max(0, foot / length));
    for (const [from, to] of [
      [0, kink],
      [kink, 1],
    ] as const) {
      if (to === from) continue;
      for (let j = 0; j < nearOrder; j++) {
        const sourceRise = from + ((to - from) * (1 + rule.points[j]!)) / 2;
        const r = Math.sqrt((foot - sourceRise * length) ** 2 + aside);
        const half = Math.sin((k * r) / 2);
        const w = ((l * length * (to - from)) / 4) * rule.weights[i]! * rule.weights[j]!;
        addRamps(m, rise, sourceRise, (-2 * w * half * half) / r, (-w * Math.sin(k * r)) / r);
      }
    }
  }
}

/** Quadrature order a distant pair needs. */
export function orderFor(tests: Sampled, e: number, sources: Sampled, f: number): number {
  const p = tests.points.get(2)!;
  const q = sources.points.get(2)!;
  let squared = 0;
  for (let c = 0; c < 3; c++) {
    squared += ((p[6 * e + c]! + p[6 * e + 3 + c]! - q[6 * f + c]! - q[6 * f + 3 + c]!) / 2) ** 2;
  }
  const ratio = Math.sqrt(squared) / Math.max(tests.elements.length[e]!, sources.elements.length[f]!);
  return ratio > distanceForTwo ? 2 : ratio > distanceForThree ? 3 : 4;
}
