/**
 * The layout both factorisations work on: n rows and columns padded to a multiple of 4 with ones on the diagonal, then
 * the right-hand sides as further columns, padded likewise, so that the elimination carries them along. Row-major planes
 * re, then im at `im`; `stride` is a row in bytes.
 */

export function padded(n: i32): i32 {
  return (n + 3) & ~3;
}

/** Moves rows of n numbers that stand one after another apart to the stride, the last first; clears what is padding. */
function spreadPlane(plane: usize, n: i32, stride: usize, diagonal: f64): void {
  const row = usize(8 * n);
  for (let i = n - 1; i >= 0; i--) {
    memory.copy(plane + usize(i) * stride, plane + usize(i) * row, row);
    memory.fill(plane + usize(i) * stride + row, 0, stride - row);
  }
  for (let i = n; i < padded(n); i++) {
    memory.fill(plane + usize(i) * stride, 0, stride);
    store<f64>(plane + usize(i) * stride + usize(8 * i), diagonal);
  }
}

/** Right-hand sides (vector after vector at `b`) into the columns behind the matrix. */
function placePlane(plane: usize, n: i32, stride: usize, b: usize, count: i32): void {
  const first = plane + usize(8 * padded(n));
  for (let side = 0; side < count; side++) {
    for (let i = 0; i < n; i++) {
      store<f64>(first + usize(i) * stride + usize(8 * side), load<f64>(b + usize(8 * (side * n + i))));
    }
  }
}

/** From planes of n x n and right-hand sides of `count` x n (im behind re). */
export function layOut(re: usize, im: usize, n: i32, stride: usize, b: usize, count: i32): void {
  spreadPlane(re, n, stride, 1);
  spreadPlane(im, n, stride, 0);
  placePlane(re, n, stride, b, count);
  placePlane(im, n, stride, b + usize(8 * count * n), count);
}

/** Largest |re| or |im| of row k in columns from .. n-1 (padding behind them holds zeros), or `most`. */
export function largestOfRow(re: usize, im: usize, from: i32, n: i32, most: f64): f64 {
  let j = from;
  if (j < n && (j & 1) !== 0) {
    const at = usize(8 * j);
    most = max(most, max(abs(load<f64>(re + at)), abs(load<f64>(im + at))));
    j++;
  }
  let sums = f64x2.splat(most);
  for (; j < n; j += 2) {
    const at = usize(8 * j);
    sums = f64x2.max(sums, f64x2.max(f64x2.abs(v128.load(re + at)), f64x2.abs(v128.load(im + at))));
  }
  return max(f64x2.extract_lane(sums, 0), f64x2.extract_lane(sums, 1));
}

/** Largest |re| or |im| of the upper triangle. */
export function largestOfTriangle(re: usize, im: usize, n: i32, stride: usize): f64 {
  let most: f64 = 0;
  for (let i = 0; i < n; i++) {
    most = largestOfRow(re + usize(i) * stride, im + usize(i) * stride, i, n, most);
  }
  return most;
}

/**
 * Back through the eliminated rows, whose diagonal is not divided out: x_k = (y_k - sum of u_kj x_j) / u_kk. x: `count`
 * vectors of padded length, im behind re.
 */
export function backSubstitute(re: usize, im: usize, n: i32, stride: usize, count: i32, x: usize): void {
  const n4 = padded(n);
  const plane = usize(8 * count * n4);
  memory.fill(x, 0, 2 * plane);
  for (let k = n - 1; k >= 0; k--) {
    const row = usize(k) * stride;
    const pivot = row + usize(8 * k);
    const dr = load<f64>(re + pivot);
    const di = load<f64>(im + pivot);
    const size = dr * dr + di * di;
    for (let side = 0; side < count; side++) {
      const xr = x + usize(8 * side * n4);
      rowTimes(re + row, im + row, k + 1, n, xr, xr + plane);
      const y = row + usize(8 * (n4 + side));
      const r = load<f64>(re + y) - productRe;
      const i = load<f64>(im + y) - productIm;
      store<f64>(xr + usize(8 * k), (r * dr + i * di) / size);
      store<f64>(xr + plane + usize(8 * k), (i * dr - r * di) / size);
    }
  }
}

let productRe: f64 = 0;
let productIm: f64 = 0;

/** Writes the product of a row and a vector over columns from .. n-1 to `productRe`, `productIm`. */
function rowTimes(re: usize, im: usize, from: i32, n: i32, xr: usize, xi: usize): void {
  let j = from;
  let r: f64 = 0;
  let i: f64 = 0;
  if (j < n && (j & 1) !== 0) {
    const at = usize(8 * j);
    r = load<f64>(re + at) * load<f64>(xr + at) - load<f64>(im + at) * load<f64>(xi + at);
    i = load<f64>(re + at) * load<f64>(xi + at) + load<f64>(im + at) * load<f64>(xr + at);
    j++;
  }
  let rr = f64x2.splat(0);
  let ii = rr;
  let ri = rr;
  let ir = rr;
  for (; j < n; j += 2) {
    const at = usize(8 * j);
    const a = v128.load(re + at);
    const b = v128.load(im + at);
    const c = v128.load(xr + at);
    const d = v128.load(xi + at);
    rr = f64x2.add(rr, f64x2.mul(a, c));
    ii = f64x2.add(ii, f64x2.mul(b, d));
    ri = f64x2.add(ri, f64x2.mul(a, d));
    ir = f64x2.add(ir, f64x2.mul(b, c));
  }
  const real = f64x2.sub(rr, ii);
  const imaginary = f64x2.add(ri, ir);
  productRe = r + f64x2.extract_lane(real, 0) + f64x2.extract_lane(real, 1);
  productIm = i + f64x2.extract_lane(imaginary, 0) + f64x2.extract_lane(imaginary, 1);
}
