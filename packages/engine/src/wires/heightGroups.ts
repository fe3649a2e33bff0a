/**
 * Sample points sorted by height, so that each pair of groups gets reflected kernels over a narrow range of heights:
 * level wires by themselves (one height, a table in distance only), others in bands of a factor in height; low wires,
 * whose images are integrated apart, by themselves.
 */
import type { Reach } from "../ground/spectrum";
import type { SamplePoints } from "./samplePoints";

const bandFactor = 4;
/** With more different level heights than this they are put into the bands as well. */
const mostLevels = 6;

export interface HeightGroups {
  readonly groupOf: Int32Array;
  readonly count: number;
  /** Distances between points of two groups. */
  readonly reach: (a: number, b: number) => Reach;
  /** Distances between all points. */
  readonly wholeReach: Reach;
}

interface Box {
  west: number;
  east: number;
  south: number;
  north: number;
  low: number;
  high: number;
  steep: boolean;
  lessImages: boolean;
}

const emptyBox = (): Box => ({
  west: Number.POSITIVE_INFINITY,
  east: Number.NEGATIVE_INFINITY,
  south: Number.POSITIVE_INFINITY,
  north: Number.NEGATIVE_INFINITY,
  low: Number.POSITIVE_INFINITY,
  high: Number.NEGATIVE_INFINITY,
  steep: false,
  lessImages: false,
});

function extend(box: Box, [x, y, z]: readonly number[], steep: boolean): void {
  box.west = Math.min(box.west, x!);
  box.east = Math.max(box.east, x!);
  box.south = Math.min(box.south, y!);
  box.north = Math.max(box.north, y!);
  box.low = Math.min(box.low, z!);
  box.high = Math.max(box.high, z!);
  box.steep ||= steep;
}

function reachBetween(a: Box, b: Box): Reach {
  const eastWest = Math.max(a.east, b.east) - Math.min(a.west, b.west);
  const northSouth = Math.max(a.north, b.north) - Math.min(a.south, b.south);
  return {
    smallestSum: a.low + b.low,
    largestSum: a.high + b.high,
    largestDistance: Math.hypot(eastWest, northSouth),
    steep: a.steep || b.steep,
    lessImages: a.lessImages && b.lessImages,
  };
}

/** All points must lie above z = 0. */
export function groupByHeight(points: SamplePoints): HeightGroups {
  const { position, direction, low, count } = points;
  let lowest = Number.POSITIVE_INFINITY;
  const levels = new Set<string>();
  const isSteep = (p: number): boolean => Math.abs(direction[3 * p + 2]!) > 1e-12;
  const levelKey = (p: number): string => `level ${position[3 * p + 2]!.toPrecision(7)}`;
  for (let p = 0; p < count; p++) {
    lowest = Math.min(lowest, position[3 * p + 2]!);
    if (!isSteep(p)) levels.add(levelKey(p));
  }
  const boxes: Box[] = [];
  const numbers = new Map<string, number>();
  const groupOf = new Int32Array(count);
  for (let p = 0; p < count; p++) {
    const band = Math.floor(Math.log(position[3 * p + 2]! / lowest) / Math.log(bandFactor) + 1e-9);
    const place = isSteep(p) || levels.size > mostLevels ? `band ${band}` : levelKey(p);
    const key = low[p] ? `${place} low` : place;
    const group = numbers.get(key) ?? numbers.size;
    numbers.set(key, group);
    boxes[group] ??= emptyBox();
    boxes[group].lessImages = low[p] === 1;
    extend(boxes[group], [...position.subarray(3 * p, 3 * p + 3)], isSteep(p));
    groupOf[p] = group;
  }
  const whole = emptyBox();
  for (const box of boxes) {
    extend(whole, [box.west, box.south, box.low], box.steep);
    extend(whole, [box.east, box.north, box.high], box.steep);
  }
  return {
    groupOf,
    count: boxes.length,
    reach: (a, b) => reachBetween(boxes[a]!, boxes[b]!),
    wholeReach: reachBetween(whole, whole),
  };
}

/** One table for each pair of groups (index a * count + b); pairs of equal reach share theirs. */
export function tablesBetween<Table>(groups: HeightGroups, build: (reach: Reach) => Table): Table[] {
  const known = new Map<string, Table>();
  const tables: Table[] = [];
  for (let a = 0; a < groups.count; a++) {
    for (let b = 0; b <= a; b++) {
      const reach = groups.reach(a, b);
      const { smallestSum, largestSum, largestDistance, steep, lessImages } = reach;
      const key = [smallestSum, largestSum, largestDistance].map((x) => x.toPrecision(7)).join() + steep + lessImages;
      const table = known.get(key) ?? build(reach);
      known.set(key, table);
      tables[a * groups.count + b] = table;
      tables[b * groups.count + a] = table;
    }
  }
  return tables;
}
