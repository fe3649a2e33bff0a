/** Will anything arc or overheat? Every part with a limit against the voltage and heat it meets. */
import type { Answer, Refusal } from "../../answer/answer";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import { stressHeadline, stressVerdict } from "../../words/stress";
import { stressAdvice, stressCautions } from "../../words/stressAdvice";
import { stressMistakenIdea } from "../../words/stressIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { addedLength } from "./addedLength";
import { bandTables, onEveryBand } from "./bands";
import { ownAssumptions } from "./basis";
import { hotFacts, hottestLine, ideaFacts, otherBands, stressFacts } from "./facts";
import { limitsListing } from "./listing";
import { ownNotCovered } from "./notCovered";
import { reasonsOf } from "./reasons";
import { limitRules } from "./rules";
import { settleLimits } from "./settleLimits";
import { limitUnits, type Study, studyLimits } from "./study";
import { alongTable, timeTable } from "./tables";
import { limitValues, withMargins } from "./values";
import { waysToLie } from "./ways";
import { limitWorking } from "./working";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const study = yield* studyLimits(station, parameters, context);
  if ("refused" in study) return refusal(limits, station, study.refused, study.mend);
  const { worked, asked, conditions, facts, doubts } = study;
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const everywhere = yield* onEveryBand(study);
  const frame = frameOf(limits, worked, context, { name: "leastMargin", least: 0.05 });
  const uncertainties = frame.uncertainties.map((one) => {
    const own = doubts.find((doubt) => doubt.place === one.place);
    return own ? { ...one, says: own.says } : one;
  });
  const added = addedLength(study);
  const told = stressFacts(study, added);
  const line = hottestLine(study);
  const ways = line ? waysToLie(study, line) : [];
  const peak = Math.max(...frame.joints.map((joint) => joint.voltage.peak), worked.numbers.greatestPeakVoltage ?? 0);
  return {
    ...frame,
    uncertainties,
    values: { ...withOwnUnits(frame.values), ...limitValues(study, ways) },
    parts: withMargins(study, frame.parts),
    tables: [
      ...(study.lines.length > 0 ? [alongTable(study, linesOnWay(study))] : []),
      ...(line?.heat ? [timeTable(study, line.heat)] : []),
      ...(added ? [added.table] : []),
      ...bandTables(everywhere),
      ...frame.tables,
    ],
    assumptions: [...frame.assumptions, ...ownAssumptions(study)],
    cautions: [...otherBands(study, everywhere), ...stressCautions({ peak, hot: hotFacts(study) }), ...frame.cautions],
    notCovered: [...frame.notCovered, ...ownNotCovered(study), ...compared.notComputed],
    parameters: {
      judged: "leastMargin",
      airTemperature: conditions.air.temperature - 273.15,
      altitude: asked.altitude,
      duty: asked.duty.value,
      modulation: asked.modulation,
      lies: asked.lies,
      gap: asked.gap,
      sending: asked.sending.kind,
      first: facts[0].part === "" ? "wires of the antenna" : facts[0].part,
      hottest: line?.part.edge.name ?? null,
    },
    headline: sentence(stressHeadline(told)),
    headlinePhrases: stressHeadline(told),
    verdict: told.verdict,
    verdictPhrases: stressVerdict(told),
    reasons: reasonsOf(study),
    next: stressAdvice(told),
    wouldSettle: settleLimits(study, uncertainties[0], told),
    readings: compared.readings,
    rulesOfThumb: limitRules(study),
    mistakenIdea: stressMistakenIdea(ideaFacts(study)),
    working: limitWorking(study, told, ways),
    figures: [],
  };
}

/** Lines before any branching, and those of the branch in which the first to fail lies, or else the last. */
function linesOnWay({ lines, facts: [first] }: Study) {
  const own = lines.find(({ part }) => part.edge.name === first.part)?.part.edge.branch ?? "";
  const branch = own === "" ? lines.at(-1)?.part.edge.branch : own;
  return lines.filter(({ part }) => part.edge.branch === "" || part.edge.branch === branch);
}

const withOwnUnits = (values: Answer["values"]): Answer["values"] =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      limitUnits[name] === undefined ? value : { ...value, unit: limitUnits[name] },
    ]),
  );

export const limits: Question = { ...limitsListing, run };
