/** The least place of a curve between three of its points. */

interface Point {
  readonly f: number;
  readonly y: number;
}

/** Where the parabola through three points is least. */
export function vertex(a: Point, b: Point, c: Point): number {
  const left = (b.y - a.y) / (b.f - a.f);
  const right = (c.y - b.y) / (c.f - b.f);
  const curve = (right - left) / (c.f - a.f);
  return curve > 0 ? (a.f + b.f) / 2 - left / (2 * curve) : b.f;
}
