/** The facts the sentences of `nearby` are made of. */
import type { Verdict } from "../../answer/answer";
import { speedOfLight } from "../../numerics/vacuum";
import type { CaseFacts, NearbyFacts, RemedyFacts, ThingFacts } from "../../words/nearbyFacts";
import type { Worked } from "../common/worked";
import { type Case, effectOf, leastGainChange, leastSwrChange } from "./cases";
import type { Remedy } from "./spoiling";
import type { Study, ThingStudy } from "./study";
import type { NearBy } from "./things";

/** SWR up to which a station counts as matched where the file wants nothing else: our rule. */
const usualLimit = 2;
/** Share of the sky's watts whose loss is worth naming, and is trouble: our rule. */
const leastShare = 0.05;
const troubleShare = 0.2;
/** dB less at the angle looked at that are trouble: half of the power. */
const troubleGain = 3;

export function nearbyFacts(worked: Worked, study: Study, near: NearBy): NearbyFacts {
  const { point, station } = worked;
  const limit = station.wanted.swrBelow?.value ?? usualLimit;
  const asIs = caseFacts(study.asIs);
  const withoutAll = caseFacts(study.withoutAll);
  const sky = (w: number, decibels: number): number => w * 10 ** (-decibels / 10);
  return {
    verdict: verdictOf(asIs, withoutAll, limit),
    limit,
    asIs,
    withoutAll,
    effect: effectOf(study.asIs, study.withoutAll),
    aim: study.aim,
    whole: point.powerFromTransmitter,
    atTuner: point.tuner?.name ?? null,
    wave: speedOfLight / worked.frequency,
    frequency: worked.frequency,
    antennaCurrent: study.currents.antenna,
    feedCurrent: study.currents.feed,
    dips: study.dips,
    things: study.things.map((one) => thingFacts(study.asIs, one)),
    own: near.own,
    roofs: near.roofs.map(({ covering, loss }) => ({
      covering,
      low: loss.low,
      high: loss.high,
      wattsLow: sky(asIs.radiated, loss.high),
      wattsHigh: sky(asIs.radiated, loss.low),
    })),
    failed: study.failed,
    bounded: study.bounded,
  };
}

const caseFacts = ({ swr, gain, numbers, feedPoint }: Case): CaseFacts => ({
  swr,
  gain,
  feedPoint,
  radiated: numbers.radiatedPower!,
  strongest: {
    gain: numbers.maximumGain!,
    elevation: numbers.elevationOfMaximum!,
    azimuth: numbers.azimuthOfMaximum!,
  },
});

function thingFacts(asIs: Case, one: ThingStudy): ThingFacts {
  const { thing, without, effect, induced, distances, resonance } = one;
  return {
    name: thing.name,
    kind: thing.kind,
    says: thing.says,
    length: thing.length,
    standing: thing.standing,
    distance: thing.distance,
    without: caseFacts(without),
    effect,
    harm: harmOf(caseFacts(asIs), caseFacts(without)),
    induced,
    clear: distances
      ? {
          distance: distances.clear,
          towards: distances.towards,
          upTo: distances.points.at(-1)?.distance ?? 0,
          count: distances.points.length,
        }
      : null,
    resonance,
    remedies: one.remedies.map((r) => remedyFacts(r, without)),
    openedAt: one.openedAt,
  };
}

const remedyFacts = ({ kind, at, ohms, state }: Remedy, without: Case): RemedyFacts => ({
  kind,
  at,
  ohms,
  state: caseFacts(state),
  left: effectOf(state, without),
});

/** How much worse one state is than another: 1 is just worth naming, and a change for the better counts nothing. */
export function harmOf(now: CaseFacts, without: CaseFacts): number {
  return Math.max(
    0,
    (Math.min(now.swr, 999) - Math.min(without.swr, 999)) / leastSwrChange(without.swr),
    (without.gain - now.gain) / leastGainChange,
    (without.radiated - now.radiated) / (leastShare * without.radiated),
  );
}

export function verdictOf(now: CaseFacts, without: CaseFacts, limit: number): Verdict {
  const lost = now.radiated < (1 - troubleShare) * without.radiated || now.gain < without.gain - troubleGain;
  if (lost || (now.swr > limit && without.swr <= limit)) return "trouble";
  return harmOf(now, without) >= 1 ? "workable" : "good";
}

export const limits = { troubleShare, troubleGain };
