/**
 * What the soil reflects: kernels between all pairs of sample points, projected on the unknowns; and the power that sums
 * over the same pairs. Definitions: the readable twin's reflectedTerms and pairPower.
 */
import { forgetLookUps, g0, g1, g2, g3, lookUp } from "./tableLookUp";

/** Kernels at a pair of points q <= p, and what multiplies them. */
let level: f64 = 0;
let upright: f64 = 0;
let cross: f64 = 0;

/** Writes g0 .. g3 (the last two only where they count, which is told) and the products of directions. */
function lookUpPair(
  position: usize,
  direction: usize,
  low: usize,
  lessImages: usize,
  whole: usize,
  p: i32,
  q: i32,
): bool {
  const a = position + usize(24 * p);
  const b = position + usize(24 * q);
  const t = direction + usize(24 * p);
  const u = direction + usize(24 * q);
  const dx = load<f64>(a) - load<f64>(b);
  const dy = load<f64>(a, 8) - load<f64>(b, 8);
  const s = load<f64>(a, 16) + load<f64>(b, 16);
  const tz = load<f64>(t, 16);
  const uz = load<f64>(u, 16);
  level = load<f64>(t) * load<f64>(u) + load<f64>(t, 8) * load<f64>(u, 8);
  upright = tz * uz;
  cross = (tz * load<f64>(u) - load<f64>(t) * uz) * dx + (tz * load<f64>(u, 8) - load<f64>(t, 8) * uz) * dy;
  const steep = tz !== 0 || uz !== 0;
  const both = load<u8>(low + usize(p)) !== 0 && load<u8>(low + usize(q)) !== 0;
  const table = both ? lessImages : whole;
  const kernels = steep && load<i32>(table + 8) === 4 ? 4 : 2;
  lookUp(table, Math.sqrt(dx * dx + dy * dy), s, kernels);
  return kernels === 4;
}

/** Current-current and charge-charge kernels of all pairs, re and im side by side; full symmetric matrices. */
function fillPairs(
  count: i32,
  position: usize,
  direction: usize,
  low: usize,
  lessImages: usize,
  whole: usize,
  current: usize,
  charge: usize,
): void {
  for (let p = 0; p < count; p++) {
    for (let q = 0; q <= p; q++) {
      const steep = lookUpPair(position, direction, low, lessImages, whole, p, q);
      let a = f64x2.mul(g0, f64x2.splat(level));
      if (steep) {
        a = f64x2.add(a, f64x2.mul(g2, f64x2.splat(upright)));
        a = f64x2.add(a, f64x2.mul(g3, f64x2.splat(cross)));
      }
      const here = usize(16 * (p * count + q));
      const there = usize(16 * (q * count + p));
      v128.store(current + here, a);
      v128.store(current + there, a);
      v128.store(charge + here, g1);
      v128.store(charge + there, g1);
    }
  }
}

/** Weight of column entry `a` as both lanes; 0 past the last. */
function weightOf(weights: usize, a: i32, to: i32, factor: f64): v128 {
  return f64x2.splat(a < to ? factor * load<f64>(weights + usize(8 * a)) : 0);
}

/** Row of `matrix` that column entry `a` stands for, the last one's past it. */
function rowOf(matrix: usize, count: i32, point: usize, a: i32, to: i32): usize {
  return matrix + usize(16 * count * load<i32>(point + usize(4 * min(a, to - 1))));
}

/** Writes the sum of rows of `matrix`, weighted, times `factor`, into `out`: the first `width` numbers, four rows at once. */
function combineRows(
  from: i32,
  to: i32,
  point: usize,
  weights: usize,
  factor: f64,
  matrix: usize,
  count: i32,
  width: i32,
  out: usize,
): void {
  const end = usize(16 * width);
  if (from === to) memory.fill(out, 0, end);
  for (let a = from; a < to; a += 4) {
    const w = weightOf(weights, a, to, factor);
    const x = weightOf(weights, a + 1, to, factor);
    const y = weightOf(weights, a + 2, to, factor);
    const z = weightOf(weights, a + 3, to, factor);
    const rowW = rowOf(matrix, count, point, a, to);
    const rowX = rowOf(matrix, count, point, a + 1, to);
    const rowY = rowOf(matrix, count, point, a + 2, to);
    const rowZ = rowOf(matrix, count, point, a + 3, to);
    const isFirst = a === from;
    for (let at: usize = 0; at < end; at += 16) {
      const left = f64x2.add(f64x2.mul(w, v128.load(rowW + at)), f64x2.mul(x, v128.load(rowX + at)));
      const right = f64x2.add(f64x2.mul(y, v128.load(rowY + at)), f64x2.mul(z, v128.load(rowZ + at)));
      const sum = f64x2.add(left, right);
      v128.store(out + at, isFirst ? sum : f64x2.add(sum, v128.load(out + at)));
    }
  }
}

