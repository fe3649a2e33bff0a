/** The way from a joint to the one feed point in use, as a single two-port over frequency. */
import { edgeTwoPorts } from "../../chain/edges";
import { resolveStation } from "../../chain/resolve";
import { voltageReflection } from "../../lines/reflection";
import { cascade, type TwoPort, transformedImpedance } from "../../networks/twoPort";
import { type Complex, divide, magnitude, multiply, subtract } from "../../numerics/complex";
import type { Band, Station } from "../../station/station";

export interface FeedPath {
  /** Impedance at the joint (ohm) for one at the feed point, at a frequency in Hz. */
  readonly towardsTransmitter: (frequency: number, feedPoint: Complex) => Complex;
  /** Impedance at the feed point for one read at the joint. */
  readonly towardsAntenna: (frequency: number, atJoint: Complex) => Complex;
}

/** Path from `joint` (a joint's name, or a meter's) to the feed; null where that joint is not on the way in use. A tuner is left out. */
export function feedPath(station: Station, band: Band, joint: string): FeedPath | null {
  const resolved = resolveStation(station, band, band.frequency.value);
  const meter = resolved.edges.find((e) => e.kind === "meter" && e.name === joint);
  const start = meter ? meter.from : resolved.joints.findIndex((j) => j.name === joint);
  if (wayFrom(resolved, start) === null) return null;
  const twoPortAt = (frequency: number): TwoPort => {
    const here = resolveStation(station, band, frequency);
    const made = edgeTwoPorts(station, here, frequency);
    const way = wayFrom(here, start);
    if ("refused" in made || way === null)
      throw new RangeError(`the path cannot be worked out at ${frequency / 1e6} MHz`);
    return cascade(...way.map((e) => made.twoPorts[e]!));
  };
  return {
    towardsTransmitter: (frequency, feedPoint) => transformedImpedance(twoPortAt(frequency), feedPoint),
    towardsAntenna(frequency, atJoint) {
      const { a, b, c, d } = twoPortAt(frequency);
      return divide(subtract(multiply(d, atJoint), b), subtract(a, multiply(c, atJoint)));
    },
  };
}

/** Edges in use from a joint to the feed, in order; null where the way branches or does not lead there. */
function wayFrom({ joints, edges }: ReturnType<typeof resolveStation>, start: number): number[] | null {
  if (start < 0) return null;
  const way: number[] = [];
  let at = start;
  while (joints[at]!.feed === null) {
    const next = edges.flatMap((e, i) => (e.inUse && e.from === at ? [i] : []));
    if (next.length !== 1) return null;
    way.push(next[0]!);
    at = edges[next[0]!]!.to;
  }
  return way;
}

/** Size of the reflection on a resistance (ohm): least where the SWR is least, and never without end. */
export const reflectionSize = (z: Complex, reference: number): number =>
  z.re > 0 ? magnitude(voltageReflection(z, { re: reference, im: 0 })) : 1;
