/** Headline, verdict and advice of `height`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, metres, plainNumber, wholeWatts } from "../quantity/format";
import { asking } from "./asking";
import { linked, said } from "./phrases";
import { asSUnits } from "./sUnits";

export interface HeightFact {
  readonly height: number;
  readonly radiatedPower: number;
  readonly powerIntoAntenna: number;
  readonly swrAtTransmitter: number;
  readonly gainLow: number;
  readonly gainHigh: number;
  readonly maximumGain: number;
  readonly elevationOfMaximum: number;
  readonly heatInSoil: number;
}

export interface HeightFacts {
  readonly present: HeightFact;
  readonly share: number;
  readonly verdict: Verdict;
  /** dB between transmitter and antenna. */
  readonly pathLoss: number;
  readonly lowestSwr: HeightFact;
  /** The next height worth asking about: about 0.06 wave up. */
  readonly higher: HeightFact;
  readonly most: HeightFact;
  readonly split: number | null;
  readonly zenithIsNull: boolean;
  readonly aim: { readonly elevation: number; readonly azimuth: number };
  readonly wave: number;
  readonly delivered: number;
}

/**
 * From a wave up the pattern is a comb of lobes: a little height moves them past any one angle, and only the strongest
 * direction says whether more height helps.
 */
export const isHigh = (f: HeightFacts): boolean => f.present.height > f.wave;

const signal = (p: HeightFact, gain: number): number => gain + 10 * Math.log10(p.powerIntoAntenna);

/** dB that the next height adds to the signal at the wanted angle (in the strongest direction for a high antenna), path included. */
export function signalOfMoreHeight(f: HeightFacts): number {
  const gain = (p: HeightFact) => (isHigh(f) ? p.maximumGain : p.gainLow);
  return signal(f.higher, gain(f.higher)) - signal(f.present, gain(f.present));
}

/** The same straight up, for near stations; null where straight up is a null of the antenna, or too high for one angle to tell. */
export const signalStraightUp = (f: HeightFacts): number | null =>
  f.zenithIsNull || isHigh(f) ? null : signal(f.higher, f.higher.gainHigh) - signal(f.present, f.present.gainHigh);

export const stepUp = (f: HeightFacts): number => f.higher.height - f.present.height;

/** Where the signal is told: "20° up", or the strongest direction. */
export const where = (f: HeightFacts): string =>
  isHigh(f) ? "in its strongest direction" : `${plainNumber(f.aim.elevation, 0)}° up`;

/** dB below which a change is not told, and from which it is worth the climb. Our rule. */
const hardlyAny = 0.15;
const worthIt = 1;

const helps = (f: HeightFacts): "much" | "little" | "not" => {
  const more = stepUp(f) > 0 ? signalOfMoreHeight(f) : 0;
  return more > worthIt ? "much" : more > hardlyAny ? "little" : "not";
};

/** In trouble, the next step up brings nothing for far stations, and yet some greater height clearly sends more. */
const muchHigherHelps = (f: HeightFacts): boolean =>
  f.verdict === "trouble" &&
  helps(f) === "not" &&
  f.most.height > f.present.height &&
  10 * Math.log10(f.most.radiatedPower / f.present.radiatedPower) > worthIt;

/** Watts of a headline; milliwatts in a station of less than a watt. */
const told = (f: HeightFacts, x: number): string =>
  f.delivered < 0.95 ? `${plainNumber(1000 * x, 0)} mW` : wholeWatts(x);

export function heightHeadline(f: HeightFacts): Phrase[] {
  const sky = linked(told(f, f.present.radiatedPower), "radiatedPower");
  const now = metres(f.present.height);
  switch (helps(f)) {
    case "much":
      return [
        said(`Go higher${(signalStraightUp(f) ?? 0) > hardlyAny ? "" : " for far stations"}: `),
        sky,
        said(` leave at ${now}.`),
      ];
    case "little":
      return [said("Higher helps far stations a little: "), sky, said(` leave at ${now}.`)];
    case "not":
      if (muchHigherHelps(f)) return [said("Only much higher helps: "), sky, said(` leave at ${now}.`)];
      return [said(`Keep it at ${now}: `), sky, said(" leave for the sky.")];
  }
}

