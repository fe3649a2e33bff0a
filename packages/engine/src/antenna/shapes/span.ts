/** Dipoles of every kind that hang from their feed point: level, drooping or sagging legs. */
import type { Span } from "../../station/antennaDescription";
import type { Point, Wire } from "../../wires/structure";
import { type Built, chainOf, fedLegs, offset } from "../wireRun";

/** Straight pieces that stand for one sagging leg: the parabola is off by less than sag/64 between their ends. */
const piecesPerSaggingLeg = 4;

/**
 * Points of one leg of given wire length from the feed point, its end `drop` metres lower, hanging `sag` below the
 * chord at mid-span (parabola; length by its series chord + 8 sag²/(3 chord), good to 1e-4 for sag < chord/8).
 */
function legPoints(feed: Point, azimuth: number, length: number, drop: number, sag: number): Point[] {
  const chord = (length + Math.sqrt(Math.max(0, length * length - (32 / 3) * sag * sag))) / 2;
  const run = Math.sqrt(Math.max(0, chord * chord - drop * drop));
  const pieces = sag > 0 ? piecesPerSaggingLeg : 1;
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const t = i / pieces;
    return offset(feed, azimuth, run * t, -drop * t - 4 * sag * t * (1 - t));
  });
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
