/** What are the constants of this line? By its data sheet, by its build, and the two side by side. No antenna is solved. */
import type { Answer, Refusal, ScalarValue } from "../../answer/answer";
import type { Station } from "../../station/station";
import { buildHeadline, buildVerdict } from "../../words/build";
import { buildCautions, buildNext, buildNotCovered, buildSettles } from "../../words/buildAdvice";
import type { BuildFacts } from "../../words/buildFacts";
import { buildMistakenIdea, buildRules, impedanceRule } from "../../words/buildIdea";
import { asSentence, sentence } from "../../words/phrases";
import { provenanceOf } from "../common/provenanceOf";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { buildFacts } from "./facts";
import { assumptionsOf, beyondItsMode, impossibleDip, inputOf } from "./input";
import { lineBounds } from "./lineNumbers";
import { buildListing } from "./listing";
import { type SimilarLine, similarLines, similarTable } from "./similar";
import { type BuildResult, buildResult } from "./study";
import { type SweptLine, sweptLine, sweptStep, sweptValues } from "./sweeps";
import { buildTables } from "./tables";
import { buildValues } from "./values";
import { buildWorking } from "./working";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const input = inputOf(station, parameters, context);
  if ("refused" in input) return refusal(build, station, input.refused, input.mend);
  const beyond = beyondItsMode(input) ?? impossibleDip(input);
  if (beyond) return refusal(build, station, beyond.refused, beyond.mend);
  yield { done: 0, of: 1, what: "frequencies" };
  const result = buildResult(input);
  const similar = similarLines(input.chosen.entry, context.lines ?? [], input.frequency);
  const swept = sweptLine(station, input.chosen, result.main.model, input.frequency, input.length);
  return answerOf(station, parameters, { ...result, similar, swept }, context);
}

interface Found extends BuildResult {
  readonly similar: readonly SimilarLine[];
  readonly swept: SweptLine | null;
}

function answerOf(station: Station, parameters: Parameters, result: Found, context: Context): Answer {
  const { input } = result;
  const bounds = lineBounds(result);
  const facts = {
    ...buildFacts(result, bounds),
    similar: result.similar.map((line) => line.designation),
    swept: result.swept,
  };
  const headline = buildHeadline(facts);
  return {
    schema: "feedpath-answer-1",
    question: build.id,
    asked: build.asked,
    station: station.title,
    band: typeof parameters.band === "string" ? parameters.band : (station.bands[0]?.name ?? ""),
    frequency: input.frequency,
    parameters: {
      judged: "attenuation",
      line: input.chosen.part?.name ?? input.chosen.entry.designation,
      designation: input.chosen.entry.designation,
      frequency: input.frequency,
      temperature: input.temperature,
      length: input.length,
      ...(input.dip === null ? {} : { dip: input.dip }),
    },
    headline: sentence(headline),
    headlinePhrases: headline,
    verdict: null,
    verdictPhrases: buildVerdict(facts),
    reasons: [],
    next: buildNext(facts),
    wouldSettle: result.swept ? null : buildSettles,
    values: {
      ...buildValues(result, bounds),
      impedanceByRule: ruleValue(facts),
      ...(result.swept && sweptValues(result.swept)),
    },
    joints: [],
    parts: [],
    tables: [...buildTables(result), ...(result.similar.length > 0 ? [similarTable(result.similar)] : [])],
    lobes: [],
    rulesOfThumb: buildRules(facts),
    mistakenIdea: buildMistakenIdea(facts),
    assumptions: assumptionsOf(station, parameters, input.chosen),
    uncertainties: bounds.uncertainties,
    readings: [],
    cautions: cautionsOf(result, facts),
    notCovered: buildNotCovered(facts),
    working: [...(result.swept ? [sweptStep(result.swept)] : []), ...buildWorking(result)],
    figures: [],
    drawing: null,
    provenance: provenanceOf(context, null, methodsOf(result)),
  };
}

function ruleValue({ build: built }: BuildFacts): ScalarValue {
  const rule = built === null ? null : impedanceRule(built);
  return rule === null
    ? { value: null, unit: "ohm", reason: "no usual rule for this kind of line, or its build is not known" }
    : { value: rule.ohms, unit: "ohm", says: rule.short };
}

/** What the models remark of themselves, and what the sheet and the comparison ask for; each once. */
const cautionsOf = ({ main, build: built }: BuildResult, facts: BuildFacts): string[] => [
  ...new Set([
    ...[...main.constants.notes, ...(built?.constants.notes ?? [])].map(asSentence),
    ...buildCautions(facts),
  ]),
];

const methodsOf = ({ sheet, build: built }: BuildResult): { name: string; says: string }[] => [
  ...(sheet
    ? [
        {
          name: "sheet",
          says: "root, steady and insulation loss fitted to the sheet's points, exact attenuation, none negative",
        },
      ]
    : []),
  ...(built
    ? [
        {
          name: "build",
          says: "exact impedance of round conductors in layers (modified Bessel functions), telegrapher's equations",
        },
      ]
    : []),
];

export const build: Question = { ...buildListing, run };
