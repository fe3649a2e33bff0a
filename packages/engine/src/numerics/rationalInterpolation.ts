/**
 * Several functions of one real variable that share their poles, by barycentric rational interpolation in the manner of AAA
 * (Nakatsukasa, Sete and Trefethen, SIAM J. Sci. Comput. 40, 2018): through every second sample exactly, through the others
 * as nearly as common weights allow.
 */
import { type Complex, complex } from "./complex";
import { solveComplexSystem } from "./solveComplexSystem";

export interface RationalSample {
  readonly x: number;
  /** Values of all functions, re and im side by side. */
  readonly values: Float64Array;
}

/** Values of all functions at x, re and im side by side. */
export type RationalFit = (x: number) => Float64Array;

/** Share of the normal matrix added to its diagonal, which has to have an inverse: fits are good to its root, 3e-7. */
const regular = 1e-13;
const iterations = 4;

/**
 * At least one sample; all with as many values, no two at one x. Values of all functions should be of one size. Weights come
 * from the first `deciding` numbers of each sample, all when left out; the others take the same.
 */
export function fitRational(samples: readonly RationalSample[], deciding = Number.POSITIVE_INFINITY): RationalFit {
  const ordered = [...samples].sort((a, b) => a.x - b.x);
  const support = ordered.filter((_, i) => i % 2 === 0);
  const others = ordered.filter((_, i) => i % 2 === 1);
  const weights = others.length === 0 ? [complex(1)] : smallestVector(normalMatrix(support, others, deciding));
  return (x) => evaluate(support, weights, x);
}

/** L^H L of the Loewner matrix L, whose rows are other samples and functions, its columns the support. */
function normalMatrix(
  support: readonly RationalSample[],
  others: readonly RationalSample[],
  deciding: number,
): Complex[][] {
  const slopes = others.map((other) =>
    support.map(({ x, values }) =>
      values.subarray(0, deciding).map((value, i) => (other.values[i]! - value) / (other.x - x)),
    ),
  );
  return support.map((_, j) =>
    support.map((_, k) => {
      let re = 0;
      let im = 0;
      for (const row of slopes) {
        const [a, b] = [row[j]!, row[k]!];
        for (let i = 0; i < a.length; i += 2) {
          re += a[i]! * b[i]! + a[i + 1]! * b[i + 1]!;
          im += a[i]! * b[i + 1]! - a[i + 1]! * b[i]!;
        }
      }
      return { re, im };
    }),
  );
}

/** The vector that a Hermitian matrix without negative eigenvalues shortens most, by inverse iteration. */
function smallestVector(matrix: readonly (readonly Complex[])[]): Complex[] {
  const trace = matrix.reduce((sum, row, i) => sum + row[i]!.re, 0);
  const shifted = matrix.map((row, i) => row.map((x, k) => (i === k ? complex(x.re + regular * trace, x.im) : x)));
  let vector = matrix.map((_, i) => complex(i % 2 === 0 ? 1 : -1));
  for (let n = 0; n < iterations; n++) {
    const next = solveComplexSystem(shifted, vector);
    if (next === null) return vector;
    const size = Math.max(...next.map(({ re, im }) => Math.hypot(re, im)));
    vector = next.map(({ re, im }) => complex(re / size, im / size));
  }
  return vector;
}

function evaluate(support: readonly RationalSample[], weights: readonly Complex[], x: number): Float64Array {
  const exact = support.find((sample) => sample.x === x);
  if (exact) return exact.values.slice();
  const sums = new Float64Array(support[0]!.values.length);
  let [re, im] = [0, 0];
  support.forEach(({ x: at, values }, j) => {
    const [a, b] = [weights[j]!.re / (x - at), weights[j]!.im / (x - at)];
    re += a;
    im += b;
    for (let i = 0; i < sums.length; i += 2) {
      sums[i]! += a * values[i]! - b * values[i + 1]!;
      sums[i + 1]! += a * values[i + 1]! + b * values[i]!;
    }
  });
  const size = re * re + im * im;
  for (let i = 0; i < sums.length; i += 2) {
    const [a, b] = [sums[i]!, sums[i + 1]!];
    sums[i] = (a * re + b * im) / size;
    sums[i + 1] = (b * re - a * im) / size;
  }
  return sums;
}
