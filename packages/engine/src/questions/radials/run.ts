/** How many radials, how long, up or down? The station worked out with other radials, watt by watt. */
import type { Answer, Refusal } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import { lieText, radialAdvice, radialHeadline, radialVerdict, spreadWords } from "../../words/radials";
import { radialMistakenIdea } from "../../words/radialsIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type Worked, workStation } from "../common/worked";
import { ownAssumptions, ownNotCovered, tripCautions } from "./basis";
import { radialFacts } from "./facts";
import { type PlanInput, planOf } from "./layouts";
import { radialsListing } from "./listing";
import { reasonsOf } from "./reasons";
import { groundRefusal, type Site, siteOf } from "./site";
import { type Aim, studyRadials } from "./study";
import { currentGrid, radialTables } from "./tables";
import { radialUnits, radialValues } from "./values";
import { radialRules, radialWorking } from "./working";

/** Looked at when neither the question nor the file names an elevation, degrees: far stations. */
const usualElevation = 15;
/** m: low enough to reach, high enough to walk under; at most an eighth wave. */
const usualHeight = 2.5;
/** Radials proposed where there are none: number, and length as a share of the wavelength. */
const proposed = { count: 16, share: 0.125 };

const numeric = (parameters: Parameters, name: string): number | null =>
  typeof parameters[name] === "number" ? parameters[name] : null;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const noGround = groundRefusal(station);
  if (noGround) return refusal(radials, station, noGround.refused, noGround.mend);
  const worked = yield* workStation(station, parameters, context, (point, { numbers }) => ({
    skyShare: (100 * numbers.radiatedPower!) / point.powerIntoAntenna,
  }));
  if ("refused" in worked) return refusal(radials, station, worked.refused, worked.mend);
  const site = siteOf(worked);
  if ("refused" in site) return refusal(radials, station, site.refused, site.mend);
  const asked = askedOf(worked, site, parameters);
  const aim = aimOf(station, parameters);
  const study = yield* studyRadials(worked, site.antenna.name, planOf(asked), aim);
  if (study.byCount.length < 2)
    return refusal(
      radials,
      station,
      `no other number of radials can be worked out${study.tooMany === null ? "" : ": the antenna has too many wires already"}`,
      "a simpler antenna, or a lower frequency",
    );
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = radialFacts(worked, study, site, { aim, otherLie: asked.otherLie });
  const frame = frameOf(radials, worked, context, { name: "radiatedPower", least: 0.002 * worked.point.ratedPower });
  const [unknown] = frame.uncertainties;
  const spread = spreadWords(facts);
  return {
    ...frame,
    values: { ...withOwnUnits(frame.values), ...radialValues(facts, study) },
    tables: [...radialTables(study, facts.into), ...frame.tables],
    grids: currentGrid(study),
    assumptions: [...frame.assumptions, ...ownAssumptions(worked, asked, site)],
    cautions: [...(spread === "" ? [] : [spread]), ...tripCautions(facts), ...frame.cautions],
    notCovered: [...frame.notCovered, ...ownNotCovered(study), ...compared.notComputed],
    parameters: {
      judged: "radiatedPower",
      elevation: aim.elevation,
      azimuth: aim.azimuth,
      wire: asked.wire,
      height: typeof asked.otherLie === "number" ? asked.otherLie : typeof asked.lie === "number" ? asked.lie : null,
      lie: lieText(asked.lie),
      otherLie: lieText(asked.otherLie),
      triedCount: asked.count,
      triedLength: asked.length,
    },
    headline: sentence(radialHeadline(facts)),
    headlinePhrases: radialHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: radialVerdict(facts),
    reasons: reasonsOf(facts),
    next: radialAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: radialRules(facts),
    mistakenIdea: radialMistakenIdea(facts),
    working: radialWorking(facts, study),
    figures: [],
  };
}

function askedOf({ frequency }: Worked, site: Site, parameters: Parameters): PlanInput {
  const wave = speedOfLight / frequency;
  const own = site.radials && { count: site.radials.count, length: site.radials.length.value, lie: site.lie };
  const count = own?.count ?? proposed.count;
  const length = numeric(parameters, "length") ?? own?.length ?? proposed.share * wave;
  const raised = numeric(parameters, "height") ?? Math.min(usualHeight, wave / 8);
  return {
    present: own,
    wave,
    count,
    length,
    wire: numeric(parameters, "wire") ?? count * (own?.length ?? length),
    lie: site.lie,
    otherLie: site.lie === "on the soil" ? raised : "on the soil",
    sector: site.sector,
  };
}

function aimOf({ wanted }: Station, parameters: Parameters): Aim {
  const degrees = (radians: number): number => (radians * 180) / Math.PI;
  const file = wanted.elevation === null ? usualElevation : degrees(wanted.elevation.value);
  return {
    elevation: numeric(parameters, "elevation") === null ? file : degrees(numeric(parameters, "elevation")!),
    azimuth: wanted.direction === null ? null : degrees(wanted.direction),
  };
}

const withOwnUnits = (values: Answer["values"]): Answer["values"] =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      radialUnits[name] === undefined ? value : { ...value, unit: radialUnits[name] },
    ]),
  );

export const radials: Question = { ...radialsListing, run };
