/** The mistaken idea that `nearby` corrects, its cautions, and what it does not cover. English. */
import { decibels, fixedNumber, metres, plainNumber, swrText } from "../quantity/format";
import { angleText, culprits } from "./nearby";
import type { NearbyFacts, ThingFacts } from "./nearbyFacts";
import { asSentence, capital, theName } from "./phrases";

/** m: "some metres". */
const someMetres = 2;

export function nearbyMistakenIdea(f: NearbyFacts): { readonly idea: string; readonly refutation: string } {
  const far = f.things.find((t) => t.effect >= 1 && t.clear && (t.clear.distance ?? t.clear.upTo) > someMetres);
  return far ? distanceIdea(f, far) : harmlessIdea(f);
}

/** "the SWR from 1.3 to 2.3"; the same where two read alike. */
const swrChange = (before: number, now: number): string =>
  swrText(before) === swrText(now)
    ? `an SWR of ${swrText(now)} by less than can be read`
    : `the SWR from ${swrText(before)} to ${swrText(now)}`;

const changes = (f: NearbyFacts, t: ThingFacts): string =>
  `${swrChange(t.without.swr, f.asIs.swr)} and the gain ${angleText(f)} by ${decibels(Math.abs(f.asIs.gain - t.without.gain))}`;

function distanceIdea(f: NearbyFacts, t: ThingFacts): { idea: string; refutation: string } {
  const { distance, upTo } = t.clear!;
  const waves = (m: number): string => `${fixedNumber(m / f.wave, 2)} of a wave`;
  const until =
    distance === null
      ? `even ${metres(upTo)} away (${waves(upTo)}) that is not over`
      : `only from ${metres(distance)} on (${waves(distance)}) less than 0.1 in SWR and 0.5 dB are left`;
  return {
    idea: "“A distance of some metres is enough.”",
    refutation: `${capital(theName(t.name))} is ${metres(t.distance)} away and changes ${changes(f, t)}; ${until}.`,
  };
}

function harmlessIdea(f: NearbyFacts): { idea: string; refutation: string } {
  return {
    idea: "“Any metal near the antenna spoils it.”",
    refutation: `Not here: ${culprits(f)} ${f.things.length > 1 ? "change" : "changes"} ${swrChange(f.withoutAll.swr, f.asIs.swr)} and the gain ${angleText(f)} by ${decibels(Math.abs(f.asIs.gain - f.withoutAll.gain))}. Length and direction of a conductor decide, not that it is metal.`,
  };
}

export function nearbyCautions(f: NearbyFacts): string[] {
  const standing = f.things.filter((t) => t.standing).map((t) => theName(t.name));
  return [
    "Never open or take off a safety earth or a lightning conductor, and no gutter or mast that serves as one: local code and licensed practice decide.",
    "An insulator in a guy or a mast carries its pull: one that breaks brings the mast down.",
    `The ends of ${culprits(f)} can carry high voltage while you send: keep people and what can burn away from them.`,
    ...(standing.length > 0
      ? [`No insulator is proposed for ${standing.join(" and ")}: it stands on the soil and may be an earth.`]
      : []),
  ];
}

export function nearbyNotCovered(f: NearbyFacts): string[] {
  return [
    "Wiring and pipes of a house, and walls, may do as much as what is in the file.",
    "Bad contacts between pieces of metal, which make noise and interference of their own.",
    ...f.own.map((name) => `What the station would be without ${theName(name)}: the antenna works against it.`),
    ...f.failed.map(({ name, why }) => `The station without ${theName(name)}: ${why}.`),
    ...f.roofs.map(
      (r) =>
        `The roof of ${r.covering} itself: its ${plainNumber(r.low, 1)} to ${plainNumber(r.high, 1)} dB are taken from the file.`,
    ),
    ...f.bounded.map(asSentence),
  ];
}
