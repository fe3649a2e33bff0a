/** Inverse of a small complex matrix, column by column. */
import { type Complex, one, zero } from "./complex";
import { solveComplexSystem } from "./solveComplexSystem";

/** @returns the inverse, or null when the matrix is singular to working precision. */
export function invertComplexMatrix(matrix: readonly (readonly Complex[])[]): Complex[][] | null {
  const columns = matrix.map((_, k) =>
    solveComplexSystem(
      matrix,
      matrix.map((_row, i) => (i === k ? one : zero)),
    ),
  );
  if (columns.some((c) => c === null)) return null;
  return matrix.map((_, i) => columns.map((c) => c![i]!));
}
