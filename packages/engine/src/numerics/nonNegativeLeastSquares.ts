/** Least squares in a few unknowns that may not be negative. */

/**
 * Minimises |A x - b| over x >= 0, `rows` holding A by rows: tries every set of unknowns that are not zero, so it is exact and
 * meant for at most four unknowns. Columns are scaled first. All zero when nothing else lowers the sum.
 * Source: the optimum is the plain least-squares solution on its own support (Lawson and Hanson, Solving Least Squares
 * Problems, 1974, chapter 23).
 */
export function nonNegativeLeastSquares(rows: readonly (readonly number[])[], b: readonly number[]): number[] {
  const unknowns = rows[0]?.length ?? 0;
  const lengths = Array.from({ length: unknowns }, (_, k) => Math.hypot(...rows.map((row) => row[k] ?? 0)) || 1);
  const scaled = rows.map((row) => row.map((x, k) => x / (lengths[k] ?? 1)));
  let best = { x: new Array<number>(unknowns).fill(0), square: sum(b, (y) => y * y) };
  for (let set = 1; set < 2 ** unknowns; set++) {
    const members = Array.from({ length: unknowns }, (_, k) => k).filter((k) => (set >> k) & 1);
    const part = leastSquares(scaled, b, members);
    if (part === null || part.some((x) => x < 0)) continue;
    const square = sum(scaled, (row, i) => (members.reduce((s, k, m) => s + row[k]! * part[m]!, 0) - b[i]!) ** 2);
    if (square >= best.square) continue;
    const x = new Array<number>(unknowns).fill(0);
    members.forEach((k, m) => {
      x[k] = part[m]! / lengths[k]!;
    });
    best = { x, square };
  }
  return best.x;
}

const sum = <T>(items: readonly T[], of: (item: T, index: number) => number): number =>
  items.reduce((total, item, index) => total + of(item, index), 0);

/** Normal equations on the given columns by elimination with pivots; null when they are dependent to rounding. */
function leastSquares(
  rows: readonly (readonly number[])[],
  b: readonly number[],
  members: readonly number[],
): number[] | null {
  const matrix = members.map((k) => [
    ...members.map((m) => sum(rows, (row) => row[k]! * row[m]!)),
    sum(rows, (row, i) => row[k]! * b[i]!),
  ]);
  const size = members.length;
  for (let column = 0; column < size; column++) {
    const pivot = matrix.slice(column).reduce((p, row) => (Math.abs(row[column]!) > Math.abs(p[column]!) ? row : p));
    if (Math.abs(pivot[column]!) < 1e-12) return null;
    const at = matrix.indexOf(pivot);
    [matrix[column], matrix[at]] = [matrix[at]!, matrix[column]!];
    for (const row of matrix) {
      if (row === pivot) continue;
      const factor = row[column]! / pivot[column]!;
      for (let k = column; k <= size; k++) row[k]! -= factor * pivot[k]!;
    }
  }
  return matrix.map((row, k) => row[size]! / row[k]!);
}
