/** The facts the sentences of `radials` are made of. */
import type { Verdict } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import {
  gained,
  goodMost,
  goodSameWire,
  type RadialFacts,
  type TriedFacts,
  workableMost,
  workableSameWire,
} from "../../words/radials";
import type { Worked } from "../common/worked";
import { spreadOf } from "./currents";
import type { Site } from "./site";
import type { Aim, RadialPoint, Study } from "./study";
import type { RadialChange } from "./withRadials";

/** dB below the most from which a smaller number is no longer enough: hardly to be measured. */
const nearTheMost = 0.3;

export function radialFacts(
  worked: Worked,
  study: Study,
  site: Site,
  asked: { readonly aim: Aim; readonly otherLie: RadialChange["lie"] },
): RadialFacts {
  const into = worked.point.powerIntoAntenna;
  const tried = (p: RadialPoint): TriedFacts => triedFacts(p, into);
  const list = (points: readonly RadialPoint[]): TriedFacts[] => points.map(tried);
  const now = tried(study.present);
  const byCount = list(study.byCount);
  const most = bestOf([...byCount, now]);
  const sameWirePoints = list(study.sameWire);
  const sameWire = site.radials ? bestOf([...sameWirePoints, now]) : null;
  const behindSameWire = sameWire ? gained(now, sameWire) : gained(now, bestOf([...sameWirePoints, now]));
  const behindMost = gained(now, most);
  const otherwise = study.otherwise.length > 0 ? bestOf(list(study.otherwise)) : null;
  const behindOtherwise = otherwise ? Math.max(0, gained(now, otherwise)) : 0;
  return {
    verdict: verdictOf(behindSameWire, Math.max(behindMost, behindOtherwise)),
    now,
    earthAlone: site.radials ? null : site.earth,
    into,
    elevation: asked.aim.elevation,
    wave: speedOfLight / worked.frequency,
    sameWire,
    sameWirePoints,
    byCount,
    byLength: list(study.byLength),
    most,
    enough: byCount.find((t) => t.count > 0 && gained(t, most) <= nearTheMost) ?? most,
    otherwise,
    otherLie: asked.otherLie,
    allRound: study.allRound && tried(study.allRound),
    spread: spreadOf(study.present.currents),
    sector: site.sector,
    behindSameWire,
    behindMost,
    behindOtherwise,
  };
}

export function triedFacts(p: RadialPoint, into: number): TriedFacts {
  return {
    count: p.count,
    length: p.length,
    lie: p.lie,
    watts: p.share * into,
    share: p.share,
    resistance: p.resistance,
    swrAtFeedPoint: p.swrAtFeedPoint,
    swrAtTransmitter: p.swrAtTransmitter,
    gain: p.gains.wanted,
  };
}

const bestOf = (all: readonly TriedFacts[]): TriedFacts => all.reduce((a, b) => (b.share > a.share ? b : a));

/** `more`: by more radials or by the other place, whichever brings more, dB. */
function verdictOf(sameWire: number, more: number): Verdict {
  if (sameWire > workableSameWire || more > workableMost) return "trouble";
  return sameWire > goodSameWire || more > goodMost ? "workable" : "good";
}
