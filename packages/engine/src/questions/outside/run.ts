/** Does the outside of the line carry current? What flows there, what it does, and what a choke would change. */
import type { Answer, Refusal } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { type Complex, complex } from "../../numerics/complex";
import type { Station } from "../../station/station";
import {
  chokeReason,
  goodShare,
  type OutsideFacts,
  outsideAdvice,
  outsideHeadline,
  outsideReason,
  outsideVerdict,
  workableShare,
} from "../../words/outside";
import { outsideMistakenIdea } from "../../words/outsideIdea";
import { outsideCautions, outsideNotCovered } from "../../words/outsideLimits";
import { sentence } from "../../words/phrases";
import { type Aim, aimOf } from "../common/aim";
import { frameOf } from "../common/frame";
import { antennasInUse } from "../common/inUse";
import type { Context, Parameters, Progress, Question } from "../common/question";
import { compareReadings } from "../common/readings";
import { refusal } from "../common/refusal";
import { wouldSettle } from "../common/settle";
import { gainAt } from "../common/stationNumbers";
import { type Worked, workStation } from "../common/worked";
import { studyBands } from "./bands";
import { type StudyAsked, studyImpedances, studyPlaces } from "./chokeStudy";
import { type Compared, compareOutside, type ProbedPlace } from "./comparison";
import { type Found, judgedShare, outsideFacts } from "./facts";
import { studyLengths } from "./lengthStudy";
import { outsideListing } from "./listing";
import { shackEnd } from "./shackEnd";
import { type OutsideState, outsideState } from "./state";
import { outsideTables } from "./tables";
import { outsideNumbers, outsideValues, rangedValues } from "./values";
import { whyNoOutside } from "./whyNoOutside";
import { outsideRules, outsideWorking } from "./working";

/** Ohm, resistive: what is tried where the line has no choke. Five to ten turns on large ferrite rings (from memory). */
const usualChoke = 3000;

const againstLineOf = (station: Station, point: WorkedPoint): boolean =>
  antennasInUse(station, point).some((a) => a.against === "outside of the line");

function* run(station: Station, parameters: Parameters, context: Context): Generator<Progress, Answer | Refusal> {
  const worked = yield* workStation(station, parameters, context, (point, result) => {
    const state = outsideState(point, result.driven);
    return state ? outsideNumbers(state, againstLineOf(station, point)) : {};
  });
  if ("refused" in worked) return refusal(outside, station, worked.refused, worked.mend);
  const state = outsideState(worked.point, worked.result.driven);
  if (state === null) {
    const { why, mend } = whyNoOutside(worked.point);
    return refusal(outside, station, why, mend);
  }
  const asked = typeof parameters.choke === "number" ? parameters.choke : null;
  const aim = aimOf(worked, parameters.elevation);
  const found = yield* find(worked, state, aim, asked);
  const compared = yield* compareReadings(station, worked.band, worked.solver);
  const facts = outsideFacts(worked, found);
  const frame = frameOf(outside, worked, context, { name: "outsideShare", least: 0.5 });
  const [unknown] = frame.uncertainties;
  return {
    ...frame,
    values: { ...frame.values, ...rangedValues(worked), ...outsideValues(found, facts) },
    tables: [...outsideTables(found), ...frame.tables],
    cautions: [...outsideCautions(facts), ...frame.cautions],
    assumptions: [...frame.assumptions, ...ownAssumptions(found)],
    notCovered: [...frame.notCovered, ...outsideNotCovered(facts), ...compared.notComputed],
    parameters: {
      judged: "outsideShare",
      elevation: aim.elevation,
      azimuth: aim.azimuth,
      choke: asked,
      places: facts.chokes.map((c) => `${c.name} at ${c.distance.toFixed(2)}`).join("; "),
      bonds: state.run.bonds.map((b) => `${b.earth} at ${b.distance.toFixed(2)}`).join("; "),
      earthed: state.run.earthed,
      tried: facts.tried,
      studiedAt: found.study?.place.distance ?? null,
    },
    headline: sentence(outsideHeadline(facts)),
    headlinePhrases: outsideHeadline(facts),
    verdict: facts.verdict,
    verdictPhrases: outsideVerdict(facts),
    reasons: reasonsOf(facts),
    next: outsideAdvice(facts),
    wouldSettle: wouldSettle(worked, unknown),
    readings: compared.readings,
    rulesOfThumb: outsideRules(facts),
    mistakenIdea: outsideMistakenIdea(facts),
    working: outsideWorking(found, facts, { sheath: worked.numbers.heatOnOutside! }),
    figures: [],
  };
}

