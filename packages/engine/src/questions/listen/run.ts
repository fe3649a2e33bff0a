/** Does the loss matter for receiving? Noise from outside against what the line and the receiver add to it. */
import type { Answer, Refusal, ScalarValue } from "../../answer/answer";
import type { Station } from "../../station/station";
import * as words from "../../words/listen";
import { listenMistakenIdea } from "../../words/listenIdea";
import { sentence } from "../../words/phrases";
import { bandOf } from "../common/bandOf";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { scalarValue, valuesOf } from "../common/values";
import { workStation } from "../common/worked";
import { bandsTable, placesTable } from "./bands";
import { inOwnWords, withDoubt } from "./doubt";
import { listenFacts, workableUpTo } from "./facts";
import { frequencyTable } from "./frequencies";
import { listenListing } from "./listing";
import { listening as listeningOf } from "./parameters";
import { canHear, listenUnits, receptionOf, systemOf, unheard } from "./reception";
import { listenWorking } from "./working";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const band = bandOf(station, parameters);
  if ("refused" in band) return refusal(listen, station, band.refused, band.mend);
  if (!canHear(band.frequency.value)) return refusal(listen, station, words.beyondNoise, words.withinNoise);
  const listening = listeningOf(station, parameters);
  const solved = yield* workStation(station, parameters, context, (point, { numbers }) =>
    receptionOf(listening, point.frequency, systemOf(listening, point, numbers.radiatedPower!)),
  );
  if ("refused" in solved) return refusal(listen, station, solved.refused, solved.mend);
  const { worked, says } = withDoubt(solved, listening);
  const { point, numbers, bounds, frequency } = worked;
  const bands = yield* bandsTable(worked, listening);
  const facts = listenFacts(worked, listening, bands.rows);
  const frame = frameOf(listen, worked, context, { name: "snrLossByLine", least: 0.01 }, methods);
  const own = Object.fromEntries(Object.keys(listenUnits).map((name) => [name, numbers[name] ?? null]));
  const given = valuesOf(own, bounds, point, listenUnits);
  const cost = given.snrLossByLine as ScalarValue;
  return {
    ...frame,
    values: {
      ...frame.values,
      ...given,
      snrLossByLine: {
        ...cost,
        ...(cost.low === undefined ? {} : { low: Math.max(0, cost.low) }),
        says: facts.line.name.replace("the ", ""),
      },
      ...(facts.seen ? { noiseAboveExpected: scalarValue(facts.seen.above, "dB") } : {}),
      noiseRiseNeeded: scalarValue(
        facts.riseNeeded,
        "dB",
        `the line takes too little to cost ${unheard} dB, whatever the noise`,
      ),
      lineMattersFrom: scalarValue(
        facts.mattersFrom === null ? null : facts.mattersFrom / 1e6,
        "MHz",
        `below ${unheard} dB up to ${facts.span.to / 1e6} MHz`,
      ),
    },
    tables: [bands.table, placesTable(worked, listening), frequencyTable(listening, point), ...frame.tables],
    assumptions: [...frame.assumptions, ...listening.assumed],
    uncertainties: inOwnWords(frame.uncertainties, says),
    cautions: [...words.listenCautions(facts), ...frame.cautions],
    notCovered: [...words.listenNotCovered(facts), ...frame.notCovered],
    parameters: {
      judged: "snrLossByLine",
      frequency,
      noisePlace: listening.place,
      receiverNoiseFigure: listening.receiver.value,
      bandwidth: listening.bandwidth,
      ...(listening.seen === null ? {} : { meterReading: listening.seen }),
      noiseFigureOfPreamplifier: listening.preamplifier.noise,
      gainOfPreamplifier: listening.preamplifier.gain,
    },
    headline: sentence(words.listenHeadline(facts)),
    headlinePhrases: words.listenHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: words.listenVerdict(facts),
    reasons: [
      {
        says: words.listenReason(facts),
        value: facts.cost,
        limit: facts.verdict === "good" ? unheard : workableUpTo,
        unit: "dB",
        source:
          "our rule: less than half a decibel of signal to noise is not heard, from one and a half on it is (common practice, no source)",
      },
    ],
    next: words.listenAdvice(facts),
    wouldSettle: words.listenTest(facts),
    readings: [],
    rulesOfThumb: words.listenRules(facts),
    mistakenIdea: listenMistakenIdea(facts),
    working: listenWorking(worked, listening, systemOf(listening, point, numbers.radiatedPower!)),
    figures: [],
  };
}

const methods = [
  {
    name: "noise",
    says: "man-made and galactic noise by the formulas of ITU-R P.372 (from memory), added as powers; losses on receiving by reciprocity from the same solution that sends",
  },
];

export const listen: Question = { ...listenListing, run };
