/** How well the antenna itself could be worked out. */
import type { WorkedPoint } from "../../chain/workedPoint";
import { magnitude } from "../../numerics/complex";

/**
 * Error of the impedance at the first feed in use, ohm: the step by which the extrapolation over the halved mesh moved it
 * (a third of the difference of the two meshes). Other ports, of antennas that stand idle, do not count. Null where the
 * antenna was interpolated or a port takes no definite impedance.
 */
export function feedError(point: WorkedPoint): number | null {
  const { feeds, extrapolationStep } = point.antenna;
  const port = Math.max(0, feeds.indexOf(point.resolved.feedsInUse[0] ?? ""));
  return extrapolationStep && magnitude(extrapolationStep[port]![port]!);
}

/** Told from here on: the larger of one ohm and two percent of the impedance; and a thousandth of the power. */
const aimOhms = 1;
const aimShare = 0.02;
const aimBalance = 1e-3;

/** What the answer has to say when the antenna could not be worked out as well as it should be; both null otherwise. */
export function shortfall(point: WorkedPoint, residue: number | null): { ohms: number | null; power: number | null } {
  const error = feedError(point);
  const feed = point.joints.find((j) => j.name.startsWith("feed point"));
  const allowed = Math.max(aimOhms, aimShare * (feed ? magnitude(feed.impedance) : 0));
  return {
    ohms: error !== null && error > allowed ? error : null,
    power: residue !== null && Math.abs(residue) > aimBalance ? Math.abs(residue) : null,
  };
}
