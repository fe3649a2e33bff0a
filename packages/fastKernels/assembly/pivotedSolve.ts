/** LU with partial pivoting, the right-hand sides carried along: the second choice, so nothing is blocked. */
import { backSubstitute, largestOfRow, layOut, padded } from "./augmentedMatrix";
import { subtractRow } from "./rowStep";

/** Copies the upper triangle below the diagonal. */
function mirror(plane: usize, n: i32, stride: usize): void {
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      store<f64>(plane + usize(j) * stride + usize(8 * i), load<f64>(plane + usize(i) * stride + usize(8 * j)));
    }
  }
}

function largestBelow(re: usize, im: usize, n: i32, stride: usize, k: i32): i32 {
  const column = usize(8 * k);
  const own = usize(k) * stride + column;
  let best = k;
  let most = hypot(load<f64>(re + own), load<f64>(im + own));
  for (let i = k + 1; i < n; i++) {
    const at = usize(i) * stride + column;
    const size = hypot(load<f64>(re + at), load<f64>(im + at));
    if (size > most) {
      most = size;
      best = i;
    }
  }
  return best;
}

/** Without squares that overflow or vanish. */
function hypot(a: f64, b: f64): f64 {
  const most = max(abs(a), abs(b));
  const least = min(abs(a), abs(b));
  if (most === 0) return 0;
  const ratio = least / most;
  return most * sqrt(1 + ratio * ratio);
}

function swapRows(plane: usize, stride: usize, p: i32, q: i32): void {
  const a = plane + usize(p) * stride;
  const b = plane + usize(q) * stride;
  for (let at: usize = 0; at < stride; at += 16) {
    const held = v128.load(a + at);
    v128.store(a + at, v128.load(b + at));
    v128.store(b + at, held);
  }
}

function eliminate(re: usize, im: usize, n: i32, stride: usize, k: i32): void {
  const row = usize(k) * stride;
  const column = usize(8 * k);
  const dr = load<f64>(re + row + column);
  const di = load<f64>(im + row + column);
  const size = dr * dr + di * di;
  const first = usize(8 * (k & ~1));
  for (let i = k + 1; i < n; i++) {
    const target = usize(i) * stride;
    const ar = load<f64>(re + target + column);
    const ai = load<f64>(im + target + column);
    const lr = (ar * dr + ai * di) / size;
    const li = (ai * dr - ar * di) / size;
    subtractRow(re + target + first, re + row + first, im - re, stride - first, lr, li);
  }
}

/**
 * As solveUnpivoted, without work; writes the largest number met to `report`. Returns 0, or the equation (from 1) that has
 * no pivot.
 */
export function solvePivoted(re: usize, im: usize, n: i32, b: usize, count: i32, x: usize, report: usize): i32 {
  const stride = usize(8 * (padded(n) + padded(count)));
  layOut(re, im, n, stride, b, count);
  mirror(re, n, stride);
  mirror(im, n, stride);
  let most: f64 = 0;
  for (let k = 0; k < n; k++) {
    const best = largestBelow(re, im, n, stride, k);
    if (best !== k) {
      swapRows(re, stride, k, best);
      swapRows(im, stride, k, best);
    }
    const row = usize(k) * stride;
    const pivot = hypot(load<f64>(re + row + usize(8 * k)), load<f64>(im + row + usize(8 * k)));
    if (!(pivot > 0)) return k + 1;
    most = largestOfRow(re + row, im + row, k, n, most);
    eliminate(re, im, n, stride, k);
  }
  backSubstitute(re, im, n, stride, count, x);
  store<f64>(report, most);
  return 0;
}
