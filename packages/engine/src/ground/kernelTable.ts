/**
 * Reflected kernels as tables: smooth once the distance R to the image, its phase and (for the cross kernel) rho are
 * taken out. Chebyshev in u = ln(R/s)/ln(Rmax/s), in pieces halved until they resolve, times Chebyshev in ln s.
 */
import { chebyshevPoints, lagrangeRow } from "../numerics/barycentric";
import type { Reach } from "./spectrum";
import { type Axes, type Piece, type PlaceSampler, rangeOf, samplePieces } from "./tablePieces";

const nodesInU = 12;
/** Tried in turn until the s axis is resolved; what the last leaves unresolved is reported. */
const nodesInS = [8, 12, 18, 32];

export interface KernelTable {
  /** Writes re, im of G_xx, K, G_zz (1/m) and T/rho (1/m^2) at horizontal distance rho and height sum s (m). */
  readonly lookUp: (rho: number, s: number, out: Float64Array) => void;
  /** Largest share of a kernel that its polynomials leave unresolved; 3e-7 is aimed at. */
  readonly unresolved: number;
}

const single = { points: new Float64Array(1), weights: new Float64Array([1]) };

/** Tables of what `sample` says inside its reach; `k` (rad/m) is the phase constant taken out of them. */
export function buildKernelTable(k: number, reach: Reach, sample: PlaceSampler): KernelTable {
  const flat = reach.largestSum / reach.smallestSum < 1 + 1e-9;
  const column = reach.largestDistance < 1e-6 * reach.smallestSum;
  const u = column ? { ...single, points: new Float64Array([-1]) } : chebyshevPoints(nodesInU);
  const choices = flat ? [1] : nodesInS;
  for (const nodes of choices) {
    const axes = { reach, k, u, lnS: flat ? single : chebyshevPoints(nodes) };
    const sampled = samplePieces(axes, sample, nodes !== choices.at(-1));
    if (sampled) return { lookUp: reader(axes, sampled.pieces, flat, column), unresolved: sampled.unresolved };
  }
  throw new Error("kernel table: the last choice of nodes is always taken");
}

function reader(axes: Axes, pieces: readonly Piece[], flat: boolean, column: boolean): KernelTable["lookUp"] {
  const { reach, k, u, lnS } = axes;
  const uRow = new Float64Array(u.points.length).fill(1);
  const sRow = new Float64Array(lnS.points.length).fill(1);
  const logSpan = Math.log(reach.largestSum / reach.smallestSum);
  let lastSum = 0;
  let range = 1;
  return (rho, s, out) => {
    if (s !== lastSum) {
      lastSum = s;
      range = rangeOf(reach, s);
    }
    const r = Math.sqrt(rho * rho + s * s);
    const at = Math.min(1, Math.max(0, Math.log(r / s) / range));
    let piece = pieces[0]!;
    for (let p = 1; p < pieces.length && at > piece.to; p++) piece = pieces[p]!;
    if (!column) lagrangeRow(u.points, u.weights, (2 * (at - piece.from)) / (piece.to - piece.from) - 1, uRow);
    if (!flat) lagrangeRow(lnS.points, lnS.weights, (2 * Math.log(s / reach.smallestSum)) / logSpan - 1, sRow);
    const c = Math.cos(k * r) / (4 * Math.PI * r);
    const q = -Math.sin(k * r) / (4 * Math.PI * r);
    out.fill(0);
    for (let plane = 0; plane < piece.values.length; plane += 2) {
      const re = combine(piece.values[plane]!, uRow, sRow);
      const im = combine(piece.values[plane + 1]!, uRow, sRow);
      const scale = plane === 6 ? 1 / r : 1;
      out[plane] = scale * (re * c - im * q);
      out[plane + 1] = scale * (re * q + im * c);
    }
  };
}

function combine(values: Float64Array, uRow: Float64Array, sRow: Float64Array): number {
  let sum = 0;
  for (let i = 0, p = 0; i < uRow.length; i++) {
    let line = 0;
    for (let j = 0; j < sRow.length; j++, p++) line += sRow[j]! * values[p]!;
    sum += uRow[i]! * line;
  }
  return sum;
}
