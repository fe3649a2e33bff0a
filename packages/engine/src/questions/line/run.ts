/** Which feed line suits? Every line that could lie there, in every band of the station, with the antenna kept. */
import type { Answer, Refusal } from "../../answer/answer";
import { lineSide } from "../../lines/lineFacts";
import type { Station } from "../../station/station";
import { lineHeadline, lineVerdict } from "../../words/line";
import { lineAdvice } from "../../words/lineAdvice";
import { type LeftOut, lineCautions, lineMistakenIdea, lineNotCovered, lineReasons } from "../../words/lineIdea";
import { sentence } from "../../words/phrases";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type Worked, workStation } from "../common/worked";
import { alternativesOf } from "./alternatives";
import { ownAssumptions } from "./assumed";
import { candidatesOf } from "./candidates";
import { type Findings, lineFacts } from "./findings";
import { lineListing } from "./listing";
import { cheapLine, chosenLines } from "./proposal";
import { knownMatters, type Matters, mattersWords, rankedLines, withRuns } from "./ranking";
import { replacedLine } from "./replaced";
import { lineRules } from "./rules";
import { moneyOf } from "./runFacts";
import { studyLines } from "./study";
import { keptAntenna } from "./swapped";
import { lineTables } from "./tables";
import { lineValues } from "./values";
import { lineWorking } from "./working";

/** SWR up to which a set is taken to be content where the file says nothing. */
const usualSwr = 2;

const word = (parameters: Parameters, name: string): string | null =>
  typeof parameters[name] === "string" ? parameters[name] : null;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const worked = yield* workStation(station, parameters, context, () => ({}));
  if ("refused" in worked) return refusal(line, station, worked.refused, worked.mend);
  const found = yield* findLines(worked, parameters, context);
  if ("refused" in found) return refusal(line, station, found.refused, found.mend);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = lineFacts(found);
  const frame = frameOf(line, worked, context, { name: "powerIntoAntenna", least: 0.002 * worked.point.ratedPower });
  const [unknown] = frame.uncertainties;
  const { part } = found.bench.replaced;
  return {
    ...frame,
    values: { ...frame.values, ...lineValues(facts, found) },
    tables: [...lineTables(found), ...frame.tables],
    assumptions: [...frame.assumptions, ...ownAssumptions(found)],
    cautions: [
      ...lineCautions({
        drop: /drop/i.test(found.cheap?.candidate.entry.designation ?? ""),
        pairs: hasPairs(found.ranked),
      }),
      ...frame.cautions,
    ],
    notCovered: [...frame.notCovered, ...lineNotCovered(leftOutOf(found)), ...compared.notComputed],
    parameters: {
      judged: "powerIntoAntenna",
      line: part.name,
      present: part.line.designation,
      length: part.length.value,
      matters: found.matters,
      swrBelow: found.swrBelow,
      money: found.money,
      proposal: found.proposal?.candidate.entry.designation ?? null,
      cheap: found.cheap?.candidate.entry.designation ?? null,
      lengthOf: found.lengths?.entry.designation ?? null,
      decidedOn: facts.worstBand,
      side: found.bench.replaced.side,
      seenBy: found.bench.replaced.behindTuner ? "tuner" : "transmitter",
    },
    headline: sentence(lineHeadline(facts)),
    headlinePhrases: lineHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: lineVerdict(facts),
    reasons: lineReasons(facts),
    next: lineAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: lineRules(facts, found),
    mistakenIdea: lineMistakenIdea(facts),
    working: lineWorking(facts, found),
    figures: [],
  };
}

const hasPairs = (ranked: Findings["ranked"]): boolean =>
  ranked.some(({ candidate }) => lineSide(candidate.entry.model) === "balanced");

type Found = Findings & { readonly leftOut: readonly string[] };

function* findLines(
  worked: Worked,
  parameters: Parameters,
  context: Context,
): Generator<Progress, Found | { readonly refused: string; readonly mend: string }> {
  const { station, point, frequency } = worked;
  const replaced = replacedLine(worked, word(parameters, "line"));
  if ("refused" in replaced) return replaced;
  const asked = { replaced, names: word(parameters, "candidates"), frequency, rated: point.ratedResistance };
  const list = candidatesOf(station, context.lines ?? [], asked);
  if ("refused" in list) return list;
  const bench = { station, replaced, solver: keptAntenna(station, worked.solver) };
  const study = yield* studyLines(bench, list.candidates);
  if (!study)
    return { refused: `${replaced.part.name} is used in no band that can be worked out`, mend: "another line" };
  const wanted: Matters = mattersWords.find((one) => one === parameters.matters) ?? "watts";
  const lines = withRuns(study, replaced.part.length.value);
  const matters = knownMatters(lines, wanted);
  const ranked = rankedLines(lines, matters);
  const swrBelow = station.wanted.swrBelow?.value ?? usualSwr;
  const choice = chosenLines(ranked, { matters, swrBelow, behindTuner: replaced.behindTuner });
  const chosen = {
    worked,
    bench,
    study,
    ranked,
    matters,
    wanted,
    swrBelow,
    money: moneyOf(study),
    ...choice,
    cheap: cheapLine(ranked),
  };
  return { ...chosen, ...alternativesOf(chosen), leftOut: [...list.leftOut, ...study.leftOut] };
}

function leftOutOf({ ranked, leftOut, bench, worked }: Found): LeftOut {
  const without = (known: (one: (typeof ranked)[number]) => number | null): number =>
    ranked.filter((one) => known(one) === null).length;
  return {
    lines: leftOut,
    noVoltage: without(({ run }) => run.voltageShare),
    noWeight: without(({ run }) => run.weight),
    noMargin: without(({ run }) => run.powerMargin),
    noPrice: without(({ run }) => run.price),
    shown: ranked.length,
    pairs: hasPairs(ranked),
    outsideKept: worked.point.antenna.build.outside.length > 0 && bench.replaced.part.route.length > 1,
  };
}

export const line: Question = { ...lineListing, run };
