/** Numbers and their bounds as the `values` of an answer. */
import type { ComplexValue, ScalarValue, Value } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import type { Complex } from "../../numerics/complex";
import type { Numbers } from "./bounds";
import { unitOf } from "./stationNumbers";

/** Smaller relative spans than this are rounding, not doubt. */
const leastSpan = 1e-6;

const doubtful = (value: number, low: number, high: number): boolean =>
  high - low > leastSpan * Math.max(Math.abs(value), 1e-9);

export function scalarValue(
  value: number | null,
  unit: string,
  reason = "does not apply to this station",
): ScalarValue {
  return value === null || !Number.isFinite(value) ? { value: null, unit, reason } : { value, unit };
}

export const complexValue = (z: Complex): ComplexValue => ({ re: z.re, im: z.im, unit: "ohm" });

/** Every number as a value, with low and high where an uncertain input moves it; SWR names its reference. */
export function valuesOf(
  numbers: Numbers,
  bounds: { readonly low: Numbers; readonly high: Numbers } | null,
  point: WorkedPoint,
  units: Readonly<Record<string, string>> = unitOf,
): Record<string, Value> {
  const values: Record<string, Value> = {};
  for (const [name, value] of Object.entries(numbers)) {
    const plain = scalarValue(value, units[name] ?? "1", reasonFor(name, point));
    const low = bounds?.low[name] ?? null;
    const high = bounds?.high[name] ?? null;
    const spanned =
      value !== null && low !== null && high !== null && doubtful(value, low, high)
        ? { low: atLeast(name, low), high: Math.min(high, mostPower(name, numbers, bounds)) }
        : {};
    const reference = name.startsWith("swr") ? { reference: point.ratedResistance } : {};
    values[name] = { ...plain, ...spanned, ...reference };
  }
  return values;
}

/** A root of summed squares may overshoot what can be: an SWR below 1, a power below 0. */
function atLeast(name: string, low: number): number {
  if (name.startsWith("swr")) return Math.max(1, low);
  return unitOf[name] === "W" ? Math.max(0, low) : low;
}

/** And a power above what the transmitter delivers at most. */
function mostPower(name: string, numbers: Numbers, bounds: { readonly high: Numbers } | null): number {
  if (unitOf[name] !== "W" || name === "powerFromTransmitter") return Number.POSITIVE_INFINITY;
  return bounds?.high.powerFromTransmitter ?? numbers.powerFromTransmitter ?? Number.POSITIVE_INFINITY;
}

function reasonFor(name: string, point: WorkedPoint): string {
  if (name.startsWith("swr")) return "without end: no power is taken there";
  if (point.resolved.feedsInUse.length > 1) return "the path branches: see parts";
  return "does not apply to this station";
}

/** Feed point and transmitter impedance, shared by every answer with a path. */
export function impedanceValues(point: WorkedPoint): Record<string, Value> {
  const feed = point.joints.find((j) => j.name.startsWith("feed point"))!;
  const values: Record<string, Value> = {
    feedPointImpedance: complexValue(feed.impedance),
    impedanceAtTransmitter: complexValue(point.joints[0]!.impedance),
  };
  const tuner = point.parts.find((p) => p.edge.kind === "tuner" && p.edge.inUse);
  const behind = tuner && point.joints.find((j) => j.name === tuner.to);
  if (behind) values.impedanceToMatch = complexValue(behind.impedance);
  return values;
}