function* find(worked: Worked, state: OutsideState, aim: Aim, ohms: number | null): Generator<Progress, Found> {
  const { station, band, frequency, solver, point } = worked;
  const asked = { band, frequency, solver };
  const againstLine = againstLineOf(station, point);
  const share = (s: OutsideState): number => judgedShare(s, againstLine);
  yield { done: 0, of: 1, what: "the line without chokes" };
  const compared = compareOutside(station, asked, { run: state.run, aim, againstLine });
  const study: StudyAsked = { ...asked, compared, share };
  const tried = ohms === null ? usedChoke(state) : complex(ohms);
  const places = yield* studyPlaces(study, tried);
  const place = placeOfStudy(compared, places);
  return {
    state,
    againstLine,
    share: share(state),
    gain: gainAt(worked.result.driven, aim.elevation, aim.azimuth),
    strongestGain: worked.result.strongest.gain,
    compared,
    places,
    study: place && (yield* studyImpedances(study, place)),
    tried,
    lengths: yield* studyLengths(station, asked, state.run, share),
    bands: yield* studyBands(station, solver, share),
    end: shackEnd(station, asked, state),
  };
}

/** The file's choke nearest to the feed, else a usual one; ohm. */
function usedChoke({ run, point }: OutsideState): Complex {
  const own = run.chokes.flatMap((c) => c.impedances.filter((z) => z !== null)).at(-1);
  const impedance = own?.(2 * Math.PI * point.frequency);
  return impedance && Math.hypot(impedance.re, impedance.im) > 1 ? impedance : complex(usualChoke);
}

/** Where resistance and reactance are swept: at the file's choke nearest to the feed, else where a choke does most. */
function placeOfStudy(
  { places }: Compared,
  results: readonly { readonly place: ProbedPlace; readonly share: number | null }[],
): ProbedPlace | null {
  const own = places.filter((p) => p.chokes.length > 0).at(-1);
  const best = [...results].sort((a, b) => (a.share ?? 9) - (b.share ?? 9))[0];
  return own ?? best?.place ?? null;
}

function reasonsOf(facts: OutsideFacts): Answer["reasons"] {
  const current = {
    says: outsideReason(facts),
    value: 100 * facts.share,
    limit: 100 * (facts.share <= goodShare ? goodShare : workableShare),
    unit: "%",
    source:
      "our rule: good up to 5 % of the largest current in the antenna, workable up to 25 % (common practice, no source)",
  };
  const chokes = facts.chokes.flatMap((c) =>
    c.limit === null
      ? []
      : [{ says: chokeReason(c), value: c.mean, limit: c.limit, unit: "W", source: "heat limit of the station file" }],
  );
  return [current, ...chokes];
}

function ownAssumptions({ lengths, study, compared }: Found): Answer["assumptions"] {
  const made = [];
  if (lengths)
    made.push({
      place: "path",
      name: "other lengths of the line",
      value: "level at the transmitter's end, which moves along with its earth; the inside as it is",
      reason: "only the outer surface is asked about",
    });
  if (study && compared.places.length > 0)
    made.push({
      place: "path",
      name: "chokes tried out",
      value: "without length, at quarters of the outside, at its joints and its ends",
      reason: "places where a choke may go",
    });
  return made;
}

export const outside: Question = { ...outsideListing, run };
