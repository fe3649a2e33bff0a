/** Dipoles of every kind that hang from their feed point: level, drooping or sagging legs. */
import type { Span } from "../../station/antennaDescription";
import type { Point, Wire } from "../../wires/structure";
import { type Built, chainOf, fedLegs } from "../wireRun";
import { saggingPoints } from "./hangingWire";

/** Two legs of the given lengths from the feed point at `at` (z replaced by the span's height). */
export function spanLegs(at: Point, lengths: readonly [number, number], span: Span, feedName: string): Built {
  const feed: Point = [at[0], at[1], span.height.value];
  const rise = span.endsHeight ? span.endsHeight.value - span.height.value : 0;
  const leg = (name: string, azimuth: number, length: number): Wire[] =>
    chainOf(name, saggingPoints(feed, azimuth, { length, rise, sag: span.sag.value }), span.wire);
  return fedLegs(
    leg("first leg", span.direction.value, lengths[0]),
    leg("second leg", span.direction.value + Math.PI, lengths[1]),
    feedName,
  );
}

/** The drop of a span's ends, or twice its sag, over the length of its shorter leg: 1 or more cannot hang. */
export const steepness = (span: Span, shorterLeg: number): number =>
  Math.max(span.endsHeight ? Math.abs(span.height.value - span.endsHeight.value) : 0, 2 * span.sag.value) / shorterLeg;
