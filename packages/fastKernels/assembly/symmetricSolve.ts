/**
 * Complex symmetric systems by U^T D U without pivoting: panels of 16 rows are eliminated row by row, then the rows below
 * are updated by the whole panel at once in tiles of 2 rows x 4 columns, whose 16 numbers stay in registers. Only the
 * upper triangle is read; places below the diagonal may hold anything.
 */
import { backSubstitute, largestOfRow, largestOfTriangle, layOut, padded } from "./augmentedMatrix";
import { packMultipliers, packPanel, updateTile } from "./panelUpdate";
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
