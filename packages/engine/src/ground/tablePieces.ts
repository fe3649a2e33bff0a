/** Samples of reflected kernels over (u, ln s) as Chebyshev coefficients, and how well they resolve. See kernelTable. */
import type { SpectralSums, Spectrum } from "../kernels/door";
import { chebyshevTransform, chebyshevZeros } from "../numerics/chebyshevTransform";
import { planesOf, smoothValues } from "./smoothValues";
import type { SumRange } from "./tableBands";

/** Kernels that are nothing but rounding need not be resolved. */
const rounding = 1e-14;

/** Kernels.sumSpectrum. */
export type Sampler = (spectrum: Spectrum, rho: Float64Array, s: Float64Array) => SpectralSums;

/** Kernels at all pairs of a distance and a height sum (m), s fastest. */
export type GridSampler = (rho: Float64Array, s: Float64Array) => SpectralSums;

export interface Axes {
  /** rad/m */
  readonly k: number;
  readonly steep: boolean;
  readonly range: SumRange;
  /** Of the u axis. */
  readonly length: number;
  readonly termsInU: number;
  readonly termsInS: number;
}

/** A part of the u axis. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  /** Planes fastest, then terms in s, then terms in u. */
  readonly coefficients: Float64Array;
  /** Largest value of each plane. */
  readonly largest: Float64Array;
  /** What the last coefficients leave, relative to the sizes of the planes. */
  readonly unresolved: (sizes: Float64Array) => { readonly inU: number; readonly inS: number };
}

/** Height sums of the s axis, m. */
const sumsOf = ({ range, termsInS }: Axes): Float64Array =>
  range.sums ??
  chebyshevZeros(termsInS).map((x) => Math.sqrt(range.from * range.to) * (range.to / range.from) ** (x / 2));

/** Samples parts [from, to] of the u axis, all in one go. */
export function samplePieces(axes: Axes, parts: readonly (readonly number[])[], sample: GridSampler): Piece[] {
  const { range, termsInU } = axes;
  if (parts.length === 0) return [];
  const nodes = termsInU === 1 ? Float64Array.of(-1) : chebyshevZeros(termsInU);
  const rho = new Float64Array(parts.length * termsInU);
  parts.forEach(([from, to], p) => {
    nodes.forEach((x, i) => {
      const u = (from! + to!) / 2 + ((to! - from!) / 2) * x;
      rho[p * termsInU + i] = range.from * Math.sqrt(Math.expm1(2 * Math.max(0, u)));
    });
  });
  const s = sumsOf(axes);
  const sums = sample(rho, s);
  return parts.map(([from, to], p) => makePiece(axes, [from!, to!], sums, rho, s, p));
}

function makePiece(
  axes: Axes,
  [from, to]: readonly [number, number],
  sums: SpectralSums,
  rho: Float64Array,
  s: Float64Array,
  part: number,
): Piece {
  const { steep, termsInU: nu, termsInS: ns, range } = axes;
  const planes = planesOf(steep);
  const values = smoothValues(axes, sums, rho, s, part * nu);
  const largest = new Float64Array(planes);
  for (let n = 0; n < values.length; n++) {
    const size = Math.abs(values[n]!);
    if (size > largest[n % planes]!) largest[n % planes] = size;
  }
  const inU = chebyshevTransform(values, nu, ns * planes);
  const coefficients = range.sums ? inU : transformEach(inU, nu, ns, planes);
  return {
    from,
    to,
    coefficients,
    largest,
    unresolved: (sizes) => ({
      // The last two terms in u stand at the end; those in s at the end of each line of them.
      inU: nu === 1 ? 0 : tail(inU, sizes, (nu - 2) * ns * planes, inU.length, 2 * ns * planes),
      inS: range.sums ? 0 : tail(coefficients, sizes, (ns - 2) * planes, ns * planes, 2 * planes),
    }),
  };
}

/** Transforms along s for each term in u. */
function transformEach(values: Float64Array, nu: number, ns: number, planes: number): Float64Array {
  const out = new Float64Array(values.length);
  for (let i = 0; i < nu; i++) {
    const line = values.subarray(i * ns * planes, (i + 1) * ns * planes);
    out.set(chebyshevTransform(line, ns, planes), i * ns * planes);
  }
  return out;
}

/** Largest share of the sizes among `length` coefficients from `first` on, then all `step` further. */
function tail(coefficients: Float64Array, sizes: Float64Array, first: number, step: number, length: number): number {
  let worst = 0;
  for (let from = first; from < coefficients.length; from += step) {
    for (let n = from; n < from + length; n++) {
      const share = Math.abs(coefficients[n]!) / sizes[n % sizes.length]!;
      if (share > worst) worst = share;
    }
  }
  return worst;
}

/** Largest value of each kernel, in both of its planes: what errors are measured by. */
export function sizesOf(pieces: readonly Piece[], { steep }: Axes): Float64Array {
  const sizes = new Float64Array(planesOf(steep)).fill(rounding);
  for (const { largest } of pieces) {
    largest.forEach((v, plane) => {
      sizes[plane] = Math.max(sizes[plane]!, v);
      sizes[plane ^ 1] = Math.max(sizes[plane ^ 1]!, v);
    });
  }
  return sizes;
}
