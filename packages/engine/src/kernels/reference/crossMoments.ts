/** Ramp moments of the kernel that couples level and upright currents by way of quasi-static images (PairFactors.cross). */
import { gaussLegendre } from "../../numerics/gaussLegendre";
import type { Elements } from "../door";
import { addRamps } from "./pairMoments";
import { gradedEdges } from "./skewMoments";

/** Couplings below this, from directions alone, are nothing but rounding. */
const rounding = 1e-12;
const order = 4;
/** Panels closing in on near places: their first is this share of the distance there. */
const finestShare = 0.7;
const rule = gaussLegendre(order);

interface Pair {
  /** Test's start less the source's own (not its image's), horizontal; sum of their heights at the starts. */
  readonly x: number;
  readonly y: number;
  readonly sum: number;
  readonly t: readonly [number, number, number];
  /** Direction of the source wire itself. */
  readonly u: readonly [number, number, number];
  /** t_z u_h - u_z t_h. */
  readonly crossX: number;
  readonly crossY: number;
}

function pairOf(tests: Elements, e: number, images: Elements, f: number): Pair {
  const three = (values: Float64Array, n: number) => [values[3 * n]!, values[3 * n + 1]!, values[3 * n + 2]!] as const;
  const t = three(tests.direction, e);
  const image = three(images.direction, f);
  const u = [image[0], image[1], -image[2]] as const;
  const [p, q] = [three(tests.start, e), three(images.start, f)];
  return {
    x: p[0] - q[0],
    y: p[1] - q[1],
    sum: p[2] - q[2],
    t,
    u,
    crossX: t[2] * u[0] - u[2] * t[0],
    crossY: t[2] * u[1] - u[2] * t[1],
  };
}

/** Where elements meet in the surface the integrand grows as 1/distance: below this share of them nothing is left of it. */
const touching = 1e-4;

/** Edges on both elements, graded to where they come closest when they are near. */
function edgesOf(pair: Pair, l: number, m: number, close: boolean): readonly [number[], number[]] {
  if (!close)
    return [
      [0, l],
      [0, m],
    ];
  const { x, y, sum, t, u } = pair;
  const onTest = (at: number): number => -((x - u[0] * at) * t[0] + (y - u[1] * at) * t[1] + (sum + u[2] * at) * t[2]);
  const onSource = (at: number): number => (x + t[0] * at) * u[0] + (y + t[1] * at) * u[1] - (sum + t[2] * at) * u[2];
  const places = (on: (at: number) => number, own: number, other: number): number[] =>
    [on(0), on(other)].map((p) => Math.min(own, Math.max(0, p)));
  const [testPlaces, sourcePlaces] = [places(onTest, l, m), places(onSource, m, l)];
  let nearest = Number.POSITIVE_INFINITY;
  for (const a of testPlaces) {
    for (const b of sourcePlaces) {
      const [dx, dy] = [x + t[0] * a - u[0] * b, y + t[1] * a - u[1] * b];
      nearest = Math.min(nearest, Math.hypot(dx, dy, sum + t[2] * a + u[2] * b));
    }
  }
  const finest = finestShare * Math.max(nearest, touching * Math.min(l, m));
  return [gradedEdges(l, testPlaces, finest), gradedEdges(m, sourcePlaces, finest)];
}

/**
 * Writes re 0..3 and im 4..7 (m, order as in NearMoments) for test `e` and the mirrored source `f`; false, and nothing
 * written, when their directions do not couple. `k` in rad/m. Currents on the axes: s is some radii at least.
 */
export function crossMoments(
  tests: Elements,
  e: number,
  images: Elements,
  f: number,
  k: number,
  close: boolean,
  out: Float64Array,
): boolean {
  const pair = pairOf(tests, e, images, f);
  if (Math.abs(pair.crossX) + Math.abs(pair.crossY) < rounding) return false;
  const [l, m] = [tests.length[e]!, images.length[f]!];
  const [testEdges, sourceEdges] = edgesOf(pair, l, m, close);
  out.fill(0);
  const [a, b] = [pointsOn(testEdges), pointsOn(sourceEdges)];
  for (let i = 0; i < a.at.length; i++) {
    for (let j = 0; j < b.at.length; j++) {
      addSample(pair, a.at[i]!, b.at[j]!, k, a.weight[i]! * b.weight[j]!, [a.at[i]! / l, b.at[j]! / m], out);
    }
  }
  return true;
}

function pointsOn(edges: readonly number[]): { at: Float64Array; weight: Float64Array } {
  const at = new Float64Array(order * (edges.length - 1));
  const weight = new Float64Array(at.length);
  for (let panel = 1; panel < edges.length; panel++) {
    const half = (edges[panel]! - edges[panel - 1]!) / 2;
    for (let i = 0; i < order; i++) {
      at[(panel - 1) * order + i] = edges[panel - 1]! + half * (1 + rule.points[i]!);
      weight[(panel - 1) * order + i] = half * rule.weights[i]!;
    }
  }
  return { at, weight };
}

/**
 * The kernel at one pair of points, written without cancellation near rho = 0:
 * e^{-jkR} [(1 - s/R) + (e^{jk(R - s)} - 1)]/rho^2, R - s = rho^2/(R + s).
 */
function addSample(
  { x, y, sum, t, u, crossX, crossY }: Pair,
  at: number,
  from: number,
  k: number,
  weight: number,
  [rise, sourceRise]: readonly [number, number],
  out: Float64Array,
): void {
  const dx = x + t[0] * at - u[0] * from;
  const dy = y + t[1] * at - u[1] * from;
  const s = sum + t[2] * at + u[2] * from;
  const rho2 = dx * dx + dy * dy;
  const r = Math.sqrt(rho2 + s * s);
  const shorter = 1 / (r + s);
  const phase = k * rho2 * shorter;
  const half = Math.sin(phase / 2);
  const chord = phase < 1e-9 ? k * shorter : (2 * half) / rho2;
  const re = shorter / r - chord * half;
  const im = chord * Math.cos(phase / 2);
  const [c, q] = [Math.cos(k * r), -Math.sin(k * r)];
  const w = weight * (crossX * dx + crossY * dy);
  addRamps(out, rise, sourceRise, w * (re * c - im * q), w * (re * q + im * c));
}
