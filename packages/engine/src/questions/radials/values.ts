/** The values of `radials`. */
import type { Value } from "../../answer/answer";
import { longer, type RadialFacts, type TriedFacts } from "../../words/radials";
import { scalarValue } from "../common/values";
import type { Study } from "./study";
import { currentsShown } from "./tables";

/** Unit of what is worked out again when an uncertain input is moved. */
export const radialUnits: Readonly<Record<string, string>> = { skyShare: "%" };

export function radialValues(f: RadialFacts, study: Study): Record<string, Value> {
  const watts = (t: TriedFacts | null, reason: string): Value => scalarValue(t?.watts ?? null, "W", reason);
  const more = (t: TriedFacts | null, reason: string): Value => scalarValue(t && t.watts - f.now.watts, "W", reason);
  const noOther = "the other place could not be worked out";
  const currents = currentsShown(study);
  return {
    radialCount: scalarValue(f.now.count, "1"),
    radialLength: scalarValue(f.now.count > 0 ? f.now.length : null, "m", "there are no radials"),
    wireInRadials: scalarValue(f.now.count * f.now.length, "m"),
    sendingResistance: scalarValue(f.now.resistance * f.now.share, "ohm"),
    lossResistance: scalarValue(f.now.resistance * (1 - f.now.share), "ohm"),
    gainAtElevation: scalarValue(f.now.gain, "dBi"),
    gainAt10: scalarValue(study.present.gains.low, "dBi"),
    gainAt25: scalarValue(study.present.gains.high, "dBi"),
    ...bestValues(f),
    radiatedWithSameWire: watts(f.sameWire, "there are no radials"),
    wattsMoreFromSameWire: more(f.sameWire, "there are no radials"),
    radiatedWithMore: watts(f.enough, ""),
    wattsMoreFromMore: more(f.enough, ""),
    radiatedWithMost: watts(f.most, ""),
    wattsMoreFromLonger: more(longer(f), "longer radials bring little"),
    radiatedWithSameWireOtherwise: watts(f.otherwise, noOther),
    wattsMoreFromMoving: more(f.otherwise, noOther),
    radiatedAllRound: watts(f.allRound, "they are spread all round, or there are none"),
    largestRadialCurrent: scalarValue(
      currents.length > 0 ? Math.max(...currents.map((c) => c.current)) : null,
      "A",
      "there are no radials",
    ),
    radialCurrentSpread: scalarValue(f.spread, "1", "there are no radials"),
  };
}

function bestValues(f: RadialFacts): Record<string, Value> {
  return {
    bestCountOfSameWire: scalarValue(f.sameWire?.count ?? null, "1", "there are no radials"),
    bestLengthOfSameWire: scalarValue(f.sameWire?.length ?? null, "m", "there are no radials"),
    enoughRadials: scalarValue(f.enough.count, "1"),
    mostRadials: scalarValue(f.most.count, "1"),
    behindSameWire: scalarValue(f.behindSameWire, "dB"),
    behindMost: scalarValue(f.behindMost, "dB"),
  };
}
