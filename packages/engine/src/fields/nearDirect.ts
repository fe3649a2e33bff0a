/**
 * Field of one straight element with a current that is linear along it, in free space. Along each thread of current the
 * distance is s = d sinh(v): Gauss rules in v see a smooth integrand at any distance. What varies along the element by
 * itself, the end charges, is in closed form. Close by, the current is spread over threads around the wire.
 */
import { gaussLegendre } from "../numerics/gaussLegendre";
import { vacuumImpedance } from "../numerics/vacuum";

/** E (V/m) in 0..5, H (A/m) in 6..11: x, y, z, each re and im. Rms. */
export type FieldSum = Float64Array;

export interface CurrentElement {
  /** m; direction is a unit vector. */
  readonly start: readonly [number, number, number];
  readonly direction: readonly [number, number, number];
  readonly length: number;
  readonly radius: number;
  /** A rms along the element: at its start, and what it grows by per metre; re and im. */
  readonly current: readonly [number, number];
  readonly slope: readonly [number, number];
}

/** Farther than this many radii, and for thinner wires than this, one thread on the axis stands for the tube: 3e-6. */
const farInRadii = 300;
const thinInRadians = 6e-3;
const fewestThreads = 4;
const mostThreads = 96;
/** Threads leave (radius/distance)^count of the field: e^-12. */
const threadDecay = 12;
/** Widest panel in v, and the order of its rule; one of width 0.1 needs fewer points. */
const widestPanel = 1;
const fineRule = gaussLegendre(8);
const coarseRule = gaussLegendre(3);
const coarseWidth = 0.1;

/** Integrals along a thread, re and im: of I g, of I (dg/dr)/r; and of (dg/dr)/r alone. g is e^{-jkr}/r. */
const sums = new Float64Array(4);
const slopes = new Float64Array(2);

function integrateThread(element: CurrentElement, foot: number, across: number, nearest: number, k: number): void {
  const from = Math.asinh(-foot / nearest);
  const to = Math.asinh((element.length - foot) / nearest);
  const panels = Math.ceil((to - from) / widestPanel);
  const rule = to - from < coarseWidth ? coarseRule : fineRule;
  const half = (to - from) / (2 * panels);
  const [ir, ii] = element.current;
  const [dr, di] = element.slope;
  sums.fill(0);
  slopes.fill(0);
  for (let n = 0; n < panels * rule.points.length; n++) {
    const i = n % rule.points.length;
    const v = from + half * (2 * Math.floor(n / rule.points.length) + 1 + rule.points[i]!);
    const s = nearest * Math.sinh(v);
    const r = Math.sqrt(s * s + across * across);
    const weight = (half * rule.weights[i]! * nearest * Math.cosh(v)) / r;
    const gr = weight * Math.cos(k * r);
    const gi = -weight * Math.sin(k * r);
    const hr = (-gr + k * r * gi) / (r * r);
    const hi = (-gi - k * r * gr) / (r * r);
    const at = foot + s;
    const cr = ir + dr * at;
    const ci = ii + di * at;
    sums[0]! += cr * gr - ci * gi;
    sums[1]! += cr * gi + ci * gr;
    sums[2]! += cr * hr - ci * hi;
    sums[3]! += cr * hi + ci * hr;
    slopes[0]! += hr;
    slopes[1]! += hi;
  }
}

/** Adds the field of one thread; `d` is the way across from the thread to the point. */
function addThread(
  element: CurrentElement,
  foot: number,
  d: readonly number[],
  k: number,
  weight: number,
  out: FieldSum,
) {
  const across = Math.hypot(d[0]!, d[1]!, d[2]!);
  const outside = Math.max(0, -foot, foot - element.length);
  const nearest = Math.hypot(across, outside);
  integrateThread(element, foot, across, nearest, k);
  const u = element.direction;
  const [dr, di] = element.slope;
  const [r0, r1] = [Math.hypot(across, foot), Math.hypot(across, foot - element.length)];
  // g(start) - g(end): what the charge contributes along the element.
  const er = Math.cos(k * r0) / r0 - Math.cos(k * r1) / r1;
  const ei = -Math.sin(k * r0) / r0 + Math.sin(k * r1) / r1;
  const vector = (weight * k * vacuumImpedance) / (4 * Math.PI);
  const charge = (weight * vacuumImpedance) / (4 * Math.PI * k);
  const magnetic = weight / (4 * Math.PI);
  const alongRe = vector * sums[1]! + charge * (dr * ei + di * er);
  const alongIm = -vector * sums[0]! - charge * (dr * er - di * ei);
  const acrossRe = charge * (dr * slopes[1]! + di * slopes[0]!);
  const acrossIm = -charge * (dr * slopes[0]! - di * slopes[1]!);
  const turn = [d[1]! * u[2] - d[2]! * u[1], d[2]! * u[0] - d[0]! * u[2], d[0]! * u[1] - d[1]! * u[0]];
  for (let c = 0; c < 3; c++) {
    out[2 * c]! += u[c]! * alongRe + d[c]! * acrossRe;
    out[2 * c + 1]! += u[c]! * alongIm + d[c]! * acrossIm;
    out[6 + 2 * c]! += magnetic * turn[c]! * sums[2]!;
    out[7 + 2 * c]! += magnetic * turn[c]! * sums[3]!;
  }
}

function threadCount(nearest: number, radius: number, k: number): number {
  if (nearest > farInRadii * radius && k * radius < thinInRadians) return 1;
  const needed = threadDecay / Math.log(Math.max(nearest / radius, 1 + threadDecay / mostThreads));
  return Math.min(mostThreads, Math.max(fewestThreads, Math.ceil(needed)));
}

/** Any unit vector at right angles to `u`. */
function sideways(u: readonly number[]): number[] {
  const least = [0, 1, 2].reduce((best, c) => (Math.abs(u[c]!) < Math.abs(u[best]!) ? c : best), 0);
  const v = u.map((x, c) => (c === least ? 1 : 0) - x * u[least]!);
  const size = Math.hypot(v[0]!, v[1]!, v[2]!);
  return v.map((x) => x / size);
}

/**
 * Adds the field of an element at a point (m) outside of it; `k` in rad/m. Relative error below 1e-5 from 1.2 radii of
 * the axis on, below 1e-2 on the surface itself away from the element's ends.
 */
export function addElementField(element: CurrentElement, point: readonly number[], k: number, out: FieldSum): void {
  const { start, direction: u, radius } = element;
  const r = point.map((x, c) => x - start[c]!);
  const foot = r[0]! * u[0] + r[1]! * u[1] + r[2]! * u[2];
  const d = r.map((x, c) => x - foot * u[c]!);
  const across = Math.hypot(d[0]!, d[1]!, d[2]!);
  const nearest = Math.hypot(across, Math.max(0, -foot, foot - element.length));
  const threads = threadCount(nearest, radius, k);
  if (threads === 1) {
    addThread(element, foot, d, k, 1, out);
    return;
  }
  const e = across > 1e-6 * radius ? d.map((x) => x / across) : sideways(u);
  const f = [u[1] * e[2]! - u[2] * e[1]!, u[2] * e[0]! - u[0] * e[2]!, u[0] * e[1]! - u[1] * e[0]!];
  for (let i = 0; i < threads; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / threads;
    const [c, s] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    const offset = d.map((x, a) => x - c * e[a]! - s * f[a]!);
    addThread(element, foot, offset, k, 1 / threads, out);
  }
}
