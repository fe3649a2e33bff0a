/**
 * The mesh of doubled elements, obtained from the fine one by restriction: a coarse hat is the fine hat on the same
 * node plus half of the hats on the midpoints of its elements, except beside gaps, where midpoints stay unknowns. The difference of both solutions measures the error.
 */
import type { SplitMatrix } from "../kernels/door";
import type { Mesh } from "./mesh";

/** Column lists of the restriction: coarse unknown c is the sum of `weight` times fine `unknown` from first[c] on. */
export interface Restriction {
  readonly size: number;
  readonly first: Int32Array;
  readonly unknown: Int32Array;
  readonly weight: Float64Array;
}

export function buildRestriction(mesh: Mesh): Restriction {
  const { scatter, coarse } = mesh;
  const place = new Map([...coarse].map((unknown, c) => [unknown, c]));
  const lists = [...coarse].map((unknown) => [{ unknown, weight: 1 }]);
  for (let end = 0; end < 2 * mesh.elements.count; end++) {
    const other = end ^ 1;
    const middle = scatter.first[other]!;
    for (let i = scatter.first[end]!; i < scatter.first[end + 1]!; i++) {
      const c = place.get(scatter.unknown[i]!);
      const free = middle === scatter.first[other + 1]!;
      if (c === undefined || free || place.has(scatter.unknown[middle]!)) continue;
      lists[c]!.push({ unknown: scatter.unknown[middle]!, weight: scatter.sign[i]! * scatter.sign[middle]! * 0.5 });
    }
  }
  const first = new Int32Array(lists.length + 1);
  lists.forEach((list, c) => {
    first[c + 1] = first[c]! + list.length;
  });
  const all = lists.flat();
  return {
    size: lists.length,
    first,
    unknown: Int32Array.from(all, (x) => x.unknown),
    weight: Float64Array.from(all, (x) => x.weight),
  };
}

/** R^T Z R, upper triangle from upper triangle. */
export function restrictMatrix(matrix: SplitMatrix, restriction: Restriction): SplitMatrix {
  const { size, first, unknown, weight } = restriction;
  const n = matrix.size;
  const re = new Float64Array(size * size);
  const im = new Float64Array(size * size);
  for (let p = 0; p < size; p++) {
    for (let q = p; q < size; q++) {
      let sumRe = 0;
      let sumIm = 0;
      for (let a = first[p]!; a < first[p + 1]!; a++) {
        for (let b = first[q]!; b < first[q + 1]!; b++) {
          const row = unknown[a]!;
          const column = unknown[b]!;
          const index = row < column ? row * n + column : column * n + row;
          const w = weight[a]! * weight[b]!;
          sumRe += w * matrix.re[index]!;
          sumIm += w * matrix.im[index]!;
        }
      }
      re[p * size + q] = sumRe;
      im[p * size + q] = sumIm;
    }
  }
  return { size, re, im };
}
