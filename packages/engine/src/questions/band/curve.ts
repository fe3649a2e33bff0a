/** SWR and feed point impedance over a span of frequencies, and the marks on that curve. */
import type { AntennaSolver } from "../../chain/antennaSolver";
import type { WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { swr } from "../../lines/reflection";
import type { Complex } from "../../numerics/complex";
import { leastBetween, rootBetween, signChanges } from "../../numerics/crossings";
import type { Band, Station } from "../../station/station";

export interface CurvePoint {
  readonly frequency: number;
  readonly swrAtTransmitter: number;
  readonly swrAtFeedPoint: number;
  readonly feedPoint: Complex;
  readonly lineLoss: number;
  readonly powerIntoAntenna: number;
}

/** One point of the curve with the tuner left out of the way; null where the station cannot be worked out. */
export type CurveAt = (frequency: number) => CurvePoint | null;

export const curveOf =
  (station: Station, band: Band, solver: AntennaSolver): CurveAt =>
  (frequency) => {
    const point = workPoint(station, band, frequency, solver, { tuner: "through" });
    return "refused" in point ? null : curvePoint(point);
  };

function curvePoint(point: WorkedPoint): CurvePoint {
  const feed = point.joints.find((j) => j.name.startsWith("feed point"))!;
  return {
    frequency: point.frequency,
    swrAtTransmitter: point.swrAtTransmitter,
    swrAtFeedPoint: swr(feed.impedance, point.ratedResistance),
    feedPoint: feed.impedance,
    lineLoss: point.parts
      .filter((p) => p.edge.inUse && p.edge.part?.kind === "line")
      .reduce((sum, p) => sum + p.loss, 0),
    powerIntoAntenna: point.powerIntoAntenna,
  };
}

/** Marks are found to this share of the frequency: 10 Hz at 10 MHz. */
const markTolerance = 1e-6;

export interface Marks {
  readonly lowestSwrFrequency: number;
  readonly lowestSwr: number;
  /** Zero of the feed point reactance with rising X nearest to the lowest SWR; null when there is none in the span. */
  readonly resonantFrequency: number | null;
  /** Contiguous width around the lowest SWR with the SWR at the transmitter below the limit; 0 when it never is. */
  readonly usableWidth: number;
  readonly usableFrom: number | null;
  readonly usableTo: number | null;
  /** True where an edge was not found within 15 % of the curve's ends: the span is wider than told. */
  readonly usableOpen: boolean;
}

/** `outward`: edges of the usable span are looked for beyond the curve too, where every point is solved anew. */
export function marksOf(curve: readonly CurvePoint[], at: CurveAt, limit: number, outward: boolean): Marks {
  const least = curve.reduce((best, p, i) => (p.swrAtTransmitter < curve[best]!.swrAtTransmitter ? i : best), 0);
  const tolerance = markTolerance * curve[least]!.frequency;
  const low = curve[Math.max(0, least - 1)]!.frequency;
  const high = curve[Math.min(curve.length - 1, least + 1)]!.frequency;
  const swrAt = (f: number) => at(f)?.swrAtTransmitter ?? Number.POSITIVE_INFINITY;
  const lowestSwrFrequency = leastBetween(swrAt, low, high, tolerance);
  return {
    lowestSwrFrequency,
    lowestSwr: swrAt(lowestSwrFrequency),
    resonantFrequency: resonance(curve, at, lowestSwrFrequency, tolerance),
    ...usable(curve, swrAt, { least, limit, tolerance, outward }),
  };
}

/** The lowest SWR lies at an end of the curve: it is lower still beyond it. */
export function isAtEdge(curve: readonly CurvePoint[], lowest: number): boolean {
  const step = curve[1]!.frequency - curve[0]!.frequency;
  const ends = [curve[0]!.frequency, curve[curve.length - 1]!.frequency];
  return ends.some((f) => Math.abs(f - lowest) < step / 2);
}

function resonance(curve: readonly CurvePoint[], at: CurveAt, near: number, tolerance: number): number | null {
  const rising = signChanges(curve.map((p) => p.feedPoint.im)).filter(
    (i) => curve[i]!.feedPoint.im < curve[i + 1]!.feedPoint.im,
  );
  const roots = rising.map((i) =>
    rootBetween((f) => at(f)?.feedPoint.im ?? 0, curve[i]!.frequency, curve[i + 1]!.frequency, tolerance),
  );
  return roots.sort((a, b) => Math.abs(a - near) - Math.abs(b - near))[0] ?? null;
}

/** How far beyond the curve the edge of the usable span is looked for, as a share of the frequency, in steps of one percent. */
const furthest = 0.15;
const outwardStep = 0.01;

interface Wanted {
  /** Index of the lowest SWR. */
  readonly least: number;
  readonly limit: number;
  readonly tolerance: number;
  readonly outward: boolean;
}

function usable(curve: readonly CurvePoint[], swrAt: (f: number) => number, wanted: Wanted) {
  const { least, limit, tolerance } = wanted;
  if (!(curve[least]!.swrAtTransmitter < limit))
    return { usableWidth: 0, usableFrom: null, usableTo: null, usableOpen: false };
  const over = (p: CurvePoint) => !(p.swrAtTransmitter < limit);
  const above = curve.findIndex((p, i) => i > least && over(p));
  const below = curve.findLastIndex((p, i) => i < least && over(p));
  // The inverse stays finite where the SWR is without end: beyond what a splitter passes, say.
  const cross = (a: number, b: number) => rootBetween((f) => 1 / limit - 1 / swrAt(f), a, b, tolerance);
  const outward = (start: number, direction: 1 | -1): number | null => {
    if (!wanted.outward) return null;
    for (let share = outwardStep; share <= furthest; share += outwardStep) {
      const f = start * (1 + direction * share);
      const inner = start * (1 + direction * (share - outwardStep));
      if (!(swrAt(f) < limit)) return direction > 0 ? cross(inner, f) : cross(f, inner);
    }
    return null;
  };
  const [first, last] = [curve[0]!.frequency, curve[curve.length - 1]!.frequency];
  const usableTo = above < 0 ? outward(last, 1) : cross(curve[above - 1]!.frequency, curve[above]!.frequency);
  const usableFrom = below < 0 ? outward(first, -1) : cross(curve[below]!.frequency, curve[below + 1]!.frequency);
  return {
    usableWidth: (usableTo ?? last) - (usableFrom ?? first),
    usableFrom,
    usableTo,
    usableOpen: usableTo === null || usableFrom === null,
  };
}
