/** How many radials, how long, up or down? The station worked out with other radials, watt by watt. */
import type { Answer, Refusal } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import { metres } from "../../quantity/format";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import {
  goodMost,
  goodSameWire,
  lieText,
  mostReason,
  type RadialFacts,
  radialAdvice,
  radialHeadline,
  radialVerdict,
  sameWireReason,
  spreadWords,
  workableMost,
  workableSameWire,
} from "../../words/radials";
import { radialMistakenIdea } from "../../words/radialsIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type Worked, workStation } from "../common/worked";
import { radialFacts } from "./facts";
import { type PlanInput, planOf } from "./layouts";
import { groundRefusal, type Site, siteOf } from "./site";
import { type Aim, type Study, studyRadials } from "./study";
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
  const worked = yield* workStation(station, parameters, (point, { numbers }) => ({
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

function reasonsOf(f: RadialFacts): Answer["reasons"] {
  const source = "our rule: half an S-unit is hardly heard (common practice, no source)";
  const most = {
    says: mostReason(f),
    value: f.behindMost,
    limit: f.behindMost <= goodMost ? goodMost : workableMost,
    unit: "dB",
    source,
  };
  if (f.earthAlone !== null) return [most];
  const cut = {
    says: sameWireReason(f),
    value: f.behindSameWire,
    limit: f.behindSameWire <= goodSameWire ? goodSameWire : workableSameWire,
    unit: "dB",
    source: "our rule: another cut of wire that is there costs an afternoon (common practice, no source)",
  };
  return [cut, most];
}

function ownAssumptions({ point }: Worked, asked: PlanInput, site: Site): Answer["assumptions"] {
  const place = "antennas";
  const reason = "only the radials are asked about";
  const outside = point.antenna.build.outside.length > 0;
  const moved = `the whole antenna moves with its radials between ${lieText(asked.lie)} and ${lieText(asked.otherLie)}`;
  return [
    { place, name: "while the radials change", value: "everything else stays, the antenna is not trimmed", reason },
    {
      place,
      name: "power",
      value: "watts to the sky are of the power that reaches the antenna now",
      reason: "a match can be mended afterwards; what the SWR would be stands beside them",
    },
    { place, name: "raised and laid", value: moved, reason: "radials and foot belong together" },
    ...(outside
      ? [{ place: "path", name: "outside of the line", value: "in the study as the station has it", reason }]
      : []),
    ...(site.earth !== null
      ? [
          {
            place,
            name: site.earth,
            value: "tied to radials on the soil, not to raised ones",
            reason: "raised radials work apart from the soil",
          },
        ]
      : []),
    ...(site.radials
      ? []
      : [
          {
            place,
            name: "radials proposed",
            value: `bare copper, 1.5 mm, ${asked.count} of ${metres(asked.length)}`,
            reason: "the station has none",
          },
        ]),
  ];
}

function ownNotCovered(study: Study): string[] {
  return [
    "Radials under the soil: not computed yet. The file's “on the soil” stands for wires in the grass.",
    ...(study.tooMany === null ? [] : [`${study.tooMany} and more radials of these lengths: they take too long here.`]),
    ...(study.otherRefused === null ? [] : [`The same wire at the other place: ${study.otherRefused}.`]),
    "Contact of bare wires with the soil, roots, wet grass, and how long a thin wire lasts there.",
  ];
}

const tripCautions = (f: RadialFacts): string[] =>
  f.now.lie === "on the soil" && f.otherLie === "on the soil"
    ? []
    : [
        "The free ends of raised radials carry high voltage: out of reach of people and animals, and marked where someone may walk into them.",
      ];

export const radials: Question = {
  id: "radials",
  asked: "How many radials, how long, up or down?",
  group: "Nobody hears me",
  about:
    "Watts to the sky, SWR and gain against number, length and height of radials, the same wire cut otherwise, and the current in each.",
  parameters: [
    {
      name: "wire",
      title: "wire of all radials together",
      dimension: "length",
      words: [],
      least: 1,
      most: 5000,
      otherwise: "number times length in the file",
    },
    {
      name: "length",
      title: "length of each radial where their number changes",
      dimension: "length",
      words: [],
      least: 0.05,
      most: 500,
      otherwise: "as in the file, else an eighth wave",
    },
    {
      name: "height",
      title: "height of raised radials",
      dimension: "length",
      words: [],
      least: 0.05,
      most: 50,
      otherwise: "2.5 m, an eighth wave at most",
    },
    {
      name: "elevation",
      title: "elevation looked at",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`, else 15°",
    },
  ],
  run,
};
