/** What happens on the line, step by step? Echoes, the film of the waves, and what stands in the end. */
import type { Answer, Refusal } from "../../answer/answer";
import { plainNumber, significantNumber } from "../../quantity/format";
import type { Station } from "../../station/station";
import { bounceNext, bounceVerdict } from "../../words/bounce";
import { bounceHeadline } from "../../words/bounceHeadline";
import { bounceAssumptions, bounceCautions, bounceIdea, bounceNotCovered, bounceRules } from "../../words/bounceIdea";
import { assumptionsOfModel } from "../../words/limits";
import { sentence } from "../../words/phrases";
import { bandOf } from "../common/bandOf";
import { jointsOf, partsOf } from "../common/partsAndJoints";
import { provenanceOf } from "../common/provenanceOf";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { bounceFacts } from "./facts";
import { lineLooked } from "./lineLooked";
import { bounceListing } from "./listing";
import { bounceAsked } from "./parameters";
import { mostWaves } from "./plan";
import { otherSources } from "./sources";
import { type BounceStudy, bounceStudy } from "./study";
import { bounceGrids, bounceTables } from "./tables";
import { bounceValues } from "./values";
import { bounceWorking } from "./working";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const band = bandOf(station, parameters);
  if ("refused" in band) return refusal(bounce, station, band.refused, band.mend);
  const asked = bounceAsked(parameters);
  const looked = yield* lineLooked(station, band, asked, context);
  if ("refused" in looked) return refusal(bounce, station, looked.refused, looked.mend);
  yield { done: 0, of: 1, what: "the waves" };
  const study = bounceStudy(looked, asked, band.frequency.value);
  if (!("film" in study)) {
    const why = `the line is ${plainNumber(study.waves, 0)} waves long, and each would have to be followed; this goes up to ${mostWaves}`;
    return refusal(bounce, station, why, "`signal` step or pulse, a lower band, or a shorter line");
  }
  const sources = otherSources(study);
  const facts = bounceFacts(study, sources);
  return {
    schema: "feedpath-answer-1",
    question: bounce.id,
    asked: bounce.asked,
    station: station.title,
    band: band.name,
    frequency: band.frequency.value,
    parameters: shownParameters(study),
    headline: sentence(bounceHeadline(facts)),
    headlinePhrases: bounceHeadline(facts),
    verdict: null,
    verdictPhrases: bounceVerdict(facts),
    reasons: [],
    next: bounceNext(facts),
    wouldSettle: null,
    values: bounceValues(study, facts),
    joints: looked.point ? jointsOf(looked.point) : [],
    parts: looked.point ? partsOf(looked.point) : [],
    tables: bounceTables(study, sources),
    grids: bounceGrids(study),
    lobes: [],
    rulesOfThumb: bounceRules(facts),
    mistakenIdea: bounceIdea(facts),
    assumptions: [
      ...station.assumptions,
      ...(looked.point ? assumptionsOfModel(station, looked.point, false) : []),
      ...bounceAssumptions(facts),
    ],
    uncertainties: [],
    readings: [],
    cautions: [...(looked.point?.resolved.cautions ?? []), ...bounceCautions(facts)],
    notCovered: bounceNotCovered(facts),
    working: bounceWorking(study, facts),
    figures: [],
    drawing: null,
    provenance: provenanceOf(context, null, methodsOf(study)),
  };
}

function shownParameters({ asked, looked, source, plan }: BounceStudy): Answer["parameters"] {
  return {
    signal: asked.signal,
    line: looked.part.name,
    lineLength: looked.length,
    load: asked.load,
    source: source.re,
    shows: plan.shows,
    cut: plan.cut,
  };
}

const methodsOf = ({ stepped, looked, constants }: BounceStudy) => [
  {
    name: "echoes",
    says: "phasors on the line's true constants at the frequency, summed as a geometric series",
  },
  {
    name: "film",
    says: `waves stepped through ${stepped.sections} delays; losses as passive ladders fitted from ${significantNumber(stepped.from / 1e3, 2)} kHz to ${significantNumber(stepped.to / 1e6, 3)} MHz within ${significantNumber(100 * stepped.worstDeviation, 2)} % of the whole loss, exact at ${significantNumber(constants.frequency / 1e6, 4)} MHz`,
  },
  {
    name: "load",
    says:
      looked.fit === null
        ? "as asked"
        : `${looked.fit.quality === null ? "one reactance and a resistor" : `coil, capacitor and resistor ${looked.termination.form}`}, exact at the frequency, within ${significantNumber(100 * looked.fit.worstDeviation, 2)} % beside it`,
  },
];

export const bounce: Question = { ...bounceListing, run };
