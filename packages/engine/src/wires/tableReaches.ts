/** Distances and height sums between sample points: what tables of reflected kernels have to serve. */
import type { Reach } from "../ground/spectralNodes";
import type { KernelPoints, KernelTables } from "../kernels/reflected";

/** With more different heights than this their sums are not listed. */
const mostHeights = 64;
/** Heights and sums closer than this share of themselves are one. */
const alike = 1e-9;

interface Box {
  readonly low: number;
  readonly high: number;
  /** Diagonal of the ground plan. */
  readonly across: number;
  readonly steep: boolean;
}

function boxOf({ position, direction }: KernelPoints, chosen: readonly number[]): Box {
  const range = (axis: number): [number, number] => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const p of chosen) {
      least = Math.min(least, position[3 * p + axis]!);
      most = Math.max(most, position[3 * p + axis]!);
    }
    return [least, most];
  };
  const [[west, east], [south, north], [low, high]] = [range(0), range(1), range(2)];
  const steep = chosen.some((p) => Math.abs(direction[3 * p + 2]!) > 1e-12);
  return { low, high, across: Math.hypot(east - west, north - south), steep };
}

/** Ascending, without those that are like their neighbour. */
function distinct(values: readonly number[]): number[] {
  const sorted = Float64Array.from(values).sort();
  return [...sorted].filter((x, i) => i === 0 || x > sorted[i - 1]! * (1 + alike));
}

const heights = ({ position }: KernelPoints, chosen: readonly number[]): number[] =>
  distinct(chosen.map((p) => position[3 * p + 2]!));

/** Sums of all pairs of a height of one list and of one of the other; undefined where they are too many. */
function sumsOf(a: readonly number[], b: readonly number[]): Float64Array | undefined {
  if (Math.max(a.length, b.length) > mostHeights) return undefined;
  return Float64Array.from(distinct(a.flatMap((x) => b.map((y) => x + y))));
}

const reachOf = (box: Box, smallestSum: number, sums: Float64Array | undefined, lessImages: boolean): Reach => ({
  smallestSum,
  largestSum: 2 * box.high,
  largestDistance: box.across,
  steep: box.steep,
  lessImages,
  ...(sums && { sums }),
});

const numbered = ({ low, count }: KernelPoints, chosen: (low: boolean) => boolean): number[] =>
  Array.from({ length: count }, (_, p) => p).filter((p) => chosen(low[p] === 1));

/** Distances between all points, whose heights must lie above 0. */
export function wholeReach(points: KernelPoints): Reach {
  const box = boxOf(
    points,
    numbered(points, () => true),
  );
  return reachOf(box, 2 * box.low, undefined, false);
}

/** The tables that all pairs of points need: those of two low points are kept apart, their images are left out. */
export function tablesFor<Table>(
  points: KernelPoints,
  build: (reach: Reach) => Table,
): Record<keyof KernelTables, Table | null> {
  const all = numbered(points, () => true);
  const low = numbered(points, (is) => is);
  const others = numbered(points, (is) => !is);
  const [allHeights, lowHeights, otherHeights] = [all, low, others].map((chosen) => heights(points, chosen)) as [
    number[],
    number[],
    number[],
  ];
  const less = () => {
    const box = boxOf(points, low);
    return build(reachOf(box, 2 * box.low, sumsOf(lowHeights, lowHeights), true));
  };
  const whole = () => {
    const box = boxOf(points, all);
    return build(reachOf(box, box.low + otherHeights[0]!, sumsOf(otherHeights, allHeights), false));
  };
  return {
    lessImages: low.length > 0 ? less() : null,
    whole: others.length > 0 ? whole() : null,
  };
}
