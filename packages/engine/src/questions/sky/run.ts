/** Where does my signal go? The pattern upwards and around, by watts and by angles, and where a first hop would end. */
import type { Answer, Refusal } from "../../answer/answer";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import { type SkyFacts, skyAdvice, skyHeadline, skyReason, skyVerdict } from "../../words/sky";
import { skyMistakenIdea } from "../../words/skyIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type MoreNumbers, workStation } from "../common/worked";
import { type Aim, aimOf } from "./aim";
import { goodUpTo, type Layers, skyFacts, workableUpTo } from "./facts";
import { skyListing } from "./listing";
import { dbiAt, lowAndHigh, type SkyStudy, studySky } from "./study";
import { lobeList, skyGrid, skyTables } from "./tables";
import { gainStraightUp, skyValues, withOwnUnits } from "./values";
import { skyRules, skyWorking } from "./working";

/** Heights of the layers when the question names none, m. */
const usualLayers: Layers = { e: 110e3, f: 300e3 };
const geometryOnly =
  "First hops are geometry, not a prediction: whether a layer reflects this frequency at this hour and angle, how high it then is, and how strong the signal arrives is not worked out.";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  let aim: Aim | null = null;
  const more: MoreNumbers = (point, result) => {
    // The station as it is comes first: its aim holds for all moved ones.
    aim ??= aimOf(station, parameters, result.driven, result.strongest);
    const share = point.powerIntoAntenna / result.account.powerIn;
    const { below30, above60 } = lowAndHigh(result.driven);
    return {
      gainAtElevation: dbiAt(result.driven, aim.elevation, aim.azimuth),
      gainStraightUp: gainStraightUp({ result }),
      radiatedBelow30: below30 * share,
      radiatedAbove60: above60 * share,
    };
  };
  const worked = yield* workStation(station, parameters, context, more);
  if ("refused" in worked) return refusal(sky, station, worked.refused, worked.mend);
  yield { done: 0, of: 1, what: "the pattern" };
  const study = studySky(worked, aim ?? aimOf(station, parameters, worked.result.driven, worked.result.strongest));
  const named = (name: string, usual: number) => (typeof parameters[name] === "number" ? parameters[name] : usual);
  const layers: Layers = { e: named("layerE", usualLayers.e), f: named("layerF", usualLayers.f) };
  const facts = skyFacts(worked, study, layers);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const frame = frameOf(sky, worked, context, { name: "gainAtElevation", least: 0.1 });
  const [unknown] = frame.uncertainties;
  return {
    ...frame,
    values: { ...withOwnUnits(frame.values), ...skyValues(facts, study) },
    tables: [...skyTables({ driven: worked.result.driven, study, layers }), ...frame.tables],
    grids: [skyGrid(study)],
    lobes: lobeList(study),
    assumptions: [...frame.assumptions, ...assumptionsOf(parameters, facts)],
    cautions: [...(facts.hops ? [geometryOnly] : []), ...frame.cautions],
    notCovered: [...frame.notCovered, ...compared.notComputed, ...leftOut(study)],
    parameters: {
      judged: "gainAtElevation",
      elevation: facts.aim.elevation,
      azimuth: facts.aim.azimuth,
      layerE: layers.e / 1000,
      layerF: layers.f / 1000,
    },
    headline: sentence(skyHeadline(facts)),
    headlinePhrases: skyHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: skyVerdict(facts),
    reasons: facts.verdict === null ? [] : [reasonOf(facts)],
    next: skyAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: skyRules(facts, worked.frequency),
    mistakenIdea: skyMistakenIdea(facts),
    working: skyWorking(facts, study, layers),
    figures: [],
  };
}

const reasonOf = (facts: SkyFacts): Answer["reasons"][number] => ({
  says: skyReason(facts),
  value: Math.max(0, facts.strongest.gain - facts.aim.gain),
  limit: facts.verdict === "good" ? goodUpTo : workableUpTo,
  unit: "dB",
  source: "our rule: half an S-unit is hardly heard, one and a half are clearly (common practice, no source)",
});

function assumptionsOf(parameters: Parameters, { hops, aim }: SkyFacts): Answer["assumptions"] {
  const layer = (name: string, value: string, reason: string) => ({ place: "", name, value, reason });
  return [
    ...(hops && parameters.layerE === undefined
      ? [layer("height of the E layer", "110 km", "taken as in ITU-R P.533 (from memory)")]
      : []),
    ...(hops && parameters.layerF === undefined
      ? [layer("height of the F layer", "300 km", "common practice, no source; really 200 km to 400 km")]
      : []),
    ...(aim.wanted.elevation
      ? []
      : [
          layer(
            "angle looked at",
            `${Math.round(aim.elevation)}° up`,
            "neither the question nor the file's `wanted` names one",
          ),
        ]),
  ];
}

function leftOut({ reference, perfect }: SkyStudy): string[] {
  return [
    ...(typeof reference === "string" ? [`No comparison with a dipole as high: ${reference}.`] : []),
    ...(typeof perfect === "string" ? [`What the soil costs by angle is not worked out: ${perfect}.`] : []),
  ];
}

export const sky: Question = { ...skyListing, run };
