/** What a line that is not quite as the file says does to X = 0: in the shack, and moved back to the feed point. */

import { exactly } from "../../quantity/quantity";
import type { LinePart, Path, PathEnd } from "../../station/path";
import type { Station } from "../../station/station";
import { movedStation, uncertainInputs } from "../../station/uncertainInputs";
import { dipAt, zeroReactanceAt } from "./dips";
import { feedPath } from "./feedPath";
import type { Measured } from "./measured";
import type { Study } from "./study";
import { zeroOfSweep } from "./sweepDip";

export interface LineDoubt {
  /** Name and length (m) of the longest line in use. */
  readonly line: string;
  /** At the length looked at, Hz: X = 0 at the feed point, X = 0 nearest to it in the shack, dip in the shack. */
  readonly length: number;
  readonly atFeedPoint: number;
  readonly inShack: number | null;
  readonly dip: number;
  /** Hz by which a line one metre longer moves both. */
  readonly zeroShift: number | null;
  readonly dipShift: number | null;
}

/** Null without a line in use, or where dip or resonance are not known. */
export function lineDoubt(study: Study): LineDoubt | null {
  const { bench, plane, path, scan } = study;
  const lines = study.present.parts.flatMap(({ edge }) =>
    edge.inUse && edge.part?.kind === "line" ? [edge.part] : [],
  );
  const longest = lines.toSorted((a, b) => b.length.value - a.length.value)[0];
  if (!plane || !longest) return null;
  const inside = bench.trimmed.length >= plane.lengths.from && bench.trimmed.length <= plane.lengths.to;
  const length = inside ? bench.trimmed.length : scan.lowestSwr;
  if (length === null) return null;
  const near = (bench.frequency * (scan.lowestSwr ?? length)) / length;
  const atFeedPoint = zeroReactanceAt(plane, null, length, near);
  const dip = dipAt(plane, path, bench.rated, length, near);
  if (atFeedPoint === null || dip === null) return null;
  const inShack = zeroReactanceAt(plane, path, length, atFeedPoint);
  const longer = withLines(bench.station, (line) =>
    line.name === longest.name ? { ...line, length: exactly(line.length.value + 1) } : line,
  );
  const moved = feedPath(longer, longer.bands[bench.station.bands.indexOf(bench.band)]!, "transmitter")!;
  const zeroThen = inShack === null ? null : zeroReactanceAt(plane, moved, length, inShack);
  const dipThen = dipAt(plane, moved, bench.rated, length, dip);
  return {
    line: longest.name,
    length,
    atFeedPoint,
    inShack,
    dip,
    zeroShift: zeroThen === null || inShack === null ? null : zeroThen - inShack,
    dipShift: dipThen === null ? null : dipThen - dip,
  };
}

export interface MovedZero {
  /** X = 0 of the sweep at the joint it was taken at, and moved to the feed point, Hz. */
  readonly atJoint: number | null;
  readonly atFeedPoint: number;
  readonly low: number;
  readonly high: number;
  /** True where the file holds no doubt of the path and a line 2 % longer or shorter was taken instead. */
  readonly assumed: boolean;
}

/** Share by which the electrical length of a line is taken to be in doubt where the file says nothing: common practice, no source. */
const usualDoubt = 0.02;

/** X = 0 of a measured sweep moved to the feed point, with what is in doubt of the path between; null where it shows none. */
export function movedZero({ bench }: Study, { sweep, at, dip }: Measured): MovedZero | null {
  if (!sweep) return null;
  const { station } = bench;
  const index = station.bands.indexOf(bench.band);
  const zeroOf = (one: Station): number | null => {
    const path = feedPath(one, one.bands[index]!, at);
    return path && zeroOfSweep(sweep, path, dip);
  };
  const atFeedPoint = zeroOf(station);
  if (atFeedPoint === null) return null;
  const inputs = uncertainInputs(station).filter((input) => input.place.startsWith("path"));
  const scaledBy = (factor: number) =>
    withLines(station, (line) => ({ ...line, length: exactly(line.length.value * factor) }));
  const ends =
    inputs.length > 0
      ? inputs.map((input) => [movedStation(station, input, "low"), movedStation(station, input, "high")])
      : [[scaledBy(1 - usualDoubt), scaledBy(1 + usualDoubt)]];
  const deviations = ends.map((pair) => pair.map((one) => (zeroOf(one) ?? atFeedPoint) - atFeedPoint));
  const rootSum = (pick: (d: readonly number[]) => number) => Math.hypot(...deviations.map((d) => pick([0, ...d])));
  return {
    atJoint: zeroOfSweep(sweep, null, dip),
    atFeedPoint,
    low: atFeedPoint - rootSum((d) => Math.min(...d)),
    high: atFeedPoint + rootSum((d) => Math.max(...d)),
    assumed: inputs.length === 0,
  };
}

/** A copy of the station with every line of its path replaced. */
function withLines(station: Station, change: (line: LinePart) => LinePart): Station {
  const inPath = (path: Path): Path => ({
    parts: path.parts.map((part) => (part.kind === "line" ? change(part) : part)),
    end: inEnd(path.end),
  });
  const inBranches = (branches: Readonly<Record<string, Path>>) =>
    Object.fromEntries(Object.entries(branches).map(([name, path]) => [name, inPath(path)]));
  const inEnd = (end: PathEnd): PathEnd => {
    if (end.kind === "switch") return { ...end, positions: inBranches(end.positions) };
    return end.kind === "tee" || end.kind === "band splitter" ? { ...end, branches: inBranches(end.branches) } : end;
  };
  return { ...station, path: inPath(station.path) };
}
