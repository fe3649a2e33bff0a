/** Why this impedance? What a line of one size, weight or cost gains and gives away at every impedance. */
import type { Answer, Refusal } from "../../answer/answer";
import { impedanceOfRatio } from "../../lines/study/coaxialRatios";
import { studiedLine } from "../../lines/study/studyPoint";
import { coaxialCutOff } from "../../lines/te11";
import { withPrefix } from "../../quantity/format";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import * as words from "../../words/why";
import { bandOf } from "../common/bandOf";
import { provenanceOf } from "../common/provenanceOf";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { type WhyInput, whyInput } from "./input";
import { whyListing } from "./listing";
import { type WhyResult, whyResult } from "./result";
import { whyMeans, whyTable, whyValues } from "./tables";
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
    parameters: askedWith(result, frequency),
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
    cautions: [...words.whyCautions(facts), ...nextMode(result)],
    notCovered: words.whyNotCovered(facts),
    working: whyWorking(result),
    figures: [],
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
    says: "stationary points solved to rounding; where weight or cost is held, and at the frequency, by golden section",
  },
  {
    name: "heat",
    says: "steady flow through the insulation, free convection and radiation in still air, conductors at their warmest",
  },
];

function askedWith({ input }: WhyResult, frequency: number): Answer["parameters"] {
  const { shape, dielectric, held, inner, outer } = input.study;
  return {
    shape,
    dielectric: dielectric.name,
    permittivity: dielectric.permittivity,
    outerSize: held.by === "size" ? held.size : null,
    held: held.by,
    inner: inner.name,
    outer: outer.name,
    frequency,
  };
}

function factsOf(result: WhyResult): words.WhyFacts {
  const { input, optima, limit, standards } = result;
  const { study } = input;
  const at = (name: keyof WhyResult["optima"]): number | null => optima[name]?.point.impedance ?? null;
  return {
    shape: study.shape,
    dielectric: study.dielectric.name,
    askedPermittivity: input.askedPermittivity,
    held: study.held.by,
    attenuationOptimum: at("attenuation"),
    voltageOptimum: at("voltage"),
    powerOptimum: at("power"),
    heatOptimum: at("heat"),
    flat: optima.attenuation?.flat ?? null,
    optimumInAir: limit === null || study.shape === "pair" ? null : impedanceOfRatio(limit.ratio, 1),
    means: whyMeans(result),
    standards,
    breakdown: study.breakdown,
    frequency: study.frequency,
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

/** The next mode begins lowest with a thick inner conductor; told where the frequency is above that of one a fifth thinner than the outer. */
function nextMode({ input, optima }: WhyResult): string[] {
  const size = optima.attenuation?.point.outerSize;
  if (size === undefined) return [];
  const line = studiedLine(input.study, size / 1.2, size);
  if (line.kind !== "coaxial") return [];
  const cutOff = coaxialCutOff(line).frequency;
  if (input.study.frequency < cutOff) return [];
  return [
    `At ${withPrefix(input.study.frequency, "Hz")} a line this thick may carry a second mode (from about ${withPrefix(cutOff, "Hz")} on): the curves hold for the first one only.`,
  ];
}

export const why: Question = { ...whyListing, run };
