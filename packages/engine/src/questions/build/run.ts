/** What are the constants of this line? By its data sheet, by its build, and the two side by side. No antenna is solved. */
import type { Answer, Refusal, ScalarValue } from "../../answer/answer";
import { statedTemperature } from "../../conductors/metalTemperature";
import { significantNumber, withPrefix } from "../../quantity/format";
import type { Station } from "../../station/station";
import { buildHeadline, buildVerdict } from "../../words/build";
import { buildCautions, buildNext, buildNotCovered, buildSettles } from "../../words/buildAdvice";
import type { BuildFacts } from "../../words/buildFacts";
import { buildMistakenIdea, buildRules, impedanceRule } from "../../words/buildIdea";
import { asSentence, sentence } from "../../words/phrases";
import { bandOf } from "../common/bandOf";
import { provenanceOf } from "../common/provenanceOf";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { refusal } from "../common/refusal";
import { buildFacts } from "./facts";
import { buildListing } from "./listing";
import { type ChosenLine, chosenLine } from "./parameters";
import { type SimilarLine, similarLines, similarTable } from "./similar";
import { type BuildInput, type BuildResult, buildResult, cutOffOf } from "./study";
import { type SweptLine, sweptLine, sweptStep, sweptValues } from "./sweeps";
import { buildTables } from "./tables";
import { buildValues, lineBounds } from "./values";
import { buildWorking } from "./working";

type Refused = { readonly refused: string; readonly mend: string };

function inputOf(station: Station, parameters: Parameters, context: Context): BuildInput | Refused {
  const asked = parameters.line;
  const chosen = chosenLine(station, typeof asked === "string" ? asked : null, context);
  if ("refused" in chosen) return chosen;
  const band = typeof parameters.frequency === "number" ? null : bandOf(station, parameters);
  if (band && "refused" in band) return band;
  const given = (name: string): number | null => (typeof parameters[name] === "number" ? parameters[name] : null);
  const { part } = chosen;
  const warm = part?.kind === "line" ? (part.temperature?.value ?? null) : null;
  return {
    chosen,
    frequency: given("frequency") ?? band?.frequency.value ?? 1e6,
    temperature: given("temperature") ?? warm ?? statedTemperature,
    length: given("length") ?? part?.length.value ?? usualLength,
    power: station.transmitter.power.value,
    excess: part?.kind === "line" ? part.excessLoss.value : 0,
    altitude: station.site?.altitude?.value ?? 0,
    dip: given("dip"),
  };
}

/** m, where neither the file nor the asker says one. */
const usualLength = 10;

function beyondItsMode({ chosen, frequency }: BuildInput): Refused | null {
  const cutOff = cutOffOf(chosen);
  if (cutOff === null || frequency < cutOff.frequency) return null;
  const end = withPrefix(cutOff.frequency, "Hz");
  return {
    refused: `from ${end} on a second mode (TE11) can travel in ${chosen.entry.designation}; at ${withPrefix(frequency, "Hz")} it has no one set of constants`,
    mend: `a frequency below ${end}`,
  };
}

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const input = inputOf(station, parameters, context);
  if ("refused" in input) return refusal(build, station, input.refused, input.mend);
  const beyond = beyondItsMode(input);
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

function assumptionsOf(station: Station, parameters: Parameters, { part, entry }: ChosenLine): Answer["assumptions"] {
  const temperature = part?.kind === "line" ? part.temperature : null;
  return [
    ...(parameters.length === undefined && part === null
      ? [
          {
            name: "length",
            value: `${usualLength} m`,
            reason: "the line was asked for by its designation, not as a part of the path",
            place: "",
          },
        ]
      : []),
    ...(parameters.temperature === undefined && temperature === null
      ? [
          {
            name: "temperature of the conductors",
            value: "20 °C",
            reason: "the file gives none for this line",
            place: "",
          },
        ]
      : []),
    {
      name: "power",
      value: `${significantNumber(station.transmitter.power.value, 4)} W into the line`,
      reason: "the transmitter's, as if nothing lay between",
      place: "transmitter.power",
    },
    ...(entry.model.kind === "data sheet" && entry.model.loss.length === 1
      ? [
          {
            name: "attenuation at other frequencies",
            value: "by the root of frequency from its one point",
            reason: "one point fixes the conductors alone",
            place: "path",
          },
        ]
      : []),
  ];
}

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
