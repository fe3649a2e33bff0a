/** Rectangles in px, for keeping labels apart. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Small boxes along straight pieces, `half` px to each side: what labels keep off. */
export function boxesAlong(points: readonly (readonly [number, number])[], half: number): Box[] {
  return points.slice(1).flatMap(([bx, by], i) => {
    const [ax, ay] = points[i]!;
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / (2 * half)));
    return Array.from({ length: steps + 1 }, (_, step) => {
      const [x, y] = [ax + ((bx - ax) * step) / steps, ay + ((by - ay) * step) / steps];
      return { left: x - half, right: x + half, top: y - half, bottom: y + half };
    });
  });
}

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const inside = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;
