/** Sentences of `height`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, swrText, watts, wholeWatts } from "../quantity/format";
import { linked, said } from "./phrases";

interface PointFacts {
  readonly height: number;
  readonly radiatedPower: number;
  readonly swrAtTransmitter: number;
  readonly gainLow: number;
  readonly gainHigh: number;
  readonly maximumGain: number;
  readonly elevationOfMaximum: number;
  readonly heatInSoil: number;
}

export interface HeightFacts {
  readonly present: PointFacts;
  readonly share: number;
  readonly verdict: Verdict;
  readonly lowestSwr: PointFacts;
  /** The next height worth asking about: about 0.06 wave up. */
  readonly higher: PointFacts;
  readonly most: PointFacts;
  readonly split: number | null;
  readonly zenithIsNull: boolean;
  readonly aim: { readonly elevation: number; readonly azimuth: number };
  readonly wave: number;
  readonly delivered: number;
}

const up = (f: HeightFacts): string => `${plainNumber(f.aim.elevation, 0)}° up`;

export function heightHeadline(f: HeightFacts): Phrase[] {
  const more = f.higher.gainLow - f.present.gainLow;
  const start = [
    said(`At ${metres(f.present.height)}, `),
    linked(wholeWatts(f.present.radiatedPower), "radiatedPower"),
    said(" leave for the sky; "),
  ];
  const step = plainNumber(f.higher.height - f.present.height, 1);
  if (f.higher.height <= f.present.height || Math.abs(more) < 0.15)
    return [...start, said("more height changes little.")];
  return [
    ...start,
    said(`${step} m more ${more > 0 ? "add" : "take"} `),
    linked(decibels(Math.abs(more)), "gainOfMoreHeight"),
    said(` ${up(f)}.`),
  ];
}

export function heightVerdict(f: HeightFacts): Phrase[] {
  const soil = [
    said("The soil takes "),
    linked(wholeWatts(f.present.heatInSoil), "heatInSoil"),
    said(`; the antenna is strongest `),
    linked(`${plainNumber(f.present.elevationOfMaximum, 0)}°`, "elevationOfMaximum"),
    said(" up. "),
  ];
  const fewer = f.present.radiatedPower - f.lowestSwr.radiatedPower;
  const tempting =
    isTempting(f) && fewer > 0.01 * f.delivered
      ? [
          said(
            `SWR would be lowest at ${metres(f.lowestSwr.height)}, and ${wholeWatts(fewer)} fewer would leave there. `,
          ),
        ]
      : [];
  return [...soil, ...tempting, said(heightAdvice(f))];
}

/** Another height shows a clearly lower SWR: what people are tempted to choose. */
const isTempting = (f: HeightFacts): boolean => f.present.swrAtTransmitter - f.lowestSwr.swrAtTransmitter > 0.1;

export function heightAdvice(f: HeightFacts): string {
  if (f.verdict === "trouble") return "Hang it higher: the soil takes most of what it is given.";
  const more = f.higher.gainLow - f.present.gainLow;
  if (more > 1) return "Go higher for far stations; for near ones leave it.";
  if (more > 0.15) return "A little more height helps far stations a little.";
  return "Leave it at this height.";
}

export function heightMistakenIdea(f: HeightFacts): { idea: string; refutation: string } {
  const fewer = f.present.radiatedPower - f.lowestSwr.radiatedPower;
  if (f.verdict === "trouble") {
    return {
      idea: "“A good match makes up for height.”",
      refutation: `SWR ${swrText(f.present.swrAtTransmitter)} at the set, and still ${watts(f.present.heatInSoil)} of ${watts(f.delivered)} warm the soil at ${metres(f.present.height)}; at ${metres(f.most.height)} it would be ${watts(f.most.heatInSoil)}.`,
    };
  }
  if (isTempting(f) && fewer > 0.02 * f.delivered) {
    return {
      idea: "“The best height is the one with the lowest SWR.”",
      refutation: `At ${metres(f.lowestSwr.height)} the SWR is lowest, ${swrText(f.lowestSwr.swrAtTransmitter)}, and ${watts(f.lowestSwr.radiatedPower)} leave for the sky; at ${metres(f.present.height)} it is ${swrText(f.present.swrAtTransmitter)}, and ${watts(f.present.radiatedPower)} leave.`,
    };
  }
  if (f.present.height < 0.5 * f.wave) {
    return {
      idea: "“Below half a wave up it does not work.”",
      refutation: `${metres(f.present.height)} are ${fixedNumber(f.present.height / f.wave, 2)} of a wave, and ${watts(f.present.radiatedPower)} of ${watts(f.delivered)} leave for the sky, strongest ${plainNumber(f.present.elevationOfMaximum, 0)}° up.`,
    };
  }
  return {
    idea: "“Every metre more is heard.”",
    refutation: `${plainNumber(f.higher.height - f.present.height, 1)} m more change the gain ${up(f)} by ${decibels(f.higher.gainLow - f.present.gainLow)} here; an S-unit is 6 dB.`,
  };
}

export const heightReason = (f: HeightFacts): string =>
  `${plainNumber(100 * f.share, 0)} % of what the antenna takes leaves for the sky`;
