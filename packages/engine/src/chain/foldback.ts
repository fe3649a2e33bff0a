/** What the transmitter delivers into the SWR it works into: the owner's curve, nothing else. */
import type { Transmitter } from "../station/station";

/**
 * Peak envelope power in W. Linear between the points of the file; at SWR 1 it is the stated power, which is that into the
 * rated load; after the last point the last one's. Without a curve full power is delivered (the reader lists that assumption). A transmitter's
 * source impedance is not known and enters nothing.
 */
export function deliveredPower(transmitter: Transmitter, swr: number): number {
  const points = [...transmitter.powerAtSwr].sort((a, b) => a.swr - b.swr);
  if (!points[0]) return transmitter.power.value;
  const curve = points[0].swr > 1 ? [{ swr: 1, power: transmitter.power }, ...points] : points;
  const first = curve[0]!;
  const last = curve[curve.length - 1]!;
  if (swr <= first.swr) return first.power.value;
  if (!(swr < last.swr)) return last.power.value;
  const above = curve.findIndex((p) => p.swr > swr);
  const a = curve[above - 1]!;
  const b = curve[above]!;
  return a.power.value + ((b.power.value - a.power.value) * (swr - a.swr)) / (b.swr - a.swr);
}

/** True where the curve of the file ends before this SWR. */
export const beyondCurve = (transmitter: Transmitter, swr: number): boolean =>
  transmitter.powerAtSwr.length > 0 && swr > Math.max(...transmitter.powerAtSwr.map((p) => p.swr));
