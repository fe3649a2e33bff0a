/** Where does my power go? Every watt from the transmitter to the sky, each term worked out on its own. */
import type { Answer, Refusal } from "../../answer/answer";
import type { Station } from "../../station/station";
import { sentence } from "../../words/phrases";
import { wattsAdvice, wattsHeadline, wattsReason, wattsVerdict } from "../../words/watts";
import { wattsMistakenIdea } from "../../words/wattsIdea";
import { frameOf } from "../common/frame";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { workStation } from "../common/worked";
import { wattsFacts } from "./facts";
import { wattsListing } from "./listing";
import { wattsRules } from "./rules";
import { wattsWorking } from "./working";

/** dB from rated power to the sky up to which the verdict holds. Half an S-unit cannot be heard, one can: our rule. */
const goodUpTo = 3;
const workableUpTo = 6;
const ruleSource = "our rule: half an S-unit is hardly heard, a whole one is (common practice, no source)";

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const worked = yield* workStation(station, parameters, context, () => ({}));
  if ("refused" in worked) return refusal(watts, station, worked.refused, worked.mend);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = wattsFacts(worked, { goodUpTo, workableUpTo });
  const frame = frameOf(watts, worked, context, { name: "radiatedPower", least: 0.002 * worked.point.ratedPower });
  const [unknown] = frame.uncertainties;
  return {
    ...frame,
    notCovered: [...frame.notCovered, ...compared.notComputed],
    parameters: { judged: "radiatedPower", frequency: worked.frequency },
    headline: sentence(wattsHeadline(facts)),
    headlinePhrases: wattsHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: wattsVerdict(facts),
    reasons: [
      {
        says: wattsReason(facts),
        value: facts.totalLoss,
        limit: facts.verdict === "good" ? goodUpTo : workableUpTo,
        unit: "dB",
        source: ruleSource,
      },
    ],
    next: wattsAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: wattsRules(worked),
    mistakenIdea: wattsMistakenIdea(facts),
    working: wattsWorking(worked),
    figures: [],
  };
}

export const watts: Question = { ...wattsListing, run };
