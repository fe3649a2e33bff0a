/** Sample points and currents between reduced unknowns and all of the mesh. */
import type { SplitVectors } from "../kernels/door";
import type { SamplePoints } from "./samplePoints";
import { membersOf, type SymmetricUnknowns } from "./symmetricUnknowns";

/** The projection of the reduced unknowns: those of their members, one after another. */
export function reducedPoints(points: SamplePoints, symmetric: SymmetricUnknowns): SamplePoints {
  const first = new Int32Array(symmetric.size + 1);
  const point: number[] = [];
  const current: number[] = [];
  const charge: number[] = [];
  for (const [a, members] of membersOf(symmetric).entries()) {
    for (const { unknown, sign } of members) {
      for (let i = points.first[unknown]!; i < points.first[unknown + 1]!; i++) {
        point.push(points.point[i]!);
        current.push(sign * points.current[i]!);
        charge.push(sign * points.charge[i]!);
      }
    }
    first[a + 1] = point.length;
  }
  return {
    ...points,
    first,
    point: Int32Array.from(point),
    current: Float64Array.from(current),
    charge: Float64Array.from(charge),
  };
}

/** Currents of all unknowns from those of the reduced ones, into vectors `into`. */
export function spread(
  from: SplitVectors,
  symmetric: SymmetricUnknowns,
  into: readonly number[],
  out: SplitVectors,
): void {
  const { first, unknown, weight } = symmetric;
  into.forEach((vector, v) => {
    for (let u = 0; u < out.length; u++) {
      for (let a = first[u]!; a < first[u + 1]!; a++) {
        out.re[vector * out.length + u]! += weight[a]! * from.re[v * from.length + unknown[a]!]!;
        out.im[vector * out.length + u]! += weight[a]! * from.im[v * from.length + unknown[a]!]!;
      }
    }
  });
}
