/** Dipoles of every kind that hang from their feed point: level, drooping or sagging legs. */
import { rootBetween } from "../../numerics/crossings";
import type { Span } from "../../station/antennaDescription";
import type { Point, Wire } from "../../wires/structure";
import { type Built, chainOf, distance, fedLegs, offset } from "../wireRun";

/** Straight pieces that stand for one sagging leg: the parabola is off by less than sag/64 between their ends. */
const piecesPerSaggingLeg = 4;

/** A leg from the feed point whose ends lie `run` metres apart level and `drop` metres in height, `sag` below the chord at mid-span. */
function hangingPoints(feed: Point, azimuth: number, run: number, drop: number, sag: number): Point[] {
  const pieces = sag > 0 ? piecesPerSaggingLeg : 1;
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const t = i / pieces;
    return offset(feed, azimuth, run * t, -drop * t - 4 * sag * t * (1 - t));
  });
}

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + distance(points[i]!, p), 0);

/** The same with the level distance chosen so that the pieces are as long as the wire. The drop must be less than the length. */
function legPoints(feed: Point, azimuth: number, length: number, drop: number, sag: number): Point[] {
  if (sag === 0) return hangingPoints(feed, azimuth, Math.sqrt(Math.max(0, length * length - drop * drop)), drop, 0);
  const missing = (run: number) => lengthOf(hangingPoints(feed, azimuth, run, drop, sag)) - length;
  const run = missing(0) < 0 ? rootBetween(missing, 0, length, 1e-13 * length) : 0;
  return hangingPoints(feed, azimuth, run, drop, sag);
}

/** Two legs of the given lengths from the feed point at `at` (z replaced by the span's height). */
export function spanLegs(at: Point, lengths: readonly [number, number], span: Span, feedName: string): Built {
  const feed: Point = [at[0], at[1], span.height.value];
  const drop = span.endsHeight ? span.height.value - span.endsHeight.value : 0;
  const leg = (name: string, azimuth: number, length: number): Wire[] =>
    chainOf(name, legPoints(feed, azimuth, length, drop, span.sag.value), span.wire);
  return fedLegs(
    leg("first leg", span.direction.value, lengths[0]),
    leg("second leg", span.direction.value + Math.PI, lengths[1]),
    feedName,
  );
}

/** The drop of a span's ends over the length of its shorter leg: 1 or more cannot hang. */
export const steepness = (span: Span, shorterLeg: number): number =>
  span.endsHeight ? Math.abs(span.height.value - span.endsHeight.value) / shorterLeg : 0;
