/** Why this impedance? What a coaxial line of one size gains and gives away at every impedance. */
import type { Answer, Refusal } from "../../answer/answer";
import { impedanceOfRatio } from "../../lines/impedanceStudy";
import { speedOfLight } from "../../numerics/vacuum";
import { withPrefix } from "../../quantity/format";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import * as words from "../../words/why";
import { bandOf } from "../common/bandOf";
import { provenanceOf } from "../common/provenanceOf";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { type WhyInput, whyInput, whyParameters } from "./parameters";
import { type WhyResult, whyResult, whyTable, whyValues } from "./result";
import { whyWorking } from "./working";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const band = bandOf(station, parameters);
  if ("refused" in band) return refusal(why, station, band.refused, band.mend);
  const frequency = band.frequency.value;
  const input = whyInput(station, parameters, frequency);
  if ("refused" in input) return refusal(why, station, input.refused, input.mend);
  yield { done: 0, of: 1, what: "impedances" };
  const result = whyResult(input);
  const facts = factsOf(result);
  return {
    schema: "feedpath-answer-1",
    question: why.id,
    asked: why.asked,
    station: station.title,
    band: band.name,
    frequency,
    parameters: { dielectric: input.study.dielectric.name, outerSize: input.study.outerSize, frequency },
    headline: sentence(words.whyHeadline(facts)),
    headlinePhrases: words.whyHeadline(facts),
    verdict: null,
    verdictPhrases: words.whyVerdict(facts),
    reasons: [],
    next: words.whyNext(facts),
    wouldSettle: null,
    values: whyValues(result),
    joints: [],
    parts: [],
    tables: [whyTable(result)],
    lobes: [],
    rulesOfThumb: words.whyRules(facts),
    mistakenIdea: words.whyMistakenIdea(facts),
    assumptions: [...input.assumed, ...assumedValues(input)],
    uncertainties: [],
    readings: [],
    cautions: [...words.whyCautions(facts), ...nextMode(input)],
    notCovered: words.whyNotCovered,
    working: whyWorking(result),
    figures: [words.whyFigure(facts)],
    drawing: null,
    provenance: provenanceOf(context, null, methods),
  };
}

const methods = [
  {
    name: "attenuation",
    says: "telegrapher's equations with the exact impedance of round conductors (modified Bessel functions), smooth and solid",
  },
  {
    name: "optima",
    says: "stationary points solved to rounding; least attenuation at the frequency by golden section",
  },
];

function factsOf({ input, attenuation, least, voltage, power, standards, ...means }: WhyResult): words.WhyFacts {
  const [at50, at75] = standards;
  if (!(at50 && at75)) throw new Error("why: expected 50 and 75 ohm among the standards");
  return {
    dielectric: input.study.dielectric.name,
    attenuationOptimum: least.impedance,
    optimumInAir: impedanceOfRatio(attenuation.ratio, 1),
    voltageOptimum: voltage.impedance,
    powerOptimum: power.impedance,
    arithmeticMean: means.arithmeticMean,
    geometricMean: means.geometricMean,
    at50,
    at75,
    breakdown: input.study.breakdown,
    frequency: input.study.frequency,
    outerSize: input.study.outerSize,
  };
}

/** Values that nobody stated and that stand behind every number here. */
const assumedValues = ({ study, breakdownSource }: WhyInput): Answer["assumptions"] => [
  {
    name: "breakdown field",
    value: `${withPrefix(study.breakdown, "V/m", 3)}, peak`,
    reason: breakdownSource,
    place: "",
  },
  {
    name: "surfaces of the conductors",
    value: "smooth and solid",
    reason: "the study compares impedances, not makes of cable",
    place: "",
  },
];

/** The usual estimate of the cut-off of the next mode, for the thickest inner conductor of the curves. */
function nextMode({ study }: WhyInput): string[] {
  const cutOff = speedOfLight / (Math.PI * study.outerSize * Math.sqrt(study.dielectric.permittivity));
  if (study.frequency < cutOff) return [];
  return [
    `At ${withPrefix(study.frequency, "Hz")} a line this thick may carry a second mode (from about ${withPrefix(cutOff, "Hz")} on): the curves hold for the first one only.`,
  ];
}

export const why: Question = {
  id: "why",
  asked: "Why this impedance?",
  group: "Why is it so?",
  about: "Attenuation, voltage and power of a coaxial line against its impedance, and where 50 and 75 Ω stand.",
  parameters: whyParameters,
  run,
};
