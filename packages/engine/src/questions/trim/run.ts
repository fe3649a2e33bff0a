/** How long should it be, and how much do I cut? Length for lowest SWR and for X = 0, and what to cut for what is measured. */
import type { Answer, Refusal } from "../../answer/answer";
import { workPoint } from "../../chain/workPoint";
import { speedOfLight } from "../../numerics/vacuum";
import { plainNumber } from "../../quantity/format";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import { type TrimFacts, trimAdvice, trimHeadline, trimReasons, trimVerdict } from "../../words/trim";
import { trimMistakenIdea } from "../../words/trimIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { type Worked, workStation } from "../common/worked";
import type { Bench } from "./bench";
import { trimFacts } from "./facts";
import { ladderOf } from "./ladder";
import { lineDoubt, movedZero } from "./lineDoubt";
import { trimListing } from "./listing";
import { measuredDip } from "./measured";
import { lengthRule, trimRules } from "./rules";
import { shareLengths } from "./shares";
import { counted, type Study, studyLengths } from "./study";
import { ladderTable, trimTable } from "./tables";
import { trimmedOf } from "./trimmed";
import { lineValues, shareValues, trimValues } from "./values";
import { trimWorking } from "./working";

/** SWR limit when neither the question nor the file names one. */
const usualLimit = 2;

const numeric = (parameters: Parameters, name: string): number | null =>
  typeof parameters[name] === "number" ? parameters[name] : null;

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const worked = yield* workStation(station, parameters, context, () => ({}), "through");
  if ("refused" in worked) return refusal(trim, station, worked.refused, worked.mend);
  const bench = benchOf(worked, numeric(parameters, "element"));
  if ("refused" in bench) return refusal(trim, station, bench.refused, bench.mend);
  const { measured, unused } = measuredDip(station, worked.band, numeric(parameters, "measuredLowest"));
  const present = workPoint(station, worked.band, worked.frequency, worked.solver, { tuner: "through" });
  const study = "refused" in present ? null : yield* studyLengths(bench, present, measured?.dip ?? null, worked.bounds);
  if (study === null) {
    const mend =
      "a path that runs from the transmitter to one feed point, and a length from which something can be cut";
    return refusal(trim, station, "no other length of this antenna can be worked out", mend);
  }
  const shares = yield* counted(shareLengths(bench, study.scan), 24, "shares of the length");
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const limit = numeric(parameters, "swrBelow") ?? station.wanted.swrBelow?.value ?? usualLimit;
  const facts = trimFacts(worked, study, measured, limit);
  const line = lineDoubt(study);
  const moved = measured && movedZero(study, measured);
  const judged = judgedIn(worked, study);
  const frame = frameOf(trim, judged.worked, context, judged);
  const [unknown] = frame.uncertainties;
  const rungs =
    study.dips === null
      ? []
      : ladderOf(study.dips, bench.frequency, facts.measured?.change == null ? null : facts.measured.dip);
  const usedFile = measured?.file;
  return {
    ...frame,
    values: { ...frame.values, ...trimValues(facts, study), ...shareValues(shares), ...lineValues(line, moved) },
    tables: [...(rungs.length > 0 ? [ladderTable(rungs, facts.ends)] : []), trimTable(study), ...frame.tables],
    notCovered: [
      ...roughness(study),
      ...frame.notCovered,
      ...unused,
      ...compared.notComputed.filter((text) => !usedFile || !text.includes(usedFile)),
    ],
    assumptions: [
      ...frame.assumptions,
      ...bench.trimmed.kept.map((value) => ({
        place: "antennas",
        name: "while the length changes",
        value,
        reason: "one length is trimmed at a time",
      })),
    ],
    parameters: {
      judged: judged.name,
      measuredLowest: facts.measured ? facts.measured.dip / 1e6 : null,
      element: bench.trimmed.shape + 1,
      swrBelow: limit,
      trimmedAt: facts.ends.map((e) => e.place).join("; "),
    },
    headline: sentence(trimHeadline(facts)),
    headlinePhrases: trimHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: trimVerdict(facts),
    reasons: reasonsOf(facts),
    next: trimAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: trimRules(facts, bench.trimmed),
    mistakenIdea: trimMistakenIdea(facts, line, lengthRule(facts, bench.trimmed)),
    working: trimWorking({ study, facts, shares, line, moved }),
    figures: [],
  };
}

function benchOf(worked: Worked, element: number | null): Bench | { readonly refused: string; readonly mend: string } {
  const { station, band, solver, frequency, point } = worked;
  const [feed, ...others] = point.resolved.feedsInUse;
  if (feed === undefined || others.length > 0)
    return {
      refused: `this path feeds ${others.length + 1} feed points at once: one length decides for none of them`,
      mend: "a path, or a switch in another position, that leads to one feed point",
    };
  const trimmed = trimmedOf(station, feed, speedOfLight / frequency, element);
  if ("refused" in trimmed) return trimmed;
  const refinement = point.antenna.solution?.method.refinement ?? 1;
  return { station, band, solver, frequency, trimmed, rated: point.ratedResistance, refinement };
}

/** Least effect of an input on the length that is told, as a share of it. */
const leastEffect = 5e-4;

/** What the inputs do to the length joins what they do to the rest; without a length the SWR is judged. */
function judgedIn(worked: Worked, study: Study) {
  const target = study.scan.lowestSwr;
  if (target === null) return { worked, name: "swrAtTransmitter", least: 0.02 };
  const effects = worked.bounds.effects.map((effect) => {
    const own = study.bounds.effects.find((e) => e.input.place === effect.input.place);
    // An input that was not followed moves no length.
    const { atLow, atHigh } = own ?? { atLow: study.bounds.nominal, atHigh: study.bounds.nominal };
    return { ...effect, atLow: { ...effect.atLow, ...atLow }, atHigh: { ...effect.atHigh, ...atHigh } };
  });
  const nominal = { ...worked.bounds.nominal, ...study.bounds.nominal };
  return {
    worked: { ...worked, bounds: { ...worked.bounds, nominal, effects } },
    name: "lengthForLowestSwr",
    least: leastEffect * target,
  };
}

/** Interpolation is told of from this share of the impedance. */
const roughFrom = 0.01;

function roughness({ scan, plane }: Study): string[] {
  const share = Math.max(scan.feed.share, plane?.feed.share ?? 0);
  if (share < roughFrom) return [];
  return [
    `Between the lengths solved the impedance is in doubt by up to ${plainNumber(100 * share, 0)} %: this antenna changes too fast with length for a closer curve.`,
  ];
}

function reasonsOf(facts: TrimFacts): Answer["reasons"] {
  return [
    {
      says: trimReasons(facts),
      value: facts.swrNow,
      limit: facts.limit,
      unit: `on ${plainNumber(facts.rated, 1)} Ω`,
      source:
        "our rule: good below the limit while no other length brings 1 % more watts, workable where trimming brings it below (common practice, no source)",
    },
  ];
}

export const trim: Question = { ...trimListing, run };
