/** Headline, verdict and advice of `outside`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { fixedNumber, metres, plainNumber, significantNumber, swrText, watts, withPrefix } from "../quantity/format";
import { capital, linked, said, theName } from "./phrases";

export interface ChokeFacts {
  readonly name: string;
  /** Ohm; "" where nothing passes it. */
  readonly impedance: string;
  /** m from the transmitter's end, and A rms through it. */
  readonly distance: number;
  readonly current: number;
  /** W at peak envelope power, and the mean on the air. */
  readonly heat: number;
  readonly mean: number;
  readonly limit: number | null;
}

/** A choke tried out at a place. */
export interface PlaceFacts {
  readonly distance: number;
  readonly share: number | null;
  readonly ohmsNeeded: number | null;
}

export interface CaseFacts {
  readonly share: number;
  readonly swr: number;
  readonly radiated: number;
  readonly gain: number;
}

export interface OutsideFacts {
  readonly verdict: Verdict;
  /** Shares are of the largest current in the antenna, which is that into the feed where it is fed in its middle. `share` is what the verdict is by. */
  readonly share: number;
  readonly largest: { readonly current: number; readonly at: number };
  readonly house: { readonly current: number; readonly share: number };
  readonly feedCurrent: number;
  readonly antennaCurrent: number;
  readonly length: number;
  readonly wave: number;
  /** The outside is the return of the antenna itself. */
  readonly againstLine: boolean;
  readonly earthed: string | null;
  readonly endVolts: number | null;
  readonly chokes: readonly ChokeFacts[];
  /** Chokes at the transmitter's floating end, behind which nothing is. */
  readonly idle: readonly string[];
  readonly asIs: CaseFacts;
  readonly perfect: CaseFacts | null;
  readonly none: CaseFacts | null;
  /** The place of the study, with what a choke there has to have. */
  readonly study: {
    readonly distance: number;
    readonly bare: number;
    readonly ohmsNeeded: number | null;
    readonly worst: { readonly reactance: number; readonly share: number };
    readonly present: boolean;
  } | null;
  readonly places: readonly PlaceFacts[];
  readonly tried: string;
  readonly worstLength: { readonly extra: number; readonly share: number; readonly swr: number } | null;
  readonly bands: readonly { readonly name: string; readonly share: number; readonly current: number }[];
  readonly noise: { readonly share: number; readonly perfectShare: number | null };
}

/** Up to here the verdict holds: our rule. */
export const goodShare = 0.05;
export const workableShare = 0.25;

export const amperes = (value: number): string => withPrefix(value, "A", 2);
export const percent = (share: number): string =>
  share >= 0.0995 ? `${plainNumber(100 * share, 0)} %` : `${significantNumber(100 * share, share < 1e-5 ? 1 : 2)} %`;
export const ohmText = (value: number): string => withPrefix(value, "Ω", 2);

/** "at the feed point", "at the transmitter", "7 m from the transmitter". */
export function placeText(f: Pick<OutsideFacts, "length">, distance: number): string {
  if (distance > f.length - 0.02) return "at the feed point";
  return distance < 0.02 ? "at the transmitter" : `${metres(distance)} from the transmitter`;
}

export function outsideHeadline(f: OutsideFacts): Phrase[] {
  const house = linked(amperes(f.house.current), "outsideCurrentAtHouse");
  if (f.againstLine) return [said("The line is half of this antenna: "), house, said(" reach the house.")];
  if (f.share < 1e-4)
    return [said("The outside of the line carries "), linked("no current", "outsideShare"), said(" worth naming.")];
  return [
    said("The line's outside carries "),
    linked(amperes(f.largest.current), "outsideCurrent"),
    said(", "),
    linked(percent(f.share), "outsideShare"),
    said(" of the antenna's current."),
  ];
}

export function outsideVerdict(f: OutsideFacts): Phrase[] {
  return [...wherePhrases(f), ...heatPhrases(f), ...idlePhrases(f), ...endPhrases(f), said(outsideAdvice(f))];
}

function wherePhrases(f: OutsideFacts): Phrase[] {
  const where = linked(placeText(f, f.largest.at), "outsideCurrentAt");
  if (f.againstLine)
    return [
      said("All that flows into the wire returns on the outside of the line; it is largest "),
      where,
      said(", and "),
      linked(percent(f.house.share), "outsideShare"),
      said(" of the current in the antenna is left near the house. "),
    ];
  if (f.share < 1e-4) return [];
  const house = [said("; near the house it is "), linked(amperes(f.house.current), "outsideCurrentAtHouse")];
  return [said("It is largest "), where, ...(f.house.current < 0.9 * f.largest.current ? house : []), said(". ")];
}

const hottest = (f: OutsideFacts): ChokeFacts | undefined => [...f.chokes].sort((a, b) => b.mean - a.mean)[0];
const overLimit = (f: OutsideFacts): ChokeFacts | undefined =>
  f.chokes.find((c) => c.limit !== null && c.mean > c.limit);

function heatPhrases(f: OutsideFacts): Phrase[] {
  const hot = overLimit(f) ?? hottest(f);
  if (!hot || hot.mean < 0.05) return [];
  const limit =
    hot.limit === null ? "" : `, ${hot.mean > hot.limit ? "above" : "below"} its limit of ${watts(hot.limit)}`;
  return [
    said(`${capital(theName(hot.name))} warms with `),
    linked(watts(hot.mean), "chokeHeatOnAir"),
    said(` on the air${limit}. `),
  ];
}

