/** Small dense complex systems, written to be read: the station's network has a few dozen unknowns. */
import { type Complex, divide, magnitude, multiply, subtract, zero } from "./complex";

/** A pivot smaller than this against its scaled row means the system has no unique solution in double precision. */
const smallestPivot = 1e-14;

/**
 * Solves A x = b by elimination with row scaling and partial pivoting.
 * @param matrix square, row by row; @param right one column.
 * @returns x, or null when a pivot vanishes against its row (singular to working precision).
 */
export function solveComplexSystem(
  matrix: readonly (readonly Complex[])[],
  right: readonly Complex[],
): Complex[] | null {
  const rows = matrix.map((row, i) => scaledRow(row, right[i]!));
  for (let k = 0; k < rows.length; k++) if (!eliminateBelow(rows, k)) return null;
  return backSubstitute(rows);
}

function scaledRow(row: readonly Complex[], right: Complex): Complex[] {
  const largest = Math.max(...row.map(magnitude)) || 1;
  return [...row, right].map((x) => ({ re: x.re / largest, im: x.im / largest }));
}

function eliminateBelow(rows: Complex[][], k: number): boolean {
  let pivot = k;
  for (let i = k + 1; i < rows.length; i++) {
    if (magnitude(rows[i]![k]!) > magnitude(rows[pivot]![k]!)) pivot = i;
  }
  [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
  const top = rows[k]!;
  if (magnitude(top[k]!) < smallestPivot) return false;
  for (let i = k + 1; i < rows.length; i++) {
    const row = rows[i]!;
    if (row[k]!.re === 0 && row[k]!.im === 0) continue;
    const factor = divide(row[k]!, top[k]!);
    for (let c = k; c < row.length; c++) row[c] = subtract(row[c]!, multiply(factor, top[c]!));
  }
  return true;
}

function backSubstitute(rows: readonly Complex[][]): Complex[] {
  const n = rows.length;
  const x = new Array<Complex>(n).fill(zero);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i]![n]!;
    for (let c = i + 1; c < n; c++) sum = subtract(sum, multiply(rows[i]![c]!, x[c]!));
    x[i] = divide(sum, rows[i]![i]!);
  }
  return x;
}
