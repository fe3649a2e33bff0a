/** Samples of reflected kernels over (u, ln s), and how well they resolve them. See kernelTable. */
import type { SpectralSums, Spectrum } from "../kernels/door";
import { type chebyshevPoints, chebyshevTail } from "../numerics/barycentric";
import type { Reach } from "./spectrum";

const smallestPiece = 1 / 64;
/** Error allowed, relative to the largest value of the same kernel (times distance) in the table. */
const tolerance = 3e-7;
/** Kernels that are nothing but rounding need not be resolved. */
const rounding = 1e-14;

/** Values over a part of the u axis. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  /** re, im of four kernels at every (u, s) node, s fastest. */
  readonly values: readonly Float64Array[];
}

/** Kernels.sumSpectrum. */
export type Sampler = (spectrum: Spectrum, rho: Float64Array, s: Float64Array) => SpectralSums;

/** Kernels at places (rho, s) in m. */
export type PlaceSampler = (rho: Float64Array, s: Float64Array) => SpectralSums;

/** Nodes of both axes. */
export interface Axes {
  readonly reach: Reach;
  readonly k: number;
  readonly u: ReturnType<typeof chebyshevPoints>;
  readonly lnS: ReturnType<typeof chebyshevPoints>;
}

/** ln(Rmax/s): the length of the u axis. */
export const rangeOf = (reach: Reach, s: number): number =>
  0.5 * Math.log1p((Math.max(reach.largestDistance, 0.01 * s) / s) ** 2);

/** Height sum at coordinate -1..1 of the logarithmic axis. */
const sumAt = (reach: Reach, x: number): number =>
  Math.sqrt(reach.smallestSum * reach.largestSum) * (reach.largestSum / reach.smallestSum) ** (x / 2);

function samplePiece(axes: Axes, sample: PlaceSampler, from: number, to: number): Piece {
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
  const sums = sample(rho, s);
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
  if ((direction === "u" ? nu : ns) === 1) return 0;
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

export interface Pieces {
  readonly pieces: readonly Piece[];
  /** Largest unresolved share along either axis. */
  readonly unresolved: number;
}

/** Samples the u axis in pieces, halved until they resolve; gives up early when the s axis does not and must. */
export function samplePieces(axes: Axes, sample: PlaceSampler, mustResolveS: boolean): Pieces | null {
  const first = samplePiece(axes, sample, 0, 1);
  const scale = sizes(first);
  let worst = unresolved(axes, first, "s", scale);
  if (mustResolveS && worst > tolerance) return null;
  const halve = (piece: Piece): Piece[] => {
    const { from, to } = piece;
    const left = unresolved(axes, piece, "u", scale);
    if (left <= tolerance || to - from <= smallestPiece) {
      worst = Math.max(worst, left);
      return [piece];
    }
    const middle = (from + to) / 2;
    return [...halve(samplePiece(axes, sample, from, middle)), ...halve(samplePiece(axes, sample, middle, to))];
  };
  const pieces = halve(first);
  return { pieces, unresolved: worst };
}
