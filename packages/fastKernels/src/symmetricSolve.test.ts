import { type Kernels, referenceKernels } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";

type Matrix = Parameters<Kernels["solveSymmetric"]>[0];
type Vectors = Parameters<Kernels["solveSymmetric"]>[1];

/** Reproducible numbers in -1..1. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  };
}

/** The lower triangle holds what must not be read. */
function symmetric(n: number, seed: number, diagonal: number): Matrix {
  const next = numbers(seed);
  const re = new Float64Array(n * n).fill(Number.NaN);
  const im = new Float64Array(n * n).fill(Number.NaN);
  for (let i = 0; i < n; i++) {
    for (let k = i; k < n; k++) {
      re[i * n + k] = next() + (i === k ? diagonal : 0);
      im[i * n + k] = next();
    }
  }
  return { size: n, re, im };
}

const sidesOf = (n: number, count: number): Vectors => {
  const next = numbers(7 + n);
  const values = () => Float64Array.from({ length: n * count }, next);
  return { count, length: n, re: values(), im: values() };
};

const largest = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, x, i) => Math.max(most, Math.abs(x), Math.abs(b[i]!)), 0);

const differenceOf = (a: Vectors, b: Vectors): number =>
  largest(
    a.re.map((x, i) => x - b.re[i]!),
    a.im.map((x, i) => x - b.im[i]!),
  ) / largest(b.re, b.im);

const twins = { fast: fastKernels, readable: referenceKernels };
const both = (matrix: Matrix, sides: Vectors) =>
  [fastKernels, referenceKernels].map((twin) => twin.solveSymmetric(matrix, sides)) as [
    ReturnType<Kernels["solveSymmetric"]>,
    ReturnType<Kernels["solveSymmetric"]>,
  ];

describe("fast symmetric solve", () => {
  it("is that of the readable twin for every size up to 130 and one to six right-hand sides", () => {
    for (let n = 1; n <= 130; n++) {
      // The diagonal outweighs its row (entries below sqrt 2): norm up to 4.2 n, inverse's at most 1/(3 n - 1.5 n), so the
      // condition is below 3; elimination without pivoting then errs by less than 3 n eps times it (Higham 2002, 9.2).
      const matrix = symmetric(n, n, 3 * n);
      const sides = sidesOf(n, 1 + (n % 6));
      const [ours, theirs] = both(matrix, sides);
      expect(ours.method).toBe("LDL^T without pivoting");
      expect(differenceOf(ours.vectors, theirs.vectors)).toBeLessThan(2 * 3 * n * 3 * 2.2e-16 + 1e-15);
      expect(Math.abs(ours.growth - theirs.growth)).toBeLessThan(1e-13);
      expect(ours.residual).toBeLessThan(3 * n * 2.2e-16 + 1e-15);
    }
  });
  it("leaves its operands alone", () => {
    const matrix = symmetric(21, 1, 60);
    const sides = sidesOf(21, 2);
    const before = [matrix.re, matrix.im, sides.re, sides.im].map((x) => x.slice());
    fastKernels.solveSymmetric(matrix, sides);
    expect([matrix.re, matrix.im, sides.re, sides.im]).toEqual(before);
  });
});

/** Places (row, column, re) of a diagonal matrix 8 + 2j changed. */
function changed(n: number, places: readonly (readonly [number, number, number])[]): Matrix {
  const matrix = { size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) };
  for (let i = 0; i < n; i++) {
    matrix.re[i * n + i] = 8;
    matrix.im[i * n + i] = 2;
  }
  for (const [row, column, value] of places) {
    matrix.re[row * n + column] = value;
    matrix.im[row * n + column] = 0;
  }
  return matrix;
}

const exchangeAt = (i: number, pivot: number) =>
  [
    [i, i, pivot],
    [i, i + 1, 1],
    [i + 1, i + 1, pivot],
  ] as const;

describe("what the watch does, in both twins", () => {
  it.each([
    ["a pivot that vanishes", changed(50, exchangeAt(20, 0))],
    ["a pivot that vanishes at the seam of two panels", changed(33, exchangeAt(15, 0))],
    ["a pivot below the bound", changed(18, exchangeAt(4, 1e-11))],
    ["growth: a small pivot, above its bound", changed(40, exchangeAt(30, 1e-4))],
    ["two unknowns that only meet", changed(2, exchangeAt(0, 0))],
  ])("turns to pivoting for %s", (_, matrix) => {
    const sides = sidesOf(matrix.size, 3);
    const [ours, theirs] = both(matrix, sides);
    for (const solved of [ours, theirs]) {
      expect(solved.method).toBe("LU with partial pivoting");
      expect(solved.residual).toBeLessThan(1e-15);
      expect(solved.growth).toBeLessThanOrEqual(1);
    }
    // Blocks of condition 1 and a few digits' difference of scale.
    expect(differenceOf(ours.vectors, theirs.vectors)).toBeLessThan(1e-14);
  });
  it("agrees on random indefinite systems, whichever way they were solved", () => {
    const methods = new Set<string>();
    for (let n = 2; n <= 80; n++) {
      const matrix = symmetric(n, 100 + n, 0);
      // One pivot of about 1e-3 and less on some: growth beyond 100.
      if (n % 3 === 0) matrix.re[0] = matrix.im[0] = 1e-4;
      const sides = sidesOf(n, 2);
      const [ours, theirs] = both(matrix, sides);
      methods.add(ours.method);
      expect(ours.method).toBe(theirs.method);
      // Backward stable to residual * norm: the solutions differ by the condition times that, measured by a third solve.
      const inverse = referenceKernels.solveSymmetric(matrix, unitVectors(n)).vectors;
      const condition = rowNorm(inverse.re, inverse.im, n) * rowNorm(matrix.re, matrix.im, n);
      const bound = condition * (ours.residual + theirs.residual + 4.4e-16);
      expect(differenceOf(ours.vectors, theirs.vectors)).toBeLessThan(2 * bound);
    }
    expect(methods.size).toBe(2);
  });
  it.each(["fast", "readable"] as const)("refuses what has no solution, with the same words (%s)", (twin) => {
    const solve = (matrix: Matrix) => () => twins[twin].solveSymmetric(matrix, sidesOf(matrix.size, 1));
    expect(solve(changed(1, [[0, 0, 0]]))).toThrow("the system of 1 equations is singular at equation 1");
    // Column 4 is empty: no row below can serve.
    expect(solve(changed(9, [[3, 3, 0]]))).toThrow("the system of 9 equations is singular at equation 4");
    expect(solve(changed(6, [[2, 2, Number.NaN]]))).toThrow("the system of 6 equations is singular at equation 3");
  });
});

function unitVectors(n: number): Vectors {
  const re = new Float64Array(n * n);
  for (let i = 0; i < n; i++) re[i * n + i] = 1;
  return { count: n, length: n, re, im: new Float64Array(n * n) };
}

/** Largest sum of |re| + |im| over a row; entries that are not numbers count as their mirror image. */
function rowNorm(re: Float64Array, im: Float64Array, n: number): number {
  let most = 0;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const at = Number.isNaN(re[i * n + k]!) ? k * n + i : i * n + k;
      sum += Math.abs(re[at]!) + Math.abs(im[at]!);
    }
    most = Math.max(most, sum);
  }
  return most;
}
