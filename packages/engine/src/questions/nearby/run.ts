/** What do the gutter, the mast, the other antenna do? The station with and without them, and what would spoil each. */
import type { Answer, Refusal } from "../../answer/answer";
import type { Station } from "../../station/station";
import { isRealSoil } from "../../wires/structure";
import { nearbyAdvice, nearbyHeadline, nearbyReason, nearbyVerdict } from "../../words/nearby";
import type { NearbyFacts } from "../../words/nearbyFacts";
import { nearbyCautions, nearbyMistakenIdea, nearbyNotCovered } from "../../words/nearbyIdea";
import { sentence } from "../../words/phrases";
import { aimOf } from "../common/aim";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type Worked, workStation } from "../common/worked";
import { limits, nearbyFacts } from "./facts";
import { nearbyListing } from "./listing";
import { studyNearby } from "./study";
import { nearbyTables } from "./tables";
import { type NearBy, thingsNearBy } from "./things";
import { nearbyValues } from "./values";
import { nearbyRules, nearbyWorking, remedyName } from "./working";

/** Ohm, resistive: three or four large ferrite rings or clamps round a thin wire (from memory). */
const usualChoke = 1000;

const example =
  "a line in `surroundings` such as `- { conductor: gutter, points: [[5 m west, 3 m south, 6 m up], [5 m east, 3 m south, 6 m up]], wire: 80 mm tube aluminium }`";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  if (station.surroundings.length === 0 && station.antennas.length < 2)
    return refusal(nearby, station, "nothing near by is in this file", example);
  const worked = yield* workStation(station, parameters, context, () => ({}));
  if ("refused" in worked) return refusal(nearby, station, worked.refused, worked.mend);
  const near = thingsNearBy(worked);
  if (near.things.length === 0) return refusal(nearby, station, whyNothing(worked, near), example);
  const aim = aimOf(worked, parameters.elevation);
  const ohms = typeof parameters.choke === "number" ? parameters.choke : usualChoke;
  const study = yield* studyNearby(worked, near, { aim, ohms });
  if ("refused" in study) return refusal(nearby, station, study.refused.why, study.refused.mend);
  const facts = nearbyFacts(worked, study, near);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const frame = frameOf(nearby, worked, context, { name: "radiatedPower", least: 0.005 * worked.point.ratedPower });
  const [unknown] = frame.uncertainties;
  const cut = {
    azimuth: frame.drawing?.cutAzimuth ?? 0,
    elevation: worked.numbers.elevationOfMaximum ?? 0,
    overSoil: isRealSoil(worked.point.antenna.soil),
  };
  return {
    ...frame,
    values: { ...frame.values, ...nearbyValues(facts, worked.point.ratedResistance) },
    tables: [...nearbyTables(worked, study, facts, cut), ...frame.tables],
    cautions: [...nearbyCautions(facts), ...frame.cautions],
    notCovered: [...frame.notCovered, ...nearbyNotCovered(facts), ...compared.notComputed],
    parameters: {
      judged: "radiatedPower",
      elevation: aim.elevation,
      azimuth: aim.azimuth,
      choke: ohms,
      things: facts.things.map((t) => t.name).join("; "),
      remedies: facts.things.flatMap((t) => t.remedies.map((r) => remedyName(t, r))).join("; "),
    },
    headline: sentence(nearbyHeadline(facts)),
    headlinePhrases: nearbyHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: nearbyVerdict(facts),
    reasons: reasonsOf(facts),
    next: nearbyAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: nearbyRules(facts),
    mistakenIdea: nearbyMistakenIdea(facts),
    working: nearbyWorking(facts),
    figures: [],
  };
}

function whyNothing({ point }: Worked, { own, roofs }: NearBy): string {
  const [name] = own;
  const [left] = point.antenna.build.notComputed.filter((n) => /the (sheet|conductor) "/.test(n));
  if (left) return `what is near by could not be put into the model: ${left}`;
  if (name) return `the only thing near by, "${name}", is what the antenna works against: it is part of it`;
  const [roof] = roofs;
  if (roof)
    return `only a roof of ${roof.covering} is near by: its ${roof.loss.low} to ${roof.loss.high} dB come from the file, there is nothing to work out`;
  return "no conductor and no other antenna near by is in this file";
}

function reasonsOf(f: NearbyFacts): Answer["reasons"] {
  return [
    {
      says: nearbyReason.sky(f),
      value: f.asIs.radiated,
      limit: (1 - limits.troubleShare) * f.withoutAll.radiated,
      unit: "W",
      source: "our rule: trouble where more than a fifth of what would leave does not",
    },
    {
      says: nearbyReason.gain(f),
      value: f.withoutAll.gain - f.asIs.gain,
      limit: limits.troubleGain,
      unit: "dB",
      source: "our rule: trouble from half of the power on",
    },
    ...(Number.isFinite(f.asIs.swr)
      ? [
          {
            says: nearbyReason.swr(f),
            value: f.asIs.swr,
            limit: f.limit,
            unit: "to 1",
            source: "the file's `SWR below`, else 2 (our rule): trouble where things near by carry it over that",
          },
        ]
      : []),
  ];
}

export const nearby: Question = { ...nearbyListing, run };
