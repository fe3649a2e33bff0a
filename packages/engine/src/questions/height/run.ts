/** How high should it hang? Watts to the sky, SWR and gain against height. */
import type { Answer, Refusal, RuleOfThumb, Value, WorkingStep } from "../../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, significantNumber, watts } from "../../quantity/format";
import type { Station } from "../../station/station";
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
import { workStation } from "../common/worked";
import { goodShare, heavyPathLoss, heightFacts, workableShare } from "./facts";
import { aimOf, pointsOfStudy, type Study, studyHeights } from "./study";
import { heightTable } from "./table";

/** Elevation asked for when neither the question nor the file names one, degrees: first hops of a few thousand kilometres. */
const usualElevation = 20;

/** Fewer heights than this make no curve. */
const fewestPoints = 3;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  if (station.ground.kind === "free space") {
    return refusal(
      height,
      station,
      "there is no ground in this file: `ground: free space`",
      "`ground: unknown`, or a soil such as `ground: medium dry ground`",
    );
  }
  const worked = yield* workStation(station, parameters, () => ({}));
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
    tables: [heightTable(study), ...frame.tables],
    notCovered: [...frame.notCovered, ...compared.notComputed, ...leftOut(study)],
    assumptions: [
      ...frame.assumptions,
      { place: "path", name: "line", value: "as long as it is, at every height", reason: "the file gives one length" },
    ],
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

function heightRules(f: HeightFacts): RuleOfThumb[] {
  const quarter = f.wave / 4;
  // Whatever sends nothing straight up is no level wire.
  if (f.present.height < quarter || f.zenithIsNull) return [];
  const lobe = (Math.asin(f.wave / (4 * f.present.height)) * 180) / Math.PI;
  return [
    {
      rule: "lowest lobe of a level wire: sine of the angle is a quarter wave over the height",
      ruleValue: `${plainNumber(lobe, 0)}°`,
      computed: `strongest ${plainNumber(f.present.elevationOfMaximum, 0)}° up`,
      holds:
        "for level wires over a perfect conductor, from a quarter wave up; real soil and the wire's own pattern pull it down",
      source: "image theory; handbooks",
    },
  ];
}

function heightWorking(f: HeightFacts, study: Study, now: number): WorkingStep[] {
  const bands = study.effects.map((e) => e.input.name).join(" and ");
  return [
    {
      text: `The antenna was solved anew over the soil at ${study.points.length} heights, line and path unchanged; the wires move as one, the feed point now at ${metres(now)}, ${fixedNumber(now / f.wave, 2)} of a wave.${bands === "" ? "" : ` The bands show ${bands} moved to the ends of their range.`}`,
      source: "moment method and Sommerfeld integrals",
      explains: ["presentHeight", "feedPointImpedance", "swrAtTransmitter"],
    },
    {
      text: "Gain is what arrives at a far place against an antenna that sends the same power evenly to all sides; losses in wires and soil are in it:",
      formula: "G = \\frac{4 \\pi U}{P_{\\mathrm{in}}}",
      substituted: `G(${plainNumber(f.aim.elevation, 0)}^\\circ) = ${fixedNumber(f.present.gainLow, 1)} \\; \\mathrm{dBi}, \\; G(90^\\circ) = ${fixedNumber(f.present.gainHigh, 1)} \\; \\mathrm{dBi}`,
      source: "IEEE Std 145",
      explains: ["gainAtElevation", "gainStraightUp", "maximumGain", "elevationOfMaximum", "signalOfMoreHeight"],
    },
    {
      text: `At ${metres(f.present.height)} the soil takes ${watts(f.present.heatInSoil)}, and ${watts(f.present.radiatedPower)} leave. Most would leave at ${metres(f.most.height)}: ${watts(f.most.radiatedPower)}, a difference of ${decibels(10 * Math.log10(f.most.radiatedPower / f.present.radiatedPower))}.`,
      source: "power flow through the surface, and far field integrated over the sky: each on its own",
      explains: ["radiatedPower", "heatInSoil", "lowestSwrHeight", "radiatedPowerAtLowestSwr"],
    },
    {
      text:
        f.split === null
          ? "The pattern does not split between the heights shown."
          : `From ${significantNumber(f.split, 3)} m on, straight up is more than 1 dB below the strongest direction: there the pattern splits.`,
      source: "our mark: 1 dB",
      explains: ["splitHeight"],
    },
  ];
}

export const height: Question = {
  id: "height",
  asked: "How high should it hang?",
  group: "What shall I put up, buy or cut",
  about: "Watts to the sky, SWR, feed point and gain at chosen angles against height, and where the pattern splits.",
  parameters: [
    {
      name: "heights",
      title: "heights of the feed point",
      dimension: "lengthSpan",
      words: [],
      least: 0.1,
      most: 300,
      otherwise: "from about 0.07 to 0.6 of a wave",
    },
    {
      name: "elevation",
      title: "wanted elevation",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`, else 20°",
    },
  ],
  run,
};
