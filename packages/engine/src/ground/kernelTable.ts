/**
 * Reflected kernels as tables: smooth once the distance R to the image, its phase and (for the cross kernel) rho are
 * taken out. For each band of height sums s from s0 on: Chebyshev in u = ln(1 + (rho/s0)^2)/2, in pieces halved until
 * they resolve, times Chebyshev in ln s, or times columns for the few height sums there are.
 */

import { lookUp } from "../kernels/reference/tableLookUp";
import type { KernelTable as Table, TableBand } from "../kernels/reflected";
import { planesOf } from "./smoothValues";
import type { Reach } from "./spectralNodes";
import { bandsOf, type SumRange } from "./tableBands";
import { type Axes, type GridSampler, type Piece, samplePieces, sizesOf } from "./tablePieces";

const termsInU = 16;
/** Tried in turn until the s axis is resolved; what the last leaves unresolved is reported. */
const termsInS = [8, 12, 18, 32];
/** Pieces of the u axis to begin with, and the shortest they are halved to. */
const firstPiece = 3;
const shortestPiece = 1 / 16;
/** Error allowed, relative to the largest value of the same kernel (times distance) in the band. */
const tolerance = 3e-7;

export interface KernelTable extends Table {
  /** See the look-up of the kernels' readable twin. */
  readonly lookUp: (rho: number, s: number, out: Float64Array) => void;
  /** Largest share of a kernel that its polynomials leave unresolved; 3e-7 is aimed at. */
  readonly unresolved: number;
}

/** Tables of what `sample` says inside its reach; `k` (rad/m) is the phase constant taken out of them. */
export function buildKernelTable(k: number, reach: Reach, sample: GridSampler): KernelTable {
  const built = bandsOf(reach).map((range) => buildBand(k, reach, range, sample));
  const table = { wavenumber: k, steep: reach.steep, bands: built.map(({ band }) => band) };
  return {
    ...table,
    lookUp: (rho, s, out) => lookUp(table, rho, s, out),
    unresolved: Math.max(...built.map(({ unresolved }) => unresolved)),
  };
}

interface Built {
  readonly band: TableBand;
  readonly unresolved: number;
}

function buildBand(k: number, reach: Reach, range: SumRange, sample: GridSampler): Built {
  const { largestDistance, steep } = reach;
  const column = largestDistance < 1e-6 * range.from;
  const length = column ? 1 : 0.5 * Math.log1p((Math.max(largestDistance, 0.01 * range.from) / range.from) ** 2);
  const common = { k, steep, range, length, termsInU: column ? 1 : termsInU };
  const choices = range.sums ? [range.sums.length] : termsInS;
  for (const choice of choices) {
    const axes = { ...common, termsInS: choice };
    const built = resolve(axes, sample, choice !== choices.at(-1));
    if (built) return built;
  }
  throw new Error("kernel table: the last choice of terms is always taken");
}

/** Samples the u axis in pieces, halved until they resolve; gives up (null) where the s axis does not and must. */
function resolve(axes: Axes, sample: GridSampler, mustResolveS: boolean): Built | null {
  const count = axes.termsInU === 1 ? 1 : Math.ceil(axes.length / firstPiece);
  const first = Array.from({ length: count }, (_, i) => [i, i + 1].map((e) => (e * axes.length) / count));
  let open = samplePieces(axes, first, sample);
  const sizes = sizesOf(open, axes);
  const done: Piece[] = [];
  let worst = 0;
  while (open.length > 0) {
    const halves: number[][] = [];
    for (const piece of open) {
      const left = piece.unresolved(sizes);
      worst = Math.max(worst, left.inS);
      if (mustResolveS && left.inS > tolerance) return null;
      const { from, to } = piece;
      if (left.inU <= tolerance || to - from <= shortestPiece) {
        worst = Math.max(worst, left.inU);
        done.push(piece);
      } else halves.push([from, (from + to) / 2], [(from + to) / 2, to]);
    }
    open = samplePieces(axes, halves, sample);
  }
  done.sort((a, b) => a.from - b.from);
  return { band: bandOf(axes, done), unresolved: worst };
}

function bandOf({ range, length, steep, ...axes }: Axes, pieces: readonly Piece[]): TableBand {
  const size = planesOf(steep) * axes.termsInU * axes.termsInS;
  const coefficients = new Float64Array(size * pieces.length);
  pieces.forEach((piece, p) => {
    coefficients.set(piece.coefficients, p * size);
  });
  return {
    ...range,
    range: length,
    edges: Float64Array.of(...pieces.map((piece) => piece.from), length),
    termsInU: axes.termsInU,
    termsInS: axes.termsInS,
    coefficients,
  };
}
