/**
 * Complex symmetric systems by U^T D U without pivoting: panels of 16 rows are eliminated row by row, then the rows below
 * are updated by the whole panel at once in tiles of 2 rows x 4 columns, whose 16 numbers stay in registers. Only the
 * upper triangle is read; places below the diagonal may hold anything.
 */
import { backSubstitute, largestOfRow, largestOfTriangle, layOut, padded } from "./augmentedMatrix";
import { subtractRow } from "./rowStep";

const panelRows: i32 = 16;
/** Rows updated together, a multiple of 4. */
const blockRows: i32 = 8;
/** Bytes of a panel's multipliers for 2 rows: re, im of both, row after row of the panel. */
const multiplierBytes: usize = 512;

let smallest: f64 = 0;
let largest: f64 = 0;

/** Eliminates rows from .. to-1 among each other, the rest of their columns and the right-hand sides included. */
function eliminatePanel(re: usize, plane: usize, n: i32, stride: usize, from: i32, to: i32): void {
  for (let k = from; k < to; k++) {
    const row = re + usize(k) * stride;
    const dr = load<f64>(row + usize(8 * k));
    const di = load<f64>(row + plane + usize(8 * k));
    const size = dr * dr + di * di;
    if (k < n) {
      smallest = min(smallest, sqrt(size));
      largest = largestOfRow(row, row + plane, k, n, largest);
    }
    for (let i = k + 1; i < to; i++) {
      const ur = load<f64>(row + usize(8 * i));
      const ui = load<f64>(row + plane + usize(8 * i));
      const first = usize(8 * (i & ~1));
      const lr = (ur * dr + ui * di) / size;
      const li = (ui * dr - ur * di) / size;
      subtractRow(re + usize(i) * stride + first, row + first, plane, stride - first, lr, li);
    }
  }
}

/** Copies columns from `to` on of the panel's rows in groups of 4: re of 4, im of 4, row after row. */
function packPanel(re: usize, plane: usize, stride: usize, from: i32, to: i32, out: usize): void {
  for (let column = usize(8 * to); column < stride; column += 32) {
    for (let k = from; k < to; k++) {
      const at = re + usize(k) * stride + column;
      v128.store(out, v128.load(at));
      v128.store(out, v128.load(at, 16), 16);
      v128.store(out, v128.load(at + plane), 32);
      v128.store(out, v128.load(at + plane, 16), 48);
      out += 64;
    }
  }
}

/** Multipliers of rows i, i + 1: entries of the panel's columns i, i + 1 over its pivots. */
function packMultipliers(re: usize, plane: usize, stride: usize, from: i32, to: i32, i: i32, out: usize): void {
  for (let k = from; k < to; k++) {
    const row = re + usize(k) * stride;
    const dr = load<f64>(row + usize(8 * k));
    const di = load<f64>(row + plane + usize(8 * k));
    const size = dr * dr + di * di;
    const wr = f64x2.splat(dr / size);
    const wi = f64x2.splat(di / size);
    const ur = v128.load(row + usize(8 * i));
    const ui = v128.load(row + plane + usize(8 * i));
    v128.store(out, f64x2.add(f64x2.mul(ur, wr), f64x2.mul(ui, wi)));
    v128.store(out, f64x2.sub(f64x2.mul(ui, wr), f64x2.mul(ur, wi)), 16);
    out += 32;
  }
}

