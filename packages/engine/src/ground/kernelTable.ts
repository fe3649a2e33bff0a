/**
 * Reflected kernels as tables: smooth once the distance R to the image, its phase and (for the cross kernel) rho are
 * taken out. Chebyshev in u = ln(R/s)/ln(Rmax/s), in pieces halved until they resolve, times Chebyshev in ln s.
 */
import type { SpectralSums, Spectrum } from "../kernels/door";
import { chebyshevPoints, chebyshevTail, lagrangeRow } from "../numerics/barycentric";
import type { Reach } from "./spectrum";

const nodesInU = 12;
const smallestPiece = 1 / 64;
/** Error allowed, in units of the free-space kernel at the same distance. */
const tolerance = 1e-7;

interface Piece {
  readonly from: number;
  readonly to: number;
  /** re, im of four kernels at every (u, s) node, s fastest. */
  readonly values: readonly Float64Array[];
}

export interface KernelTable {
  /** Writes re, im of G_xx, K, G_zz (1/m) and T/rho (1/m^2) at horizontal distance rho and height sum s (m). */
  readonly lookUp: (rho: number, s: number, out: Float64Array) => void;
  /** Kernel samples the table cost. */
  readonly samples: number;
}

type Sampler = (spectrum: Spectrum, rho: Float64Array, s: Float64Array) => SpectralSums;

interface Axes {
  readonly reach: Reach;
  readonly k: number;
  readonly u: ReturnType<typeof chebyshevPoints>;
  readonly lnS: ReturnType<typeof chebyshevPoints>;
}

const rangeOf = (reach: Reach, s: number): number =>
  Math.log(Math.hypot(Math.max(reach.largestDistance, 0.01 * s), s) / s);

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

/** Largest unresolved part of a piece along u (stride = nodes in s) or along s (stride 1). */
function unresolved(axes: Axes, piece: Piece, direction: "u" | "s"): number {
  const nu = axes.u.points.length;
  const ns = axes.lnS.points.length;
  let worst = 0;
  for (const values of piece.values) {
    for (let line = 0; line < (direction === "u" ? ns : nu); line++) {
      const cut =
        direction === "u"
          ? Array.from({ length: nu }, (_, i) => values[i * ns + line]!)
          : values.subarray(line * ns, line * ns + ns);
      worst = Math.max(worst, chebyshevTail(cut));
    }
  }
  return worst;
}

function samplePieces(axes: Axes, spectrum: Spectrum, sample: Sampler): Piece[] {
  const halve = (from: number, to: number): Piece[] => {
    const piece = samplePiece(axes, spectrum, sample, from, to);
    if (to - from <= smallestPiece || unresolved(axes, piece, "u") < tolerance) return [piece];
    const middle = (from + to) / 2;
    return [...halve(from, middle), ...halve(middle, to)];
  };
  return halve(0, 1);
}

/** Tables of the spectrum inside its reach, for air wavenumber k (rad/m). */
export function buildKernelTable(spectrum: Spectrum, k: number, reach: Reach, sample: Sampler): KernelTable {
  const flat = reach.largestSum / reach.smallestSum < 1 + 1e-9;
  const single = { points: new Float64Array(1), weights: new Float64Array([1]) };
  const build = (nodes: number): { axes: Axes; pieces: Piece[] } => {
    const axes = { reach, k, u: chebyshevPoints(nodesInU), lnS: flat ? single : chebyshevPoints(nodes) };
    const pieces = samplePieces(axes, spectrum, sample);
    const resolved = flat || nodes >= 32 || pieces.every((p) => unresolved(axes, p, "s") < tolerance);
    return resolved ? { axes, pieces } : build(nodes * 2);
  };
  const { axes, pieces } = build(8);
  const samples = pieces.length * axes.u.points.length * axes.lnS.points.length;
  return { lookUp: reader(axes, pieces, flat), samples };
}

function reader(axes: Axes, pieces: readonly Piece[], flat: boolean): KernelTable["lookUp"] {
  const { reach, k, u, lnS } = axes;
  const uRow = new Float64Array(u.points.length);
  const sRow = new Float64Array(lnS.points.length).fill(1);
  const logSpan = Math.log(reach.largestSum / reach.smallestSum);
  return (rho, s, out) => {
    const r = Math.hypot(rho, s);
    const at = Math.min(1, Math.max(0, Math.log(r / s) / rangeOf(reach, s)));
    let piece = pieces[0]!;
    for (let p = 1; p < pieces.length && at > piece.to; p++) piece = pieces[p]!;
    lagrangeRow(u.points, u.weights, (2 * (at - piece.from)) / (piece.to - piece.from) - 1, uRow);
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
