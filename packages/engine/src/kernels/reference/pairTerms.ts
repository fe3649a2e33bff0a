/** Fills the moment matrix with the free-space kernel e^{-jkR}/R between elements, mixed-potential form. */
import { gaussLegendre } from "../../numerics/gaussLegendre";
import type { Elements, PairTerms, Scatter, SplitMatrix } from "../door";

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

interface Sampled {
  readonly elements: Elements;
  readonly points: ReadonlyMap<number, Float64Array>;
}

const sampled = (elements: Elements): Sampled => ({
  elements,
  points: new Map(orders.map((order) => [order, gaussPoints(elements, order)])),
});

/**
 * Ramp moments of e^{-jkR}/R (re 0..3, im 4..7; order as in NearMoments), averaged over both tubes to second order in
 * the radii: mean g = g + (a^2/4)(part of the Laplacian across the axis), which is g at the distance
 * R^2 + (a^2/2)(3 c^2 - 1), c = cosine to the axis, times 1 - (k a)^2 (1 - c^2)/4. 1e-4 of g at R = 10 a.
 */
function distantMoments(
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

function addRamps(m: Float64Array, rise: number, sourceRise: number, re: number, im: number): void {
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
function remainderMoments(tests: Elements, e: number, sources: Elements, f: number, k: number, m: Float64Array): void {
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

function orderFor(tests: Sampled, e: number, sources: Sampled, f: number): number {
  const p = tests.points.get(2)!;
  const q = sources.points.get(2)!;
  let squared = 0;
  for (let c = 0; c < 3; c++) {
    squared += ((p[6 * e + c]! + p[6 * e + 3 + c]! - q[6 * f + c]! - q[6 * f + 3 + c]!) / 2) ** 2;
  }
  const ratio = Math.sqrt(squared) / Math.max(tests.elements.length[e]!, sources.elements.length[f]!);
  return ratio > distanceForTwo ? 2 : ratio > distanceForThree ? 3 : 4;
}

/** Adds the moments of one pair to the unknowns on its four ends. */
function scatterPair(
  terms: PairTerms,
  e: number,
  f: number,
  same: boolean,
  m: Float64Array,
  matrix: SplitMatrix,
): void {
  const { tests, sources, scatter } = terms;
  const cosine =
    tests.direction[3 * e]! * sources.direction[3 * f]! +
    tests.direction[3 * e + 1]! * sources.direction[3 * f + 1]! +
    tests.direction[3 * e + 2]! * sources.direction[3 * f + 2]!;
  const vector = terms.sign * terms.vectorFactor * cosine;
  const scalar = (terms.sign * terms.scalarFactor) / (tests.length[e]! * sources.length[f]!);
  const chargeRe = scalar * (m[0]! + m[1]! + m[2]! + m[3]!);
  const chargeIm = scalar * (m[4]! + m[5]! + m[6]! + m[7]!);
  for (let pair = 0; pair < 4; pair++) {
    const i = pair >> 1;
    const j = pair & 1;
    const slopes = i === j ? 1 : -1;
    const re = -(vector * m[4 + pair]! - slopes * chargeIm);
    const im = vector * m[pair]! - slopes * chargeRe;
    addToUnknowns(scatter, [2 * e + i, 2 * f + j], same, [re, im], matrix);
  }
}

/** Adds one number to every pair of unknowns on two element ends, upper triangle. */
function addToUnknowns(
  scatter: Scatter,
  [testEnd, sourceEnd]: readonly [number, number],
  same: boolean,
  [re, im]: readonly [number, number],
  matrix: SplitMatrix,
): void {
  const n = matrix.size;
  for (let a = scatter.first[testEnd]!; a < scatter.first[testEnd + 1]!; a++) {
    const row = scatter.unknown[a]!;
    for (let b = scatter.first[sourceEnd]!; b < scatter.first[sourceEnd + 1]!; b++) {
      const column = scatter.unknown[b]!;
      if (same && row > column) continue;
      const twice = !same && row === column ? 2 : 1;
      const weight = twice * scatter.sign[a]! * scatter.sign[b]!;
      const index = row < column ? row * n + column : column * n + row;
      matrix.re[index]! += weight * re;
      matrix.im[index]! += weight * im;
    }
  }
}

/** See Kernels.addPairTerms. */
export function addPairTerms(terms: PairTerms, matrix: SplitMatrix): void {
  const { near, wavenumber: k } = terms;
  const tests = sampled(terms.tests);
  const sources = terms.sources === terms.tests ? tests : sampled(terms.sources);
  const m = new Float64Array(8);
  for (let e = 0; e < terms.tests.count; e++) {
    let next = near.rowStart[e]!;
    const end = near.rowStart[e + 1]!;
    for (let f = e; f < terms.sources.count; f++) {
      if (next < end && near.column[next] === f) {
        remainderMoments(terms.tests, e, terms.sources, f, k, m);
        for (let i = 0; i < 4; i++) m[i]! += near.moments[4 * next + i]!;
        next++;
      } else {
        distantMoments(tests, e, sources, f, orderFor(tests, e, sources, f), k, m);
      }
      scatterPair(terms, e, f, e === f, m, matrix);
    }
  }
}
