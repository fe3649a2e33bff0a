/** Path data ("M0,1L2,3") from points, rounded to a hundredth of a px. */
export type Point = readonly [number, number];

export const rounded = (value: number): number => {
  const r = Math.round(value * 100) / 100;
  return r === 0 ? 0 : r;
};
const at = ([x, y]: Point): string => `${rounded(x)},${rounded(y)}`;

/** Straight pieces through the points; `closed` joins the last to the first. */
export const polyline = (points: readonly Point[], closed = false): string =>
  points.map((point, i) => `${i === 0 ? "M" : "L"}${at(point)}`).join("") + (closed ? "Z" : "");

export const moveTo = (point: Point): string => `M${at(point)}`;
export const lineTo = (point: Point): string => `L${at(point)}`;
/** Circular arc of `radius` to `point`, the short way; `clockwise` as seen on the screen. */
export const arcTo = (radius: number, point: Point, clockwise: boolean): string =>
  `A${rounded(radius)},${rounded(radius)} 0 0 ${clockwise ? 1 : 0} ${at(point)}`;

/** Straight pieces whose corners are rounded by at most `radius` px. */
export function roundedPolyline(points: readonly Point[], radius: number): string {
  if (points.length < 3) return polyline(points);
  let d = moveTo(points[0]!);
  for (let i = 1; i < points.length - 1; i++) {
    const corner = points[i]!;
    const before = towards(corner, points[i - 1]!, radius);
    const after = towards(corner, points[i + 1]!, radius);
    d += `${lineTo(before)}Q${at(corner)} ${at(after)}`;
  }
  return d + lineTo(points.at(-1)!);
}

/** The point `distance` px from `from` on the way to `to`, at most half way. */
function towards(from: Point, to: Point, distance: number): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = length === 0 ? 0 : Math.min(distance / length, 0.5);
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
