/** What will the transmitter see across the band? SWR at both ends of the line, told apart from resonance. */
import type { Answer, Refusal, RuleOfThumb, Value } from "../../answer/answer";
import { plainNumber } from "../../quantity/format";
import type { Station } from "../../station/station";
import { type BandFacts, bandAdvice, bandHeadline, bandReason, bandVerdict } from "../../words/band";
import { bandMistakenIdea } from "../../words/bandIdea";
import { sentence } from "../../words/phrases";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { scalarValue } from "../common/values";
import { workStation } from "../common/worked";
import { bandFacts } from "./facts";
import { bandListing } from "./listing";
import { type Sweep, sweepBand, viewOf } from "./sweep";
import { bandTable } from "./table";
import { bandWorking, curveMethod } from "./working";

/** SWR limit when neither the question nor the file names one. */
const usualLimit = 2;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const worked = yield* workStation(station, parameters, context, () => ({}), "through");
  if ("refused" in worked) return refusal(band, station, worked.refused, worked.mend);
  const limit =
    typeof parameters.swrBelow === "number" ? parameters.swrBelow : (station.wanted.swrBelow?.value ?? usualLimit);
  const asked = parameters.sweep;
  const wanted = typeof asked === "object" ? asked : worked.band.sweep;
  const sweep = yield* sweepBand(worked, viewOf(wanted.from, wanted.to), limit);
  if ("refused" in sweep) return refusal(band, station, sweep.refused, sweep.mend);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = bandFacts(worked, sweep, wanted, limit);
  const frame = frameOf(band, worked, context, { name: "swrAtTransmitter", least: 0.02 }, [curveMethod(sweep)]);
  const [unknown] = frame.uncertainties;
  return {
    ...frame,
    values: { ...frame.values, ...bandValues(facts, sweep, worked.point.ratedResistance) },
    tables: [bandTable(worked, sweep), ...frame.tables],
    notCovered: [...frame.notCovered, ...compared.notComputed],
    parameters: {
      judged: "swrAtTransmitter",
      swrBelow: limit,
      sweepFrom: wanted.from / 1e6,
      sweepTo: wanted.to / 1e6,
    },
    headline: sentence(bandHeadline(facts)),
    headlinePhrases: bandHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: bandVerdict(facts),
    reasons: [
      {
        says: bandReason(facts),
        value: 100 * facts.share,
        limit: 100,
        unit: "%",
        source:
          "our rule: good when all of the band is below the limit, workable when half of it is (common practice, no source)",
      },
    ],
    next: bandAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: bandRules(facts),
    mistakenIdea: bandMistakenIdea(facts),
    working: bandWorking(worked, sweep, facts),
    figures: [],
  };
}

function bandValues(facts: BandFacts, { marks, bounds }: Sweep, reference: number): Record<string, Value> {
  const spanned = (name: string, unit: string, value: number | null, factor: number, reason: string): Value => {
    const low = bounds.low[name] ?? null;
    const high = bounds.high[name] ?? null;
    const plain = scalarValue(value === null ? null : value * factor, unit, reason);
    return value === null || low === null || high === null || high - low < 1e-6 * Math.abs(value)
      ? plain
      : { ...plain, low: low * factor, high: high * factor };
  };
  return {
    bestSwrInBand: { ...scalarValue(facts.best, "1"), reference },
    worstSwrInBand: { ...scalarValue(facts.worst, "1", "without end"), reference },
    lowestSwr: { ...spanned("lowestSwr", "1", marks.lowestSwr, 1, "without end"), reference },
    lowestSwrFrequency: spanned("lowestSwrFrequency", "MHz", marks.lowestSwrFrequency, 1e-6, ""),
    resonantFrequency: spanned(
      "resonantFrequency",
      "MHz",
      marks.resonantFrequency,
      1e-6,
      "the feed point is not resonant within the span shown",
    ),
    usableWidth: spanned("usableWidth", "kHz", marks.usableWidth, 1e-3, ""),
    ...(facts.outsideShift === null ? {} : { outsideShift: scalarValue(facts.outsideShift / 1e3, "kHz") }),
    swrDifferenceFrequency: scalarValue(
      facts.onlyLoss ? facts.ends.frequency / 1e6 : null,
      "MHz",
      "the path transforms the impedance: its two ends do not differ by loss alone",
    ),
  };
}

function bandRules(facts: BandFacts): RuleOfThumb[] {
  if (facts.resonantFrequency === null) return [];
  return [
    {
      rule: "lowest SWR and resonance are one frequency",
      ruleValue: `${plainNumber(facts.resonantFrequency / 1e6, 3)} MHz`,
      computed: `${plainNumber(facts.lowestSwrFrequency / 1e6, 3)} MHz`,
      holds: "where R at resonance is near the rated load and the line has no effect",
      source: "common practice, no source",
    },
  ];
}

export const band: Question = { ...bandListing, run };
