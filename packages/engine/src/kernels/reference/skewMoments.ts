/**
 * Static moments of two close elements that do not share an axis: inner integral in closed form, outer integral by
 * Gauss panels graded towards the places where the inner one varies fast (ends of both elements).
 * The inner distance is D^2 = d^2 for parallel elements (the mean of ln R over two circles apart is exactly ln d).
 * Otherwise D^2 = d^2 + (a^2/2)(3 c^2 - 1) summed over both tubes, c the cosine between the line of centres and the
 * axis: the mean over the tubes to second order, as for distant pairs; at least a^2/4, which keeps corners finite.
 */

import { gaussLegendre } from "../../numerics/gaussLegendre";
import type { Elements } from "../door";

const rule = gaussLegendre(6);
const growth = 3;

/** Panel edges on [0, length] graded in steps growing from `finest` around each given place. */
export function gradedEdges(length: number, places: readonly number[], finest: number): number[] {
  const inside = [...places, 0, length].filter((p) => p >= 0 && p <= length).sort((p, q) => p - q);
  const edges = [0];
  for (let i = 1; i < inside.length; i++) {
    const [from, to] = [inside[i - 1]!, inside[i]!];
    const middle = (from + to) / 2;
    if (to - from < 1e-9 * length) continue;
    const steps: number[] = [];
    for (let step = finest, at = step; at < middle - from; step *= growth, at += step) steps.push(at);
    edges.push(...steps.map((s) => from + s), middle, ...steps.reverse().map((s) => to - s), to);
  }
  return edges;
}

/** Four moments (see NearMoments) of test element e and source element f. */
export function skewMoments(tests: Elements, e: number, sources: Elements, f: number, out: Float64Array): void {
  const length = tests.length[e]!;
  const m = sources.length[f]!;
  const component = (axis: number) => ({
    t: tests.direction[3 * e + axis]!,
    u: sources.direction[3 * f + axis]!,
    offset: tests.start[3 * e + axis]! - sources.start[3 * f + axis]!,
  });
  const xyz = [component(0), component(1), component(2)];
  const dot = (pick: (c: (typeof xyz)[number]) => number): number => xyz.reduce((sum, c) => sum + pick(c), 0);
  const cosine = dot((c) => c.t * c.u);
  const alongTest = dot((c) => c.offset * c.t);
  const alongSource = dot((c) => c.offset * c.u);
  const offsetSquared = dot((c) => c.offset * c.offset);
  const radiusSquared = (tests.radius[e]! ** 2 + sources.radius[f]! ** 2) / 2;
  const between = (pick: (c: (typeof xyz)[number]) => number): number =>
    dot((c) => (c.offset + (c.t * length - c.u * m) / 2) * pick(c));
  const centreSquared = dot((c) => (c.offset + (c.t * length - c.u * m) / 2) ** 2);
  const spread = (radius: number, along: number): number => (radius ** 2 / 2) * ((3 * along ** 2) / centreSquared - 1);
  const tubes =
    spread(
      tests.radius[e]!,
      between((c) => c.t),
    ) +
    spread(
      sources.radius[f]!,
      between((c) => c.u),
    );
  const parallel = 1 - Math.abs(cosine) < 1e-9;
  const perpendicularSquared = (s: number): number => {
    const x = alongSource + s * cosine;
    return Math.max(0, offsetSquared + 2 * s * alongTest + s * s - x * x);
  };
  const places = [-alongTest, m * cosine - alongTest];
  const finest = Math.max(Math.sqrt(radiusSquared), parallel ? Math.sqrt(perpendicularSquared(0)) : 0) / 2;
  const edges = gradedEdges(length, places, finest);
  out.fill(0);
  for (let panel = 1; panel < edges.length; panel++) {
    const half = (edges[panel]! - edges[panel - 1]!) / 2;
    for (let i = 0; i < rule.points.length; i++) {
      const s = edges[panel - 1]! + half * (1 + rule.points[i]!);
      const x = alongSource + s * cosine;
      const d2 = perpendicularSquared(s) + (parallel ? 0 : Math.max(tubes, radiusSquared / 4));
      const d = Math.sqrt(d2);
      const whole = Math.asinh((m - x) / d) - Math.asinh(-x / d);
      const rising = (Math.sqrt((m - x) ** 2 + d2) - Math.sqrt(x * x + d2) + x * whole) / m;
      const weight = half * rule.weights[i]!;
      const up = (weight * s) / length;
      out[0]! += (weight - up) * (whole - rising);
      out[1]! += (weight - up) * rising;
      out[2]! += up * (whole - rising);
      out[3]! += up * rising;
    }
  }
}
