/** A causal permittivity through loss tangents given at several frequencies. */
import { type Complex, complex, logarithm, subtract } from "../numerics/complex";
import { nonNegativeLeastSquares } from "../numerics/nonNegativeLeastSquares";
import type { Dielectric } from "./dielectric";

/** How far a spread of relaxations reaches below the first and above the last point; the loss fades beyond. */
const [reachBelow, reachAbove] = [1e4, 1e2];
/** More points than this share relaxations: the search over sets of unknowns doubles with each. */
const mostBands = 8;

/** Relaxations spread evenly over the logarithm of frequency within each band. */
export interface LossPointFit {
  /** Edges of the bands in Hz, rising: one more than `weights`. */
  readonly edges: readonly number[];
  /** Strength per unit of ln f, none negative. */
  readonly weights: readonly number[];
  /** Real permittivity far above all bands, at least 1. */
  readonly above: number;
  /** Greatest deviation of the loss tangent from a point, relative: points that rise or fall faster than relaxations can. */
  readonly worstDeviation: number;
}

/**
 * Fits bands of relaxations to the loss points: none is negative, so that the result is causal and passive by construction, and
 * the permittivity holds at `statedAt` (the geometric middle of the points when left out).
 * Source: a spread of Debye terms, each band ln((f2 + jf)/(f1 + jf)): Djordjevic and others, IEEE Trans. EMC 43 (2001) 662.
 */
export function fitLossPoints(dielectric: Dielectric): LossPointFit {
  const known = fits.get(dielectric) ?? fit(dielectric);
  fits.set(dielectric, known);
  return known;
}

/** Dielectrics are frozen data: one is fitted once and asked at many frequencies. */
const fits = new WeakMap<Dielectric, LossPointFit>();

/** Relative permittivity eps' - j eps'' at a frequency in Hz, additions (relaxations, conductivity) left out. */
export const fittedPermittivity = (dielectric: Dielectric, frequency: number): Complex =>
  evaluate(fitLossPoints(dielectric), frequency);

function evaluate({ edges, weights, above }: Omit<LossPointFit, "worstDeviation">, frequency: number): Complex {
  const bands = bandsAt(edges, frequency);
  const sum = (part: (band: Complex) => number): number =>
    bands.reduce((total, band, k) => total + (weights[k] ?? 0) * part(band), 0);
  return complex(
    above + sum((b) => b.re),
    sum((b) => b.im),
  );
}

/** ln((f2 + jf)/(f1 + jf)) of every band. */
function bandsAt(edges: readonly number[], frequency: number): Complex[] {
  const logs = edges.map((edge) => logarithm(complex(edge, frequency)));
  return logs.slice(1).map((high, k) => subtract(high, logs[k]!));
}

/** Loss is eps'' = eps' tan: eps' moves a little with the fit, so a few rounds settle both. */
function fit(dielectric: Dielectric): LossPointFit {
  const points = [...(dielectric.lossPoints ?? [])];
  checkPoints(dielectric, points);
  const edges = bandEdges(points.map((p) => p.frequency));
  const stated = dielectric.statedAt ?? Math.sqrt(points[0]!.frequency * points.at(-1)!.frequency);
  const atStated = bandsAt(edges, stated);
  const atPoints = points.map((p) => bandsAt(edges, p.frequency));
  // In every equation the real part is permittivity + sum of weights (re - re at the stated frequency).
  const rows = points.map((p, i) =>
    atPoints[i]!.map((b, k) => (-b.im - p.lossTangent * (b.re - atStated[k]!.re)) / weightOf(p.lossTangent)),
  );
  const wanted = points.map((p) => (p.lossTangent * dielectric.permittivity) / weightOf(p.lossTangent));
  const weights = nonNegativeLeastSquares(rows, wanted);
  const above = dielectric.permittivity - weights.reduce((s, w, k) => s + w * atStated[k]!.re, 0);
  if (!(above >= 1)) {
    throw new RangeError(
      `${dielectric.name}: its losses ask for a permittivity that falls below 1 at high frequency; ` +
        `expected lower loss tangents or more than ${dielectric.permittivity}`,
    );
  }
  const deviations = points.map((p) => {
    const { re, im } = evaluate({ edges, weights, above }, p.frequency);
    return Math.abs(-im / re - p.lossTangent) / weightOf(p.lossTangent);
  });
  return { edges, weights, above, worstDeviation: Math.max(...deviations) };
}

/** Relative residuals; a point of no loss is compared with 1e-6, below what anybody measures. */
const weightOf = (lossTangent: number): number => Math.max(lossTangent, 1e-6);

/** One band round each point, edges half way between in ln f; with many points bands of equal width. */
function bandEdges(points: readonly number[]): number[] {
  const [first, last] = [points[0]!, points.at(-1)!];
  const ends = [first / reachBelow, last * reachAbove] as const;
  if (points.length <= mostBands) {
    const between = points.slice(1).map((f, i) => Math.sqrt(f * points[i]!));
    return [ends[0], ...between, ends[1]];
  }
  const inner = Array.from(
    { length: mostBands - 1 },
    (_, k) => first * (last / first) ** ((k + 0.5) / (mostBands - 1)),
  );
  return [ends[0], ...inner, ends[1]];
}

function checkPoints(
  dielectric: Dielectric,
  points: readonly { readonly frequency: number; readonly lossTangent: number }[],
): void {
  const rising = points.every((p, i) => p.frequency > (points[i - 1]?.frequency ?? 0) && p.lossTangent >= 0);
  if (!rising || points.length === 0) {
    throw new RangeError(
      `${dielectric.name}: expected loss points at rising frequencies above 0, no loss tangent below 0`,
    );
  }
}
