/** How high should it hang? Watts to the sky, SWR and gain against height. */
import type { Answer, Refusal, Value } from "../../answer/answer";
import type { Assumption, Station } from "../../station/station";
import {
  type HeightFacts,
  heightAdvice,
  heightHeadline,
  heightReason,
  heightVerdict,
  pathReason,
  signalOfMoreHeight,
} from "../../words/height";
import { heightMistakenIdea } from "../../words/heightIdea";
import { ended, sentence } from "../../words/phrases";
import { frameOf } from "../common/frame";
import { presentHeight, usualHeights } from "../common/heights";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { scalarValue } from "../common/values";
import { type Worked, workStation } from "../common/worked";
import { goodShare, heavyPathLoss, heightFacts, workableShare } from "./facts";
import { heightListing } from "./listing";
import { aimOf, fewestPoints, pointsOfStudy, type Study, studyHeights } from "./study";
import { heightTable, lobeTable } from "./table";
import { whyHeld } from "./whyHeld";
import { heightRules, heightWorking } from "./working";

/** Elevation asked for when neither the question nor the file names one, degrees: first hops of a few thousand kilometres. */
const usualElevation = 20;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  if (station.ground.kind === "free space") {
    return refusal(
      height,
      station,
      "there is no ground in this file: `ground: free space`",
      "`ground: unknown`, or a soil such as `ground: medium dry ground`",
    );
  }
  const held = whyHeld(station);
  if (held) return refusal(height, station, held.why, held.mend);
  const worked = yield* workStation(station, parameters, context, () => ({}));
  if ("refused" in worked) return refusal(height, station, worked.refused, worked.mend);
  const asked = parameters.heights;
  const span = typeof asked === "object" ? asked : usualHeights(worked);
  const heights = heightsOf(span, presentHeight(worked));
  const wanted =
    typeof parameters.elevation === "number"
      ? parameters.elevation
      : (station.wanted.elevation?.value ?? (usualElevation * Math.PI) / 180);
  const aim = aimOf(worked, (wanted * 180) / Math.PI);
  const study = yield* studyHeights(worked, heights, aim);
  if (study.points.length < fewestPoints) {
    const { why, mend } = study.refused ?? {
      why: "no height of that span can be worked out",
      mend: "a span of heights above the soil",
    };
    return refusal(height, station, why, mend);
  }
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = heightFacts(worked, study, aim);
  const frame = frameOf(height, worked, context, { name: "radiatedPower", least: 0.002 * worked.point.ratedPower });
  const [unknown] = frame.uncertainties;
  return {
    ...frame,
    values: { ...frame.values, ...heightValues(worked.point.ratedResistance, facts) },
    tables: [heightTable(study), ...lobeTable(study), ...frame.tables],
    notCovered: [...frame.notCovered, ...compared.notComputed, ...leftOut(study)],
    assumptions: [...frame.assumptions, ...whatStays(worked)],
    parameters: {
      judged: "radiatedPower",
      elevation: aim.elevation,
      azimuth: aim.azimuth,
      heightFrom: span.from,
      heightTo: span.to,
    },
    headline: sentence(heightHeadline(facts)),
    headlinePhrases: heightHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: heightVerdict(facts),
    reasons: reasonsOf(facts),
    next: heightAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: heightRules(facts),
    mistakenIdea: heightMistakenIdea(facts),
    working: heightWorking(facts, study, presentHeight(worked)),
    figures: [],
  };
}

function reasonsOf(facts: HeightFacts): Answer["reasons"] {
  const soil = {
    says: heightReason(facts),
    value: 100 * facts.share,
    limit: 100 * (facts.share >= goodShare ? goodShare : workableShare),
    unit: "%",
    source: "our rule: good from 70 %, workable from 40 % (common practice, no source)",
  };
  if (facts.pathLoss < heavyPathLoss) return [soil];
  const source = "our rule: no height is called good while half of the power does not arrive at the antenna";
  return [soil, { says: pathReason(facts), value: facts.pathLoss, limit: heavyPathLoss, unit: "dB", source }];
}

/** Equal steps over the span, and the height the antenna hangs at now where it lies in it. */
function heightsOf(span: { readonly from: number; readonly to: number }, now: number): number[] {
  const steps = Array.from(
    { length: pointsOfStudy },
    (_, i) => span.from + ((span.to - span.from) * i) / (pointsOfStudy - 1),
  );
  const inside = now > span.from && now < span.to && !steps.includes(now);
  return inside ? [...steps, now].sort((a, b) => a - b) : steps;
}

function whatStays({ point }: Worked): Assumption[] {
  const length = {
    place: "path",
    name: "line",
    value: "as long as it is, at every height",
    reason: "the file gives one length",
  };
  const lines = point.antenna.build.outside.flatMap((run) => run.lines);
  if (lines.length === 0) return [length];
  const outside = {
    place: "path",
    name: `outside of ${lines.join(", ")}`,
    value: "its last stretch reaches up or down to the feed point, the rest of its route stays",
    reason: "the file gives one route",
  };
  return [length, outside];
}

const leftOut = (study: Study): string[] =>
  study.refused === null ? [] : [`Some heights are left out: ${ended(study.refused.why)}`];

function heightValues(reference: number, f: HeightFacts): Record<string, Value> {
  return {
    presentHeight: scalarValue(f.present.height, "m"),
    lowestSwrHeight: scalarValue(f.lowestSwr.height, "m"),
    lowestSwrOverHeights: { ...scalarValue(f.lowestSwr.swrAtTransmitter, "1"), reference },
    radiatedPowerAtLowestSwr: scalarValue(f.lowestSwr.radiatedPower, "W"),
    splitHeight: scalarValue(
      f.split,
      "m",
      f.zenithIsNull
        ? "straight up is a null of this antenna at every height"
        : "the pattern does not split between the heights shown",
    ),
    gainAtElevation: scalarValue(f.present.gainLow, "dBi"),
    gainStraightUp: scalarValue(f.present.gainHigh, "dBi"),
    signalOfMoreHeight: scalarValue(signalOfMoreHeight(f), "dB"),
  };
}

export const height: Question = { ...heightListing, run };
