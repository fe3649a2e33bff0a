/** The values of an answer to `trim`. */
import type { Value } from "../../answer/answer";
import { firstStep, gainedWatts, type TrimFacts, wholeChange } from "../../words/trim";
import { scalarValue } from "../common/values";
import type { LineDoubt, MovedZero } from "./lineDoubt";
import type { Shares } from "./shares";
import type { Study } from "./study";
import { columnsOfEnds } from "./tables";

const noDip = "no lowest SWR can be followed from length to length here";
const noLength = "no lowest SWR within the lengths searched";

/** A length with what uncertain inputs make of it. */
function lengthValue(study: Study, name: string, value: number | null, reason: string): Value {
  const low = study.bounds.low[name] ?? null;
  const high = study.bounds.high[name] ?? null;
  const plain = scalarValue(value, "m", reason);
  return value === null || low === null || high === null || high - low < 1e-5 * value ? plain : { ...plain, low, high };
}

const megahertzValue = (hertz: number | null, reason: string): Value =>
  scalarValue(hertz === null ? null : hertz / 1e6, "MHz", reason);
const kilohertzValue = (hertz: number | null, reason: string): Value =>
  scalarValue(hertz === null ? null : hertz / 1e3, "kHz", reason);

export function trimValues(f: TrimFacts, study: Study): Record<string, Value> {
  return {
    presentLength: scalarValue(f.present, "m"),
    lengthForLowestSwr: lengthValue(study, "lengthForLowestSwr", f.target, noLength),
    lengthForLowestSwrAtFeedPoint: lengthValue(study, "lengthForLowestSwrAtFeedPoint", f.targetAtFeedPoint, noLength),
    lengthForResonance: lengthValue(
      study,
      "lengthForResonance",
      f.resonance,
      "X does not cross zero within the lengths searched",
    ),
    lowestSwrByTrimming: { ...scalarValue(f.swrBest, "1", noLength), reference: f.rated },
    swrAtResonantLength: { ...scalarValue(f.swrResonant, "1", "there is no resonant length"), reference: f.rated },
    wattsGained: scalarValue(f.wattsBest === null ? null : gainedWatts(f), "W", noLength),
    ...changeValues(f, study),
    kilohertzPerCentimetre: scalarValue(f.kilohertzPerCentimetre, "kHz/cm", noDip),
    lowestSwrFrequency: megahertzValue(study.dipNow, noDip),
    resonantFrequency: megahertzValue(study.resonanceNow, "the feed point is not resonant near this frequency"),
    ...measuredValues(f),
  };
}

/** One for each column of the ladder: negative is cut. */
function changeValues(f: TrimFacts, study: Study): Record<string, Value> {
  const change = wholeChange(f);
  const reason = f.measured?.far ? "what was measured lies too far off to be trimmed" : noLength;
  const values: Record<string, Value> = {};
  for (const { name, end } of columnsOfEnds(study.bench.trimmed.ends))
    values[name] = scalarValue(change === null ? null : 100 * change * end.share, "cm", reason);
  const cut = change !== null && change < 0;
  values.firstStepAtEachEnd = scalarValue(
    cut ? 100 * change * firstStep * Math.max(...f.ends.map((e) => e.share)) : null,
    "cm",
    "nothing is cut",
  );
  return values;
}

function measuredValues({ measured, present, swrNow, rated }: TrimFacts): Record<string, Value> {
  if (!measured) return {};
  const { equivalent } = measured;
  const over = equivalent === null ? null : 100 * (equivalent - present);
  return {
    measuredLowest: megahertzValue(measured.dip, ""),
    lengthAsMeasured: scalarValue(equivalent, "m", noDip),
    actsLongerBy: scalarValue(over, "cm", noDip),
    swrAsMeasured: { ...scalarValue(equivalent === null ? null : swrNow, "1", noDip), reference: rated },
  };
}

export function shareValues(shares: Shares): Record<string, Value> {
  const cm = (length: number | null): Value =>
    scalarValue(length === null ? null : 100 * length, "cm", "does not apply, or cannot be worked out by itself");
  return {
    lengthInVacuum: scalarValue(shares.inVacuum, "m", "this antenna is no plain half wave, quarter wave or full wave"),
    shareOfThicknessAndForm: cm(shares.thickness),
    shareOfInsulation: cm(shares.insulation),
    shareOfGround: cm(shares.ground),
    shareOfLowestSwr: cm(shares.lowestSwr),
    shareOfPath: cm(shares.path),
  };
}

export function lineValues(line: LineDoubt | null, moved: MovedZero | null): Record<string, Value> {
  const none = "X does not cross zero in the shack near this frequency";
  const read = "the sweep does not cross X = 0 where it was taken";
  const ofLine: Record<string, Value> = line
    ? {
        zeroReactanceInShack: megahertzValue(line.inShack, none),
        zeroReactanceShiftOfOneMetre: kilohertzValue(line.zeroShift, none),
        lowestSwrShiftOfOneMetre: kilohertzValue(line.dipShift, none),
      }
    : {};
  if (!moved) return ofLine;
  const { atJoint, atFeedPoint, low, high } = moved;
  return {
    ...ofLine,
    measuredZeroReactance: megahertzValue(atJoint, read),
    measuredZeroReactanceAtFeedPoint: { value: atFeedPoint / 1e6, unit: "MHz", low: low / 1e6, high: high / 1e6 },
  };
}