function idlePhrases(f: OutsideFacts): Phrase[] {
  const [name] = f.idle;
  return name === undefined
    ? []
    : [said(`${capital(theName(name))} does nothing: behind it the outside ends, joined to no earth. `)];
}

function endPhrases(f: OutsideFacts): Phrase[] {
  if (f.endVolts === null || f.endVolts < 1) return [];
  const volts = linked(`${significantNumber(f.endVolts, 2)} V`, "voltageAtTransmitter");
  return f.earthed === null
    ? [said("Between the transmitter's case and the soil below it stand "), volts, said(". ")]
    : [said(`Across ${f.earthed} stand `), volts, said(". ")];
}

/** The one thing to do. */
export function outsideAdvice(f: OutsideFacts): string {
  const over = overLimit(f);
  if (over) return heatAdvice(f, over);
  if (f.againstLine) return returnAdvice(f);
  if (f.verdict === "good") return quietAdvice(f);
  const best = bestPlace(f);
  if (best === null) return stubbornAdvice(f);
  const there = f.chokes.find((c) => Math.abs(c.distance - best.distance) < 0.02);
  const act = there ? `Exchange ${theName(there.name)} for one` : "Put a choke";
  return `${act} of at least ${ohmText(best.ohmsNeeded!)}, mostly resistive, ${placeText(f, best.distance)}: less than 5 % is left then.`;
}

function heatAdvice(f: OutsideFacts, over: ChokeFacts): string {
  const power = Math.floor((100 * over.limit!) / over.mean);
  return `${capital(theName(over.name))} overheats: send with at most ${power} % of this power, or put a choke of much higher resistance there${f.verdict === "trouble" && f.share > workableShare ? ", or give the current a wire to return on" : ""}.`;
}

/** Changes of length beyond this share of a wave are no slip: not warned of. */
const nearby = 0.3;

function quietAdvice(f: OutsideFacts): string {
  const worst = f.worstLength;
  if (worst === null || worst.share <= goodShare || Math.abs(worst.extra) > nearby * f.wave) return "Leave it.";
  return `Leave it, but keep the length: with ${lengthText(worst.extra)} the outside would carry ${percent(worst.share)}.`;
}

/** "2.1 m more line". */
export const lengthText = (extra: number): string =>
  `${metres(Math.abs(extra))} ${extra < 0 ? "less" : "more"} line at the transmitter`;

function stubbornAdvice(f: OutsideFacts): string {
  const least = leastPlace(f);
  if (least === null || least.share === null) return "Lead the line away at a right angle to the wire.";
  return `No single choke brings it below 5 %: one of ${f.tried} does most ${placeText(f, least.distance)}, where ${percent(least.share)} is left. The wire drives the line through the air: lead it away at a right angle.`;
}

function returnAdvice(f: OutsideFacts): string {
  if (f.verdict === "good")
    return "Leave it as it is: without this return the wire takes no power, so put no choke at the feed point.";
  const own = "Give the antenna a counterpoise of its own, then a choke at the feed point keeps the line quiet.";
  const below = f.places.filter((p) => p.distance < 0.98 * f.length);
  const enough = bestPlace({ places: below });
  if (enough)
    return `Put a choke of at least ${ohmText(enough.ohmsNeeded!)} ${placeText(f, enough.distance)}, not at the feed point: the piece of line above it stays the return.`;
  const least = leastPlace({ places: below });
  if (!least || least.share === null || least.share > 0.8 * f.share) return own;
  return `Put a choke ${placeText(f, least.distance)}, not at the feed point: the piece of line above it stays the return; one of ${f.tried} leaves ${percent(least.share)} near the house.`;
}

const byShare = (a: PlaceFacts, b: PlaceFacts): number => (a.share ?? 9) - (b.share ?? 9);

/** Where the fewest ohms are enough; null where none is. */
export function bestPlace(f: Pick<OutsideFacts, "places">): PlaceFacts | null {
  const enough = f.places.filter((p) => p.ohmsNeeded !== null);
  return enough.sort((a, b) => a.ohmsNeeded! - b.ohmsNeeded!)[0] ?? null;
}

export const leastPlace = (f: Pick<OutsideFacts, "places">): PlaceFacts | null =>
  [...f.places].sort(byShare)[0] ?? null;

export const outsideReason = (f: OutsideFacts): string =>
  f.againstLine
    ? `near the house the outside of the line carries ${percent(f.share)} of the largest current in the antenna`
    : `the outside of the line carries at most ${percent(f.share)} of the largest current in the antenna`;

export const chokeReason = (c: ChokeFacts): string =>
  `${theName(c.name)} warms with ${watts(c.mean)} on the air, at most ${watts(c.limit!)} are allowed`;

/** How SWR, sky watts and gain change against a case. */
export function changeText(f: OutsideFacts, other: CaseFacts): string {
  const dB = 10 * Math.log10(other.radiated / f.asIs.radiated);
  return `SWR at the transmitter ${swrText(other.swr)} in place of ${swrText(f.asIs.swr)}, ${watts(other.radiated)} to the sky in place of ${watts(f.asIs.radiated)} (${fixedNumber(dB, 2)} dB)`;
}