export function heightVerdict(f: HeightFacts): Phrase[] {
  const inPath = f.delivered - f.present.powerIntoAntenna;
  const path = inPath >= 0.005 * f.delivered ? `, line and parts ${told(f, inPath)}` : "";
  const soil = f.present.heatInSoil >= 0.005 * f.delivered;
  const taken = soil
    ? [said("The soil takes "), linked(told(f, f.present.heatInSoil), "heatInSoil"), said(`${path}; `)]
    : [said(path === "" ? "" : `Line and parts take ${told(f, inPath)}; `)];
  const strongest = [
    said(soil || path !== "" ? "the antenna is strongest " : "The antenna is strongest "),
    linked(`${plainNumber(f.present.elevationOfMaximum, 0)}°`, "elevationOfMaximum"),
    said(" up. "),
  ];
  const fewer = f.present.radiatedPower - f.lowestSwr.radiatedPower;
  const tempting =
    isTempting(f) && fewer > 0.01 * f.delivered
      ? [said(`SWR would be lowest at ${metres(f.lowestSwr.height)}, and ${told(f, fewer)} fewer would leave there. `)]
      : [];
  return [...taken, ...strongest, ...tempting, said(heightAdvice(f))];
}

/** Heights below this share of the present one are nothing that people think of. */
const leastTempting = 0.25;

/** Another height shows a clearly lower SWR: what people are tempted to choose. */
export const isTempting = (f: HeightFacts): boolean =>
  f.present.swrAtTransmitter - f.lowestSwr.swrAtTransmitter > 0.1 &&
  f.lowestSwr.height > leastTempting * f.present.height;

export function heightAdvice(f: HeightFacts): string {
  if (muchHigherHelps(f))
    return `The next ${plainNumber(Math.max(stepUp(f), 1), 1)} m bring nothing; at ${metres(f.most.height)} ${told(f, f.most.radiatedPower)} would leave.`;
  if (f.verdict === "trouble" && helps(f) === "not")
    return `Height alone mends little: at ${metres(f.most.height)} ${told(f, f.most.radiatedPower)} would leave.`;
  const { powerIntoAntenna, radiatedPower, heatInSoil } = f.present;
  const soilTakesMost = heatInSoil > (powerIntoAntenna - radiatedPower) / 2;
  const start = f.verdict === "trouble" && soilTakesMost ? "So low, the soil takes most. " : "";
  const horizon = isHigh(f)
    ? ` Ask ${asking("sky")} for its angles; how far over the horizon it is heard is not worked out yet.`
    : "";
  if (helps(f) === "not") return `More height brings next to nothing here; leave it.${horizon}`;
  const more = signalOfMoreHeight(f);
  const size = more > worthIt ? `, ${asSUnits(more)}` : "";
  return `${start}Raise it by ${plainNumber(stepUp(f), 1)} m for ${decibels(more)} more ${where(f)}${size}${nearWords(f)}.${horizon}`;
}

/** What the same step does for near stations. */
function nearWords(f: HeightFacts): string {
  const near = signalStraightUp(f);
  if (near === null) return "";
  if (Math.abs(near) < hardlyAny) return "; straight up, for near stations, nothing changes";
  return `; straight up, for near stations, that is ${decibels(Math.abs(near))} ${near > 0 ? "more" : "less"}`;
}

export const pathReason = (f: HeightFacts): string =>
  `${decibels(f.pathLoss)} lie between transmitter and antenna, whatever the height`;

export const heightReason = (f: HeightFacts): string =>
  `${plainNumber(100 * f.share, 0)} % of what the antenna takes leaves for the sky`;
