/** The dense solve at several sizes: the engine's kernels against the textbook and, where present, LAPACK. */
import { referenceKernels } from "@feedpath/engine";
import type { Lapack } from "./baseline/lapack";
import { type DenseSystem, textbookLu } from "./baseline/textbookLu";
import type { Case } from "./interleaved";

/** A symmetric matrix with a heavy diagonal, from a fixed sequence: moment matrices are like that. */
export function symmetricSystem(size: number): DenseSystem {
  let state = 12345;
  const next = () => {
    state = (1103515245 * state + 12345) % 2147483648;
    return state / 1073741824 - 1;
  };
  const matrix = new Float64Array(2 * size * size);
  for (let i = 0; i < size; i++) {
    for (let j = i; j < size; j++) {
      const [re, im] = [next(), next() + (i === j ? 2 * size : 0)];
      for (const at of [i * size + j, j * size + i]) {
        matrix[2 * at] = re;
        matrix[2 * at + 1] = im;
      }
    }
  }
  return { size, matrix, right: new Float64Array(2 * size).map((_, i) => (i % 2 === 0 ? 1 : 0)) };
}

function engineCase(system: DenseSystem): Case {
  const { size, matrix, right } = system;
  const split = (numbers: Float64Array, part: 0 | 1) =>
    Float64Array.from({ length: numbers.length / 2 }, (_, i) => numbers[2 * i + part]!);
  const [re, im, rightRe] = [split(matrix, 0), split(matrix, 1), split(right, 0)];
  return {
    name: "engine",
    run: () => {
      referenceKernels.solveSymmetric(
        { size, re: re.slice(), im: im.slice() },
        { count: 1, length: size, re: rightRe.slice(), im: new Float64Array(size) },
      );
      return null;
    },
  };
}

export function solveCases(size: number, lapack: Lapack | null): readonly Case[] {
  const system = symmetricSystem(size);
  const cases: Case[] = [
    {
      name: "textbook",
      run: () => {
        textbookLu(system);
        return null;
      },
    },
    engineCase(system),
  ];
  if (lapack) {
    cases.push({ name: "zgesv", run: () => lapack.time("zgesv", size) });
    cases.push({ name: "zsysv", run: () => lapack.time("zsysv", size) });
  }
  return cases;
}
