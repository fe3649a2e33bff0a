/** The facts the sentences of `band` are made of. */
import type { Verdict } from "../../answer/answer";
import type { BandFacts } from "../../words/band";
import type { Worked } from "../common/worked";
import type { CurvePoint } from "./curve";
import type { Sweep } from "./sweep";

/** Share of the wanted band below the limit: all of it is good, half of it workable. Our rule. */
const workableShare = 0.5;
/** Matched loss in dB from which a fine curve is no longer good news: half of the power. */
const flatteringLoss = 3;

export function bandFacts(
  worked: Worked,
  sweep: Sweep,
  wanted: { readonly from: number; readonly to: number },
  limit: number,
): BandFacts {
  const inside = sweep.curve.filter((p) => p.frequency >= wanted.from - 1 && p.frequency <= wanted.to + 1);
  const swrs = inside.map((p) => p.swrAtTransmitter);
  const share = inside.filter((p) => p.swrAtTransmitter < limit).length / inside.length;
  const matchedLoss = worked.numbers.matchedLineLoss ?? null;
  const byCurve: Verdict = share >= 1 ? "good" : share >= workableShare ? "workable" : "trouble";
  const verdict = byCurve === "good" && matchedLoss !== null && matchedLoss >= flatteringLoss ? "workable" : byCurve;
  return {
    ...wanted,
    limit,
    worst: Math.max(...swrs),
    best: Math.min(...swrs),
    share,
    verdict,
    ...sweep.marks,
    flattery: flatteryIn(inside),
    matchedLoss,
    tuner: worked.point.resolved.edges.find((e) => e.kind === "tuner" && e.inUse)?.name ?? null,
  };
}

/** Where the SWR at the antenna exceeds that in the shack most. */
function flatteryIn(inside: readonly CurvePoint[]) {
  const most = inside.reduce((best, p) =>
    p.swrAtFeedPoint - p.swrAtTransmitter > best.swrAtFeedPoint - best.swrAtTransmitter ? p : best,
  );
  return { frequency: most.frequency, atAntenna: most.swrAtFeedPoint, atTransmitter: most.swrAtTransmitter };
}
