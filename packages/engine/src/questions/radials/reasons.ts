/** What the verdict of `radials` rests on. */
import type { Answer } from "../../answer/answer";
import {
  goodMost,
  goodSameWire,
  mostReason,
  otherwiseReason,
  type RadialFacts,
  sameWireReason,
  workableMost,
  workableSameWire,
} from "../../words/radials";

export function reasonsOf(f: RadialFacts): Answer["reasons"] {
  const source = "our rule: half an S-unit is hardly heard (common practice, no source)";
  const most = {
    says: mostReason(f),
    value: f.behindMost,
    limit: f.behindMost <= goodMost ? goodMost : workableMost,
    unit: "dB",
    source,
  };
  const moved = {
    says: otherwiseReason(f),
    value: f.behindOtherwise,
    limit: f.behindOtherwise <= goodMost ? goodMost : workableMost,
    unit: "dB",
    source,
  };
  const more = f.behindOtherwise > goodMost ? [most, moved] : [most];
  if (f.earthAlone !== null) return more;
  const cut = {
    says: sameWireReason(f),
    value: f.behindSameWire,
    limit: f.behindSameWire <= goodSameWire ? goodSameWire : workableSameWire,
    unit: "dB",
    source: "our rule: another cut of wire that is there costs an afternoon (common practice, no source)",
  };
  return [cut, ...more];
}