/** One past the largest point of the columns up to here, given that of those before. */
function widen(width: i32, from: i32, to: i32, point: usize): i32 {
  let most = width;
  for (let a = from; a < to; a++) most = max(most, load<i32>(point + usize(4 * a)) + 1);
  return most;
}

/**
 * Sums over pairs of points into the upper triangles `re` and `im` of `size` x `size` unknowns. `first`, `point`, `current`
 * and `charge` are the columns of the projection; `work`: two matrices of 16 bytes a pair of points, then 32 bytes a point.
 */
export function reflectedTerms(
  count: i32,
  position: usize,
  direction: usize,
  low: usize,
  lessImages: usize,
  whole: usize,
  size: i32,
  first: usize,
  point: usize,
  current: usize,
  charge: usize,
  vectorFactor: f64,
  scalarFactor: f64,
  work: usize,
  re: usize,
  im: usize,
): void {
  forgetLookUps();
  const chargePairs = work + usize(16 * count) * usize(count);
  const t = chargePairs + usize(16 * count) * usize(count);
  const u = t + usize(16 * count);
  fillPairs(count, position, direction, low, lessImages, whole, work, chargePairs);
  let width = 0;
  for (let column = 0; column < size; column++) {
    const from = load<i32>(first + usize(4 * column));
    const to = load<i32>(first + usize(4 * column + 4));
    width = widen(width, from, to, point);
    combineRows(from, to, point, current, vectorFactor, work, count, width, t);
    combineRows(from, to, point, charge, -scalarFactor, chargePairs, count, width, u);
    for (let row = 0; row <= column; row++) {
      let sum = f64x2.splat(0);
      const last = load<i32>(first + usize(4 * row + 4));
      for (let a = load<i32>(first + usize(4 * row)); a < last; a++) {
        const at = usize(16 * load<i32>(point + usize(4 * a)));
        const here = usize(8 * a);
        sum = f64x2.add(sum, f64x2.mul(v128.load64_splat(current + here), v128.load(t + at)));
        sum = f64x2.add(sum, f64x2.mul(v128.load64_splat(charge + here), v128.load(u + at)));
      }
      // Times j.
      const place = usize(8 * row) * usize(size) + usize(8 * column);
      store<f64>(re + place, -f64x2.extract_lane(sum, 1));
      store<f64>(im + place, f64x2.extract_lane(sum, 0));
    }
  }
}

function product(a: v128, b: v128): f64 {
  const both = f64x2.mul(a, b);
  return f64x2.extract_lane(both, 0) + f64x2.extract_lane(both, 1);
}

/** `current` and `charge`: moments, re and im side by side. */
export function pairPower(
  count: i32,
  position: usize,
  direction: usize,
  low: usize,
  lessImages: usize,
  whole: usize,
  current: usize,
  charge: usize,
): f64 {
  forgetLookUps();
  let power: f64 = 0;
  for (let p = 0; p < count; p++) {
    const cp = v128.load(current + usize(16 * p));
    const qp = v128.load(charge + usize(16 * p));
    const tz = load<f64>(direction + usize(24 * p), 16);
    for (let q = 0; q <= p; q++) {
      const steep = lookUpPair(position, direction, low, lessImages, whole, p, q);
      const cq = v128.load(current + usize(16 * q));
      const qq = v128.load(charge + usize(16 * q));
      const moments = product(cp, cq);
      let pair = level * moments * f64x2.extract_lane(g0, 0) + product(qp, qq) * f64x2.extract_lane(g1, 0);
      if (steep) {
        const uz = load<f64>(direction + usize(24 * q), 16);
        const mixed = (uz * product(qp, cq) + tz * product(cp, qq)) / 2;
        pair += upright * moments * f64x2.extract_lane(g2, 0) + mixed * f64x2.extract_lane(g2, 1);
      }
      power += p === q ? pair : 2 * pair;
    }
  }
  return power;
}
