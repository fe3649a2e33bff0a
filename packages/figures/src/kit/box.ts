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

/** The part of a straight piece that lies in a box (Liang and Barsky 1984); null where none does. */
export function clipped(
  from: readonly [number, number],
  to: readonly [number, number],
  box: Box,
): readonly [readonly [number, number], readonly [number, number]] | null {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [enter, leave] = [0, 1];
  const edges = [
    [-dx, from[0] - box.left],
    [dx, box.right - from[0]],
    [-dy, from[1] - box.top],
    [dy, box.bottom - from[1]],
  ] as const;
  for (const [step, room] of edges) {
    if (step === 0 && room < 0) return null;
    if (step < 0) enter = Math.max(enter, room / step);
    if (step > 0) leave = Math.min(leave, room / step);
  }
  if (enter > leave) return null;
  const at = (share: number) => [from[0] + share * dx, from[1] + share * dy] as const;
  return [at(enter), at(leave)];
}
