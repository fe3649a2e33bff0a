/** Small vector arithmetic on points in metres. */
import type { Point, Wire } from "./structure";

export const difference = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const along = (a: Point, direction: Point, distance: number): Point => [
  a[0] + direction[0] * distance,
  a[1] + direction[1] * distance,
  a[2] + direction[2] * distance,
];
export const distanceBetween = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
export const wireLength = (wire: Wire): number => distanceBetween(wire.from, wire.to);
export const wireEnd = (wire: Wire, end: 0 | 1): Point => (end === 0 ? wire.from : wire.to);

/** Unit vector from `from` to `to`. */
export function wireDirection(wire: Wire): Point {
  const length = wireLength(wire);
  const d = difference(wire.to, wire.from);
  return [d[0] / length, d[1] / length, d[2] / length];
}

const clamp = (x: number): number => Math.min(1, Math.max(0, x));

/** Closest places of two straight stretches, as fractions of each, and their distance. */
export function closestApproach(a: Wire, b: Wire): { onA: number; onB: number; distance: number } {
  const u = difference(a.to, a.from);
  const v = difference(b.to, b.from);
  const w = difference(a.from, b.from);
  const [uu, uv, vv, uw, vw] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
  const determinant = uu * vv - uv * uv;
  let onA = determinant > 1e-12 * uu * vv ? clamp((uv * vw - vv * uw) / determinant) : 0;
  let onB = clamp((uv * onA + vw) / vv);
  onA = clamp((uv * onB - uw) / uu);
  onB = clamp((uv * onA + vw) / vv);
  return { onA, onB, distance: distanceBetween(along(a.from, u, onA), along(b.from, v, onB)) };
}
