/** Adds what the soil reflects to the moment matrix, by way of the sample points. */
import type { SplitMatrix } from "../door";
import type { KernelPoints, KernelTable, KernelTables, PointProjection, ReflectedTerms } from "../reflected";
import { lookUp } from "./tableLookUp";

/** The table that holds the kernels between two points. */
export function tableOf({ low }: KernelPoints, tables: KernelTables, p: number, q: number): KernelTable {
  const table = low[p] && low[q] ? tables.lessImages : tables.whole;
  if (!table) throw new RangeError(`no table was given for the points ${p} and ${q}`);
  return table;
}

/** Kernels between all pairs of points: current-current and charge-charge, full symmetric matrices. */
function pointMatrices(points: KernelPoints, tables: KernelTables): { current: SplitMatrix; charge: SplitMatrix } {
  const { position, direction, count: n } = points;
  const zero = (): SplitMatrix => ({ size: n, re: new Float64Array(n * n), im: new Float64Array(n * n) });
  const current = zero();
  const charge = zero();
  const g = new Float64Array(8);
  for (let p = 0; p < n; p++) {
    const [tx, ty, tz] = [direction[3 * p]!, direction[3 * p + 1]!, direction[3 * p + 2]!];
    for (let q = p; q < n; q++) {
      const [ux, uy, uz] = [direction[3 * q]!, direction[3 * q + 1]!, direction[3 * q + 2]!];
      const dx = position[3 * p]! - position[3 * q]!;
      const dy = position[3 * p + 1]! - position[3 * q + 1]!;
      const s = position[3 * p + 2]! + position[3 * q + 2]!;
      lookUp(tableOf(points, tables, p, q), Math.sqrt(dx * dx + dy * dy), s, g);
      const level = tx * ux + ty * uy;
      const upright = tz * uz;
      const cross = (tz * ux - tx * uz) * dx + (tz * uy - ty * uz) * dy;
      const re = level * g[0]! + upright * g[4]! + cross * g[6]!;
      const im = level * g[1]! + upright * g[5]! + cross * g[7]!;
      current.re[p * n + q] = current.re[q * n + p] = re;
      current.im[p * n + q] = current.im[q * n + p] = im;
      charge.re[p * n + q] = charge.re[q * n + p] = g[2]!;
      charge.im[p * n + q] = charge.im[q * n + p] = g[3]!;
    }
  }
  return { current, charge };
}

/** Adds j factor P^T G P to the upper triangle; `weights` are the column values of P. */
function addProjected(
  { first, point }: PointProjection,
  weights: Float64Array,
  g: SplitMatrix,
  factor: number,
  matrix: SplitMatrix,
) {
  const n = matrix.size;
  const m = g.size;
  const re = new Float64Array(m);
  const im = new Float64Array(m);
  for (let column = 0; column < n; column++) {
    re.fill(0);
    im.fill(0);
    for (let a = first[column]!; a < first[column + 1]!; a++) {
      const from = point[a]! * m;
      const w = factor * weights[a]!;
      for (let p = 0; p < m; p++) {
        re[p]! -= w * g.im[from + p]!;
        im[p]! += w * g.re[from + p]!;
      }
    }
    for (let row = 0; row <= column; row++) {
      let sumRe = 0;
      let sumIm = 0;
      for (let a = first[row]!; a < first[row + 1]!; a++) {
        sumRe += weights[a]! * re[point[a]!]!;
        sumIm += weights[a]! * im[point[a]!]!;
      }
      matrix.re[row * n + column]! += sumRe;
      matrix.im[row * n + column]! += sumIm;
    }
  }
}

/** See Kernels.addReflectedTerms. */
export function addReflectedTerms(
  { points, tables, vectorFactor, scalarFactor }: ReflectedTerms,
  matrix: SplitMatrix,
): void {
  const { current, charge } = pointMatrices(points, tables);
  addProjected(points, points.current, current, vectorFactor, matrix);
  addProjected(points, points.charge, charge, -scalarFactor, matrix);
}
