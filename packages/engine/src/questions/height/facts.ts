/** The facts the sentences of `height` are made of. */
import type { Verdict } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import type { HeightFacts } from "../../words/height";
import type { Aim } from "../common/aim";
import { toDecibels } from "../common/stationNumbers";
import type { Worked } from "../common/worked";
import { zenithIsNull } from "./refined";
import type { Study } from "./study";

/** Share of the antenna's power that leaves for the sky: our rule. */
export const goodShare = 0.7;
export const workableShare = 0.4;
/** dB between transmitter and antenna from which no height is called good: half of the power never arrives there. */
export const heavyPathLoss = 3;

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
    split: study.split,
    zenithIsNull: zenithIsNull(points),
    aim,
    wave,
    delivered: worked.point.powerFromTransmitter,
  };
}
