import { describe, expect, it } from "vitest";
import type { SplitMatrix, SplitVectors } from "../door";
import { solveByLu } from "./pivotedSolve";
import { solveSymmetric } from "./symmetricSolve";

/** Reproducible numbers in -1..1. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  };
}

function symmetric(n: number, seed: number, diagonal: number): SplitMatrix {
  const next = numbers(seed);
  const re = new Float64Array(n * n);
  const im = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let k = i; k < n; k++) {
      re[i * n + k] = re[k * n + i] = next() + (i === k ? diagonal : 0);
      im[i * n + k] = im[k * n + i] = next();
    }
  }
  return { size: n, re, im };
}

const rightSides = (n: number, count: number): SplitVectors => {
  const next = numbers(7);
  return {
    count,
    length: n,
    re: Float64Array.from({ length: n * count }, next),
    im: Float64Array.from({ length: n * count }, next),
  };
};

function residual(a: SplitMatrix, x: SplitVectors, b: SplitVectors): number {
  const n = a.size;
  let worst = 0;
  for (let side = 0; side < b.count; side++) {
    for (let i = 0; i < n; i++) {
      let re = -b.re[side * n + i]!;
      let im = -b.im[side * n + i]!;
      for (let k = 0; k < n; k++) {
        re += a.re[i * n + k]! * x.re[side * n + k]! - a.im[i * n + k]! * x.im[side * n + k]!;
        im += a.re[i * n + k]! * x.im[side * n + k]! + a.im[i * n + k]! * x.re[side * n + k]!;
      }
      worst = Math.max(worst, Math.hypot(re, im));
    }
  }
  return worst;
}

describe("symmetric solve", () => {
  it("solves several right-hand sides without pivoting and leaves its input alone", () => {
    const a = symmetric(40, 1, 12);
    const before = a.re.slice();
    const b = rightSides(40, 3);
    const solved = solveSymmetric(a, b);
    expect(solved.method).toBe("LDL^T without pivoting");
    expect(residual(a, solved.vectors, b)).toBeLessThan(1e-12);
    expect(a.re).toEqual(before);
  });
  it("falls back to pivoting when a pivot vanishes, and says so", () => {
    const a = symmetric(12, 3, 0);
    a.re[0] = 0;
    a.im[0] = 0;
    const b = rightSides(12, 2);
    const solved = solveSymmetric(a, b);
    expect(solved.method).toBe("LU with partial pivoting");
    expect(residual(a, solved.vectors, b)).toBeLessThan(1e-12);
  });
  it("gives the same by both factorisations, and refuses a singular matrix", () => {
    const a = symmetric(25, 5, 8);
    const b = rightSides(25, 1);
    const first = solveSymmetric(a, b).vectors;
    const second = solveByLu(a, b).vectors;
    for (let i = 0; i < 25; i++) expect(Math.abs(first.re[i]! - second.re[i]!)).toBeLessThan(1e-13);
    const zero = { size: 2, re: new Float64Array(4), im: new Float64Array(4) };
    expect(() => solveByLu(zero, rightSides(2, 1))).toThrow("singular");
  });
});
