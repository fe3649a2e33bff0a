/** Adds numbers of pairs of element ends to the unknowns that live there (Scatter of the door), upper triangle of the matrix. */

/** Where unknowns live (Scatter of the door), and the matrix. */
let first: usize = 0;
let unknown: usize = 0;
let sign: usize = 0;
let n: i32 = 0;
let matrixRe: usize = 0;
let matrixIm: usize = 0;

export function scatterInto(ends: usize, unknowns: usize, signs: usize, size: i32, re: usize, im: usize): void {
  first = ends;
  unknown = unknowns;
  sign = signs;
  n = size;
  matrixRe = re;
  matrixIm = im;
}

/** Adds one number to every pair of unknowns on two element ends, upper triangle. */
export function scatter(testEnd: i32, sourceEnd: i32, same: bool, re: f64, im: f64): void {
  const aEnd = load<i32>(first + usize(4 * testEnd), 4);
  const bStart = load<i32>(first + usize(4 * sourceEnd));
  const bEnd = load<i32>(first + usize(4 * sourceEnd), 4);
  for (let a = load<i32>(first + usize(4 * testEnd)); a < aEnd; a++) {
    const row = load<i32>(unknown + usize(4 * a));
    for (let b = bStart; b < bEnd; b++) {
      const column = load<i32>(unknown + usize(4 * b));
      if (same && row > column) continue;
      const twice: f64 = !same && row === column ? 2 : 1;
      const weight = twice * load<f64>(sign + usize(8 * a)) * load<f64>(sign + usize(8 * b));
      const at: usize = 8 * (usize(min(row, column)) * usize(n) + usize(max(row, column)));
      store<f64>(matrixRe + at, load<f64>(matrixRe + at) + weight * re);
      store<f64>(matrixIm + at, load<f64>(matrixIm + at) + weight * im);
    }
  }
}
