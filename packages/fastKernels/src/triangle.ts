/** Adds the upper triangle of one matrix, row-major, to that of another. */
export function addTriangle(from: Float64Array, to: Float64Array, size: number): void {
  for (let row = 0; row < size; row++) {
    for (let at = row * size + row; at < (row + 1) * size; at++) to[at]! += from[at]!;
  }
}
