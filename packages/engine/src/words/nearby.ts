/** Headline, verdict and advice of `nearby`. English. */
import type { Phrase } from "../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, swrText, watts, wholeWatts } from "../quantity/format";
import type { CaseFacts, NearbyFacts, RemedyFacts, ThingFacts } from "./nearbyFacts";
import { capital, linked, said, theName } from "./phrases";
import { asSUnits } from "./sUnits";

/** What the SWR is told of. */
export const swrName = (f: NearbyFacts): string => (f.atTuner === null ? "the SWR" : "the SWR that the tuner meets");

const matters = (f: NearbyFacts): ThingFacts[] => f.things.filter((t) => t.effect >= 1);

/** "the gutter", "the gutter and the mast", "what stands near by". */
export function culprits(f: NearbyFacts): string {
  const names = (matters(f).length > 0 ? matters(f) : f.things).map((t) => theName(t.name));
  if (names.length > 2 || names.length === 0) return "what stands near by";
  return names.join(" and ");
}

export const angleText = (f: NearbyFacts): string => `${plainNumber(f.aim.elevation, 0)}° up`;

/** Words of a name that a headline has room for. */
const mostWords = 4;

/** At most twelve words; what keeps watts back is named alone only where nothing else matters. */
export function nearbyHeadline(f: NearbyFacts): Phrase[] {
  const several = matters(f).length > 1 || (matters(f).length === 0 && f.things.length > 1);
  const named = culprits(f);
  const what = several || named.split(" ").length > mostWords ? "what stands near by" : named;
  const now = linked(wholeWatts(f.asIs.radiated), "radiatedPower");
  const before = linked(wholeWatts(f.withoutAll.radiated), "radiatedPowerWithout");
  if (wholeWatts(f.asIs.radiated) === wholeWatts(f.withoutAll.radiated))
    return [said(`With or without ${what}, `), now, said(" leave.")];
  if (f.effect < 1 && f.verdict === "good") return [now, said(` leave; ${what} changes little.`)];
  const kept = Number(plainNumber(f.withoutAll.radiated, 0)) - Number(plainNumber(f.asIs.radiated, 0));
  if (kept < 1 || f.asIs.radiated < 10)
    return [said(`With ${what} `), now, said(" leave, without it "), before, said(".")];
  const act = several ? "" : shortAct(f);
  return [
    said(`${capital(what)} keeps back `),
    linked(`${kept} of ${wholeWatts(f.withoutAll.radiated)}`, "radiatedPowerWithout"),
    said(`${act}.`),
  ];
}

function shortAct(f: NearbyFacts): string {
  const top = worst(f);
  if (!top || f.verdict === "good") return "";
  const best = bestRemedy(top);
  const acts = { insulator: ": break it", choke: ": choke it", open: ": leave it open", shorted: ": short it" };
  return best ? acts[best.kind] : ": keep away";
}

/** The thing that does most harm. */
export const worst = (f: NearbyFacts): ThingFacts | undefined =>
  [...f.things].filter((t) => t.harm >= 1).sort((a, b) => b.harm - a.harm)[0];

/** A remedy has to take at least this share of the effect away. */
const worthwhile = 0.5;

/** What brings the station nearest to how it is without the thing; null where nothing does half of it, or it stands on the soil. */
export function bestRemedy(thing: ThingFacts): RemedyFacts | null {
  if (thing.standing) return null;
  const [best] = [...thing.remedies].sort((a, b) => a.left - b.left);
  if (!best || best.left > worthwhile * thing.effect) return null;
  const plain = thing.remedies.find((r) => r.kind === "insulator");
  return plain && plain.left < Math.max(1, 1.2 * best.left) ? plain : best;
}

export function nearbyVerdict(f: NearbyFacts): Phrase[] {
  return [...swrPhrases(f), ...gainPhrases(f), ...inducedPhrases(f), ...roofPhrases(f), said(nearbyAdvice(f))];
}

function swrPhrases(f: NearbyFacts): Phrase[] {
  const [now, before] = [swrText(f.asIs.swr), swrText(f.withoutAll.swr)];
  const name = capital(swrName(f));
  const value = f.atTuner === null ? "swrAtTransmitter" : "swrSeen";
  if (now === before) return [said(`${name} stays `), linked(now, value), said(". ")];
  return [said(`${name} is `), linked(now, value), said(" in place of "), linked(before, "swrWithout"), said(". ")];
}

function gainPhrases(f: NearbyFacts): Phrase[] {
  const change = f.asIs.gain - f.withoutAll.gain;
  if (Math.abs(change) < 0.1) return [];
  const by = linked(decibels(Math.abs(change)), "gainAtElevation");
  const units = Math.abs(change) < 0.6 ? "" : ` (${asSUnits(Math.abs(change))})`;
  return [
    said(`${capital(angleText(f))}, ${bearingText(f.aim.azimuth)}, the antenna is `),
    by,
    said(` ${change < 0 ? "weaker" : "stronger"}${units}. `),
  ];
}

