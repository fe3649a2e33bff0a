import { describe, expect, it } from "vitest";
import { nonNegativeLeastSquares } from "./nonNegativeLeastSquares";

describe("non-negative least squares", () => {
  it("solves what has an exact solution", () => {
    const rows = [
      [1, 1, 1],
      [2, 4, 1],
      [3, 9, 1],
      [10, 100, 1],
    ];
    const x = [0.5, 0.02, 3];
    const found = nonNegativeLeastSquares(
      rows,
      rows.map((row) => row.reduce((s, a, k) => s + a * x[k]!, 0)),
    );
    found.forEach((value, k) => {
      expect(value).toBeCloseTo(x[k]!, 10);
    });
  });

  it("meets the optimality conditions: no unknown at zero would like to grow, none above zero has a slope", () => {
    const rows = [
      [1, 0.2, 5],
      [0.3, 1, 1],
      [2, 1, 0.1],
      [1, -1, 1],
    ];
    const b = [1, -2, 3, 4];
    const x = nonNegativeLeastSquares(rows, b);
    const residue = rows.map((row, i) => row.reduce((s, a, k) => s + a * x[k]!, 0) - b[i]!);
    x.forEach((value, k) => {
      const slope = rows.reduce((s, row, i) => s + row[k]! * residue[i]!, 0);
      if (value > 0) expect(slope).toBeCloseTo(0, 12);
      else expect(slope).toBeGreaterThan(0);
    });
  });

  it("drops one of two like columns, and gives zeros where nothing helps", () => {
    const [first, second] = nonNegativeLeastSquares(
      [
        [1, 2],
        [2, 4],
      ],
      [3, 6],
    );
    expect(first! + 2 * second!).toBeCloseTo(3, 12);
    expect(nonNegativeLeastSquares([[1], [1]], [-1, -2])).toEqual([0]);
  });
});
