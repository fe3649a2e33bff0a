/** Power as a sum over pairs of sample points. */
import type { ComplexPlane } from "../door";
import type { KernelTables, PointMoments } from "../reflected";
import { tableOf } from "./reflectedTerms";
import { lookUp } from "./tableLookUp";

const product = (a: ComplexPlane, i: number, b: ComplexPlane, j: number): number =>
  a.re[i]! * b.re[j]! + a.im[i]! * b.im[j]!;

/** See Kernels.sumPairPower. */
export function sumPairPower({ points, current: c, charge: q }: PointMoments, tables: KernelTables): number {
  const { position, direction, count } = points;
  const g = new Float64Array(8);
  let power = 0;
  for (let i = 0; i < count; i++) {
    const [tx, ty, tz] = [direction[3 * i]!, direction[3 * i + 1]!, direction[3 * i + 2]!];
    for (let j = 0; j <= i; j++) {
      const [ux, uy, uz] = [direction[3 * j]!, direction[3 * j + 1]!, direction[3 * j + 2]!];
      const dx = position[3 * i]! - position[3 * j]!;
      const dy = position[3 * i + 1]! - position[3 * j + 1]!;
      const s = position[3 * i + 2]! + position[3 * j + 2]!;
      lookUp(tableOf(points, tables, i, j), Math.sqrt(dx * dx + dy * dy), s, g);
      const moments = product(c, i, c, j);
      const mixed = (uz * product(q, i, c, j) + tz * product(c, i, q, j)) / 2;
      const pair =
        (tx * ux + ty * uy) * moments * g[0]! + product(q, i, q, j) * g[2]! + tz * uz * moments * g[4]! + mixed * g[5]!;
      power += i === j ? pair : 2 * pair;
    }
  }
  return power;
}
