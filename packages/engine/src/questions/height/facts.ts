/** The facts the sentences of `height` are made of. */
import type { Verdict } from "../../answer/answer";
import { rootBetween } from "../../numerics/crossings";
import { speedOfLight } from "../../numerics/vacuum";
import type { HeightFacts } from "../../words/height";
import { toDecibels } from "../common/stationNumbers";
import type { Worked } from "../common/worked";
import type { Aim, HeightPoint, Study } from "./study";

/** Share of the antenna's power that leaves for the sky: our rule. */
export const goodShare = 0.7;
export const workableShare = 0.4;
/** dB between transmitter and antenna from which no height is called good: half of the power never arrives there. */
export const heavyPathLoss = 3;
/** Straight up this many dB below the strongest direction counts as a split pattern. */
const splitDepth = 1;
/** Straight up this far below the strongest direction at every height is a null of the antenna, not a split. */
const nullDepth = 10;

export function heightFacts(worked: Worked, study: Study, aim: Aim): HeightFacts {
  const { present, points } = study;
  const share = present.radiatedPower / present.powerIntoAntenna;
  const byHeight: Verdict = share >= goodShare ? "good" : share >= workableShare ? "workable" : "trouble";
  const pathLoss = toDecibels(worked.point.powerFromTransmitter / present.powerIntoAntenna);
  const lowestSwr = points.reduce((best, p) => (p.swrAtTransmitter < best.swrAtTransmitter ? p : best), present);
  const wave = speedOfLight / worked.frequency;
  const higher = points.filter((p) => p.height >= present.height + 0.06 * wave)[0] ?? points[points.length - 1]!;
  const most = points.reduce((best, p) => (p.radiatedPower > best.radiatedPower ? p : best), present);
  return {
    present,
    share,
    verdict: byHeight === "good" && pathLoss >= heavyPathLoss ? "workable" : byHeight,
    pathLoss,
    lowestSwr,
    higher,
    most,
    split: splitHeight(points),
    zenithIsNull: points.every((p) => p.maximumGain - p.gainHigh > nullDepth),
    aim,
    wave,
    delivered: worked.point.powerFromTransmitter,
  };
}

/** Lowest height at which straight up falls `splitDepth` dB below the strongest direction, between points linearly; null without one. */
function splitHeight(points: readonly HeightPoint[]): number | null {
  const depth = (p: HeightPoint) => p.maximumGain - p.gainHigh - splitDepth;
  if (points.every((p) => depth(p) > nullDepth - splitDepth)) return null;
  const i = points.findIndex((p, k) => k > 0 && depth(p) >= 0 && depth(points[k - 1]!) < 0);
  if (i < 0) return null;
  const [a, b] = [points[i - 1]!, points[i]!];
  return rootBetween(
    (h) => depth(a) + ((depth(b) - depth(a)) * (h - a.height)) / (b.height - a.height),
    a.height,
    b.height,
    1e-3,
  );
}
