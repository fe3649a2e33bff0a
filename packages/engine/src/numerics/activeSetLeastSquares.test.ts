import { describe, expect, it } from "vitest";
import { activeSetLeastSquares } from "./activeSetLeastSquares";
import { nonNegativeLeastSquares } from "./nonNegativeLeastSquares";

const columnsOf = (...rows: readonly (readonly number[])[]): Float64Array[] =>
  rows[0]!.map((_, k) => Float64Array.from(rows, (row) => row[k]!));

describe("least squares without negative unknowns, by active sets", () => {
  it("agrees with trying every set of unknowns", () => {
    // A fixed sequence that looks random: the fractional parts of multiples of the golden section.
    let n = 0;
    const next = (): number => (++n * 0.6180339887498949) % 1;
    for (let round = 0; round < 40; round++) {
      const rows = Array.from({ length: 6 }, () => Array.from({ length: 4 }, () => next() - 0.3));
      const b = Array.from({ length: 6 }, () => next() - 0.5);
      const expected = nonNegativeLeastSquares(rows, b);
      const found = activeSetLeastSquares(columnsOf(...rows), Float64Array.from(b));
      found.forEach((x, k) => {
        expect(x).toBeCloseTo(expected[k]!, 9);
      });
    }
  });

  it("finds a sum of columns that are nearly alike, none of it negative", () => {
    const poles = Array.from({ length: 12 }, (_, k) => 10 ** (k / 3));
    const omegas = Array.from({ length: 40 }, (_, i) => 10 ** (i / 10));
    const column = (p: number) => Float64Array.from(omegas, (w) => (w * w) / (w * w + p * p));
    const b = Float64Array.from(omegas, (w) => Math.sqrt(w));
    const relative = (of: Float64Array) => of.map((x, i) => x / b[i]!);
    const columns = poles.map((p) => relative(column(p)));
    const found = activeSetLeastSquares(
      columns,
      b.map(() => 1),
    );
    for (const x of found) expect(x).toBeGreaterThanOrEqual(0);
    omegas.forEach((_, i) => {
      const sum = found.reduce((s, x, k) => s + x * columns[k]![i]!, 0);
      if (i > 4 && i < 36) expect(sum).toBeCloseTo(1, 1);
    });
  });

  it("gives nothing where every column points away", () => {
    expect([...activeSetLeastSquares(columnsOf([1, 2], [1, 1]), Float64Array.of(-1, -1))]).toEqual([0, 0]);
  });
});
