/** How well a solution meets its symmetric system, from the upper triangle alone: a row's entries serve its column too. */
import { padded } from "./augmentedMatrix";

/** Adds |re| + |im| of row i's entries to the sums of their rows and columns. */
function addSizes(re: usize, im: usize, i: i32, n: i32, sums: usize): void {
  let own: f64 = abs(load<f64>(re + usize(8 * i))) + abs(load<f64>(im + usize(8 * i)));
  let pairs = f64x2.splat(0);
  let j = i + 1;
  for (; j + 1 < n; j += 2) {
    const at = usize(8 * j);
    const size = f64x2.add(f64x2.abs(v128.load(re + at)), f64x2.abs(v128.load(im + at)));
    pairs = f64x2.add(pairs, size);
    v128.store(sums + at, f64x2.add(v128.load(sums + at), size));
  }
  if (j < n) {
    const at = usize(8 * j);
    const size = abs(load<f64>(re + at)) + abs(load<f64>(im + at));
    own += size;
    store<f64>(sums + at, load<f64>(sums + at) + size);
  }
  own += f64x2.extract_lane(pairs, 0) + f64x2.extract_lane(pairs, 1);
  store<f64>(sums + usize(8 * i), load<f64>(sums + usize(8 * i)) + own);
}

/** Adds row i's part of A x to r: its entries times x in row i, times x_i in their columns' rows. */
function addProduct(re: usize, im: usize, i: i32, n: i32, x: usize, xPlane: usize, r: usize, rPlane: usize): void {
  const own = usize(8 * i);
  const xr = load<f64>(x + own);
  const xi = load<f64>(x + xPlane + own);
  const vr = f64x2.splat(xr);
  const vi = f64x2.splat(xi);
  let sumRe = load<f64>(re + own) * xr - load<f64>(im + own) * xi;
  let sumIm = load<f64>(re + own) * xi + load<f64>(im + own) * xr;
  let pairRe = f64x2.splat(0);
  let pairIm = pairRe;
  let j = i + 1;
  for (; j + 1 < n; j += 2) {
    const at = usize(8 * j);
    const a = v128.load(re + at);
    const b = v128.load(im + at);
    const c = v128.load(x + at);
    const d = v128.load(x + xPlane + at);
    pairRe = f64x2.add(pairRe, f64x2.sub(f64x2.mul(a, c), f64x2.mul(b, d)));
    pairIm = f64x2.add(pairIm, f64x2.add(f64x2.mul(a, d), f64x2.mul(b, c)));
    const gr = f64x2.sub(f64x2.mul(a, vr), f64x2.mul(b, vi));
    const gi = f64x2.add(f64x2.mul(a, vi), f64x2.mul(b, vr));
    v128.store(r + at, f64x2.add(v128.load(r + at), gr));
    v128.store(r + rPlane + at, f64x2.add(v128.load(r + rPlane + at), gi));
  }
  if (j < n) {
    const at = usize(8 * j);
    const a = load<f64>(re + at);
    const b = load<f64>(im + at);
    const c = load<f64>(x + at);
    const d = load<f64>(x + xPlane + at);
    sumRe += a * c - b * d;
    sumIm += a * d + b * c;
    store<f64>(r + at, load<f64>(r + at) + a * xr - b * xi);
    store<f64>(r + rPlane + at, load<f64>(r + rPlane + at) + a * xi + b * xr);
  }
  sumRe += f64x2.extract_lane(pairRe, 0) + f64x2.extract_lane(pairRe, 1);
  sumIm += f64x2.extract_lane(pairIm, 0) + f64x2.extract_lane(pairIm, 1);
  store<f64>(r + own, load<f64>(r + own) + sumRe);
  store<f64>(r + rPlane + own, load<f64>(r + rPlane + own) + sumIm);
}

function largestOf(values: usize, n: i32): f64 {
  let most: f64 = 0;
  for (let i = 0; i < n; i++) most = max(most, abs(load<f64>(values + usize(8 * i))));
  return most;
}

/**
 * Largest |b - A x| over (norm of A times norm of x) of all right-hand sides. Planes re, im: n x n; b: -b on entry, A x - b
 * on return, `count` x n; x: `count` x padded(n); sums: n zeros.
 */
export function residualOf(re: usize, im: usize, n: i32, b: usize, count: i32, x: usize, sums: usize): f64 {
  const bPlane = usize(8 * count * n);
  const xPlane = usize(8 * count * padded(n));
  for (let i = 0; i < n; i++) {
    const row = usize(8 * n) * usize(i);
    addSizes(re + row, im + row, i, n, sums);
    for (let side = 0; side < count; side++) {
      const own = usize(8 * side * padded(n));
      addProduct(re + row, im + row, i, n, x + own, xPlane, b + usize(8 * side * n), bPlane);
    }
  }
  const norm = largestOf(sums, n);
  let worst: f64 = 0;
  for (let side = 0; side < count; side++) {
    const r = b + usize(8 * side * n);
    const v = x + usize(8 * side * padded(n));
    const scale = norm * max(largestOf(v, n), largestOf(v + xPlane, n));
    const error = max(largestOf(r, n), largestOf(r + bPlane, n));
    worst = max(worst, scale === 0 ? error : error / scale);
  }
  return worst;
}
