/**
 * Reflected kernels as tables: smooth once the distance R to the image, its phase and (for the cross kernel) rho are
 * taken out. Chebyshev in u = ln(R/s)/ln(Rmax/s), in pieces halved until they resolve, times Chebyshev in ln s.
 */
import type { SpectralSums, Spectrum } from "../kernels/door";
import { chebyshevPoints, chebyshevTail, lagrangeRow } from "../numerics/barycentric";
import type { Reach } from "./spectrum";

const nodesInU = 12;
/** Tried in turn until the s axis is resolved; the last is taken as it is. */
const nodesInS = [8, 12, 18, 32];
const smallestPiece = 1 / 64;
/** Error allowed, relative to the largest value of the same kernel (times distance) in the table. */
const tolerance = 3e-7;
/** Kernels that are nothing but rounding need not be resolved. */
const rounding = 1e-14;

interface Piece {
  readonly from: number;
  readonly to: number;
  /** re, im of four kernels at every (u, s) node, s fastest. */
  readonly values: readonly Float64Array[];
}

export interface KernelTable {
  /** Writes re, im of G_xx, K, G_zz (1/m) and T/rho (1/m^2) at horizontal distance rho and height sum s (m). */
  readonly lookUp: (rho: number, s: number, out: Float64Array) => void;
}

type Sampler = (spectrum: Spectrum, rho: Float64Array, s: Float64Array) => SpectralSums;

interface Axes {
  readonly reach: Reach;
  readonly k: number;
  readonly u: ReturnType<typeof chebyshevPoints>;
  readonly lnS: ReturnType<typeof chebyshevPoints>;
}

const rangeOf = (reach: Reach, s: number): number =>
  0.5 * Math.log1p((Math.max(reach.largestDistance, 0.01 * s) / s) ** 2);

/** Height sum at coordinate -1..1 of the logarithmic axis. */
const sumAt = (reach: Reach, x: number): number =>
  Math.sqrt(reach.smallestSum * reach.largestSum) * (reach.largestSum / reach.smallestSum) ** (x / 2);

function samplePiece(axes: Axes, spectrum: Spectrum, sample: Sampler, from: number, to: number): Piece {
  const { reach, k, u, lnS } = axes;
  const count = u.points.length * lnS.points.length;
  const rho = new Float64Array(count);
  const s = new Float64Array(count);
  const distance = new Float64Array(count);
  for (let i = 0, p = 0; i < u.points.length; i++) {
    const at = (from + to) / 2 + ((to - from) / 2) * u.points[i]!;
    for (let j = 0; j < lnS.points.length; j++, p++) {
      s[p] = sumAt(reach, lnS.points[j]!);
      distance[p] = s[p]! * Math.exp(at * rangeOf(reach, s[p]!));
      rho[p] = Math.sqrt(Math.max(0, distance[p]! ** 2 - s[p]! ** 2));
    }
  }
  const sums = sample(spectrum, rho, s);
  const kinds = reach.steep
    ? [sums.horizontal, sums.scalar, sums.vertical, sums.cross]
    : [sums.horizontal, sums.scalar];
  const values = kinds.flatMap((plane, kind) => {
    const re = new Float64Array(count);
    const im = new Float64Array(count);
    for (let p = 0; p < count; p++) {
      const r = distance[p]!;
      const size = 4 * Math.PI * (kind === 3 ? r * r : r);
      const c = size * Math.cos(k * r);
      const q = size * Math.sin(k * r);
      re[p] = plane.re[p]! * c - plane.im[p]! * q;
      im[p] = plane.re[p]! * q + plane.im[p]! * c;
    }
    return [re, im];
  });
  return { from, to, values };
}

/** Largest value of each plane: what errors are measured by. */
const sizes = (piece: Piece): number[] =>
  piece.values.map((values) => values.reduce((most, v) => Math.max(most, Math.abs(v)), rounding));

/** Largest unresolved share of a piece along u (stride = nodes in s) or along s (stride 1). */
function unresolved(axes: Axes, piece: Piece, direction: "u" | "s", scale: readonly number[]): number {
  const nu = axes.u.points.length;
  const ns = axes.lnS.points.length;
  let worst = 0;
  piece.values.forEach((values, plane) => {
    // Real and imaginary part of a kernel share one size.
    const size = Math.max(scale[plane]!, scale[plane ^ 1]!);
    for (let line = 0; line < (direction === "u" ? ns : nu); line++) {
      const cut =
        direction === "u"
          ? Array.from({ length: nu }, (_, i) => values[i * ns + line]!)
          : values.subarray(line * ns, line * ns + ns);
      worst = Math.max(worst, chebyshevTail(cut) / size);
    }
  });
  return worst;
}

/** Halves pieces until they resolve; the s axis must be resolved on the first one already, else null. */
function samplePieces(axes: Axes, spectrum: Spectrum, sample: Sampler, mustResolveS: boolean): Piece[] | null {
  const first = samplePiece(axes, spectrum, sample, 0, 1);
  const scale = sizes(first);
  if (mustResolveS && unresolved(axes, first, "s", scale) > tolerance) return null;
  const halve = (piece: Piece): Piece[] => {
    const { from, to } = piece;
    const done = axes.u.points.length === 1 || to - from <= smallestPiece;
    if (done || unresolved(axes, piece, "u", scale) <= tolerance) return [piece];
    const middle = (from + to) / 2;
    return [
      ...halve(samplePiece(axes, spectrum, sample, from, middle)),
      ...halve(samplePiece(axes, spectrum, sample, middle, to)),
    ];
  };
  return halve(first);
}

const single = { points: new Float64Array(1), weights: new Float64Array([1]) };

/** Tables of the spectrum inside its reach; `k` (rad/m) is the phase constant taken out of them. */
export function buildKernelTable(spectrum: Spectrum, k: number, reach: Reach, sample: Sampler): KernelTable {
  const flat = reach.largestSum / reach.smallestSum < 1 + 1e-9;
  const column = reach.largestDistance < 1e-6 * reach.smallestSum;
  const u = column ? { ...single, points: new Float64Array([-1]) } : chebyshevPoints(nodesInU);
  for (const nodes of nodesInS) {
    const axes = { reach, k, u, lnS: flat ? single : chebyshevPoints(nodes) };
    const pieces = samplePieces(axes, spectrum, sample, !flat && nodes < nodesInS.at(-1)!);
    if (pieces) return reader(axes, pieces, flat, column);
  }
  throw new Error("kernel table: the last choice of nodes is always taken");
}

function reader(axes: Axes, pieces: readonly Piece[], flat: boolean, column: boolean): KernelTable {
  const { reach, k, u, lnS } = axes;
  const uRow = new Float64Array(u.points.length).fill(1);
  const sRow = new Float64Array(lnS.points.length).fill(1);
  const logSpan = Math.log(reach.largestSum / reach.smallestSum);
  let lastSum = 0;
  let range = 1;
  const lookUp = (rho: number, s: number, out: Float64Array): void => {
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
  return { lookUp };
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
