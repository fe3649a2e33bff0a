/** The values of `line`: the present line, the proposed and the cheap one, in the band where the present one brings least. */
import type { Value } from "../../answer/answer";
import type { LineFacts, LineInPath } from "../../words/lineFacts";
import { scalarValue } from "../common/values";
import type { Findings } from "./findings";
import { worstOf } from "./study";

export function lineValues(f: LineFacts, { study, worked, lengths }: Findings): Record<string, Value> {
  const row = study.present.rows[worstOf(study.present)]!;
  const reference = worked.point.ratedResistance;
  const onRated = (value: Value): Value => ({ ...value, reference }) as Value;
  return {
    heatInPresent: scalarValue(f.heat, "W"),
    wattsOfPresent: scalarValue(f.present.watts, "W"),
    lossOfPresent: scalarValue(f.present.loss, "dB"),
    addedByMismatch: scalarValue(f.present.added, "dB"),
    highestVoltage: scalarValue(row.highestVoltage, "V"),
    voltageUsed: percent(f.present, notKnown),
    powerMargin: scalarValue(f.present.powerMargin, "1", "its build is not known"),
    receivePenalty: scalarValue(f.present.receive, "dB", "the noise is not known"),
    wattsOfFirst: scalarValue(f.first.watts, "W"),
    ...otherValues("Proposed", f.proposal, f, "no other line is worth the change"),
    ...otherValues("Cheap", f.cheap, f, "the list has no 75-ohm coaxial line, or a pair lies there"),
    swrOfCheap: f.cheap ? onRated(scalarValue(f.cheap.swrSeen, "1")) : scalarValue(null, "1", "no such line"),
    lowestSwrByLength: ranged(lengths?.range.low),
    highestSwrByLength: ranged(lengths?.range.high),
    lowestSwrOnRated: ranged(lengths?.rangeOnRated.low),
    highestSwrOnRated: ranged(lengths?.rangeOnRated.high),
    halfWaveOnLine: scalarValue(lengths?.halfWave ?? null, "m", "no length was studied"),
  };
  function ranged(value: number | undefined): Value {
    return value === undefined ? scalarValue(null, "1", "no length was studied") : onRated(scalarValue(value, "1"));
  }
}

const notKnown = "what it stands is not known here";

const percent = (line: LineInPath | null, reason: string): Value =>
  scalarValue(line?.voltageShare == null ? null : 100 * line.voltageShare, "%", reason);

function otherValues(name: string, line: LineInPath | null, f: LineFacts, reason: string): Record<string, Value> {
  return {
    [`wattsOf${name}`]: scalarValue(line?.watts ?? null, "W", reason),
    [`wattsMoreFrom${name}`]: scalarValue(line && line.watts - f.present.watts, "W", reason),
    [`gainedBy${name}`]: scalarValue(line?.gained ?? null, "dB", reason),
    [`powerMarginOf${name}`]: scalarValue(line?.powerMargin ?? null, "1", line ? notKnown : reason),
    [`receivePenaltyOf${name}`]: scalarValue(line?.receive ?? null, "dB", reason),
    [`voltageUsedOf${name}`]: percent(line, line ? notKnown : reason),
  };
}