/** Subtracts the panel's part from 2 rows x 4 columns at `a`, `b`. */
function updateTile(a: usize, b: usize, plane: usize, panel: usize, multipliers: usize, rows: i32): void {
  let a0 = v128.load(a);
  let a1 = v128.load(a, 16);
  let c0 = v128.load(a + plane);
  let c1 = v128.load(a + plane, 16);
  let b0 = v128.load(b);
  let b1 = v128.load(b, 16);
  let d0 = v128.load(b + plane);
  let d1 = v128.load(b + plane, 16);
  for (const end = panel + usize(64 * rows); panel < end; panel += 64) {
    const r0 = v128.load(panel);
    const r1 = v128.load(panel, 16);
    const i0 = v128.load(panel, 32);
    const i1 = v128.load(panel, 48);
    let m = v128.load_splat<f64>(multipliers);
    a0 = f64x2.sub(a0, f64x2.mul(m, r0));
    a1 = f64x2.sub(a1, f64x2.mul(m, r1));
    c0 = f64x2.sub(c0, f64x2.mul(m, i0));
    c1 = f64x2.sub(c1, f64x2.mul(m, i1));
    m = v128.load_splat<f64>(multipliers, 16);
    a0 = f64x2.add(a0, f64x2.mul(m, i0));
    a1 = f64x2.add(a1, f64x2.mul(m, i1));
    c0 = f64x2.sub(c0, f64x2.mul(m, r0));
    c1 = f64x2.sub(c1, f64x2.mul(m, r1));
    m = v128.load_splat<f64>(multipliers, 8);
    b0 = f64x2.sub(b0, f64x2.mul(m, r0));
    b1 = f64x2.sub(b1, f64x2.mul(m, r1));
    d0 = f64x2.sub(d0, f64x2.mul(m, i0));
    d1 = f64x2.sub(d1, f64x2.mul(m, i1));
    m = v128.load_splat<f64>(multipliers, 24);
    b0 = f64x2.add(b0, f64x2.mul(m, i0));
    b1 = f64x2.add(b1, f64x2.mul(m, i1));
    d0 = f64x2.sub(d0, f64x2.mul(m, r0));
    d1 = f64x2.sub(d1, f64x2.mul(m, r1));
    multipliers += 32;
  }
  v128.store(a, a0);
  v128.store(a, a1, 16);
  v128.store(a + plane, c0);
  v128.store(a + plane, c1, 16);
  v128.store(b, b0);
  v128.store(b, b1, 16);
  v128.store(b + plane, d0);
  v128.store(b + plane, d1, 16);
}

/**
 * Subtracts the panel's part from all rows below it, right of the diagonal. Rows go in blocks, so that a group of the
 * packed panel serves all of them while it is at hand.
 */
function updateBelow(re: usize, plane: usize, n4: i32, stride: usize, from: i32, to: i32, work: usize): void {
  const packed = work + usize(blockRows / 2) * multiplierBytes;
  packPanel(re, plane, stride, from, to, packed);
  const groupBytes = usize(64 * (to - from));
  for (let i = to; i < n4; i += blockRows) {
    const pairs = min(blockRows, n4 - i) >> 1;
    for (let pair = 0; pair < pairs; pair++) {
      packMultipliers(re, plane, stride, from, to, i + 2 * pair, work + usize(pair) * multiplierBytes);
    }
    let panel = packed + (usize(i - to) >> 2) * groupBytes;
    // Pairs of rows that reach up to the group of columns: two more with each, until it is all of them.
    let reaching = 2;
    for (let column = usize(8 * i); column < stride; column += 32) {
      for (let pair = 0; pair < min(reaching, pairs); pair++) {
        const a = re + usize(i + 2 * pair) * stride + column;
        updateTile(a, a + stride, plane, panel, work + usize(pair) * multiplierBytes, to - from);
      }
      reaching += 2;
      panel += groupBytes;
    }
  }
}

/**
 * Planes re, im: n x n numbers, in room for padded(n) rows of padded(n) + padded(count); b: `count` x n (im behind re), x:
 * `count` x padded(n); work: 2048 bytes and 256 a column. Writes the largest number of the matrix, the smallest pivot and
 * the largest number met to `report`.
 */
export function solveUnpivoted(
  re: usize,
  im: usize,
  n: i32,
  b: usize,
  count: i32,
  x: usize,
  work: usize,
  report: usize,
): void {
  const n4 = padded(n);
  const stride = usize(8 * (n4 + padded(count)));
  layOut(re, im, n, stride, b, count);
  store<f64>(report, largestOfTriangle(re, im, n, stride));
  smallest = Infinity;
  largest = 0;
  for (let from = 0; from < n4; from += panelRows) {
    const to = min(from + panelRows, n4);
    eliminatePanel(re, im - re, n, stride, from, to);
    updateBelow(re, im - re, n4, stride, from, to, work);
  }
  backSubstitute(re, im, n, stride, count, x);
  store<f64>(report, smallest, 8);
  store<f64>(report, largest, 16);
}