const points = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
export const bearingText = (degrees: number): string => {
  const round = ((Math.round(degrees) % 360) + 360) % 360;
  return `towards ${round}° (${points[Math.round(round / 45) % 8]!})`;
};

function inducedPhrases(f: NearbyFacts): Phrase[] {
  const [top] = f.things;
  if (!top || top.effect < 1) return [];
  return [
    said(`In ${theName(top.name)} run `),
    linked(`${amperes(top.induced.current)}`, "inducedCurrent"),
    said(`, ${share(f, top)} of the largest current in the antenna. `),
  ];
}

export const amperes = (a: number): string =>
  a < 0.0995 ? `${plainNumber(1000 * a, 0)} mA` : `${fixedNumber(a, 1)} A`;
export const share = (f: NearbyFacts, t: ThingFacts): string =>
  `${plainNumber((100 * t.induced.current) / f.antennaCurrent, 0)} %`;

function roofPhrases(f: NearbyFacts): Phrase[] {
  return f.roofs.map((r) =>
    said(
      `Behind the roof of ${r.covering}, with the ${plainNumber(r.low, 1)} to ${plainNumber(r.high, 1)} dB the file gives it, ${watts(r.wattsLow)} to ${watts(r.wattsHigh)} of that are left. `,
    ),
  );
}

export function nearbyAdvice(f: NearbyFacts): string {
  const top = worst(f);
  if (!top || f.verdict === "good") {
    return matters(f).length > 0
      ? `Nothing: what ${culprits(f)} ${matters(f).length > 1 ? "change" : "changes"} does no harm.`
      : `Nothing: ${culprits(f)} ${f.things.length > 1 ? "change" : "changes"} nothing worth naming.`;
  }
  const best = bestRemedy(top);
  return best ? remedyAdvice(f, top, best) : distanceAdvice(f, top);
}

const effectText = (f: NearbyFacts, to: CaseFacts): string => {
  const swr = `${swrName(f)} from ${swrText(f.asIs.swr)} to ${swrText(to.swr)}`;
  return `${swr} and what leaves for the sky from ${wholeWatts(f.asIs.radiated)} to ${wholeWatts(to.radiated)}`;
};

export function placeText(thing: ThingFacts, at: number): string {
  return Math.abs(at - thing.length / 2) < 0.05 * thing.length
    ? `in the middle of ${theName(thing.name)}`
    : `${metres(at)} along ${theName(thing.name)}`;
}

function remedyAdvice(f: NearbyFacts, thing: ThingFacts, best: RemedyFacts): string {
  const change = effectText(f, best.state);
  if (best.kind === "insulator")
    return `An insulator ${placeText(thing, best.at!)} brings ${change}; only where it is no safety earth and bears no load.`;
  if (best.kind === "choke")
    return `A choke of ${plainNumber(best.ohms!, 0)} Ω ${placeText(thing, best.at!)} brings ${change}.`;
  const how = best.kind === "open" ? "Leave" : "Short";
  const state = best.kind === "open" ? " open" : "";
  return `${how} ${theName(thing.name)}${state} at its feed point while it is not used: that brings ${change}.`;
}

function distanceAdvice(f: NearbyFacts, thing: ThingFacts): string {
  const name = theName(thing.name);
  if (!thing.clear) return `Keep the antenna farther from ${name}.`;
  const { distance, upTo } = thing.clear;
  if (distance === null)
    return `Turn the antenna or move it away from ${name}: even ${metres(upTo)} away it still changes more than is worth naming.`;
  return `Keep the antenna and ${name} ${metres(Math.ceil(distance))} apart (now ${metres(thing.distance)}): from there on it changes ${f.atTuner === null ? "the SWR" : "what the tuner meets"} and the gain by next to nothing.`;
}

export const nearbyReason = {
  sky: (f: NearbyFacts): string =>
    `${watts(f.asIs.radiated)} leave for the sky, ${watts(f.withoutAll.radiated)} without ${culprits(f)}`,
  swr: (f: NearbyFacts): string =>
    `${swrName(f)} is ${swrText(f.asIs.swr)}, ${swrText(f.withoutAll.swr)} without ${culprits(f)}`,
  gain: (f: NearbyFacts): string =>
    `${angleText(f)} ${bearingText(f.aim.azimuth)} the gain is ${fixedNumber(f.asIs.gain, 1)} dBi, ${fixedNumber(f.withoutAll.gain, 1)} dBi without ${culprits(f)}`,
};
