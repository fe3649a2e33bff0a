/** Sentences of `band`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, fixedNumber, megahertz, plainNumber, swrText } from "../quantity/format";
import { linked, said } from "./phrases";

export interface BandFacts {
  readonly from: number;
  readonly to: number;
  readonly limit: number;
  readonly worst: number;
  readonly best: number;
  readonly share: number;
  /** Null with a tuner in the path: what the set sees is then the tuner's doing. */
  readonly verdict: Verdict | null;
  /** The lowest SWR lies at an end of the curve: it is lower still beyond it. */
  readonly lowestAtEdge: boolean;
  readonly lowestSwr: number;
  readonly lowestSwrFrequency: number;
  readonly resonantFrequency: number | null;
  readonly usableWidth: number;
  readonly usableOpen: boolean;
  /** Both ends of the path where their SWR differs most inside the wanted span. */
  readonly ends: { readonly frequency: number; readonly atAntenna: number; readonly atTransmitter: number };
  /** The path holds nothing but lines of about the rated impedance: a difference of its ends is loss and nothing else. */
  readonly onlyLoss: boolean;
  readonly matchedLoss: number | null;
  readonly tuner: { readonly name: string; readonly frequency: number; readonly impedance: string } | null;
}

/** "7.0 to 7.2 MHz": both ends with the same decimals. */
const span = (f: BandFacts): string => {
  const decimals = [f.from, f.to].map((x) => (plainNumber(x / 1e6, 3).split(".")[1] ?? "").length);
  const one = (x: number) => fixedNumber(x / 1e6, Math.max(...decimals));
  return `${one(f.from)} to ${one(f.to)} MHz`;
};

export function bandHeadline(f: BandFacts): Phrase[] {
  const who = f.tuner ? "Without the tuner the transmitter" : "The transmitter";
  if (swrText(f.best) === swrText(f.worst)) {
    return [said(`${who} sees SWR `), linked(swrText(f.worst), "worstSwrInBand"), said(` from ${span(f)}.`)];
  }
  return [
    said(`${who} sees SWR `),
    linked(swrText(f.best), "bestSwrInBand"),
    said(" to "),
    linked(swrText(f.worst), "worstSwrInBand"),
    said(` from ${span(f)}.`),
  ];
}

export function bandVerdict(f: BandFacts): Phrase[] {
  if (f.tuner) {
    return [
      said(`At ${megahertz(f.tuner.frequency)} the ${f.tuner.name} has to match `),
      linked(f.tuner.impedance, "impedanceToMatch"),
      said("; whether it can is not worked out yet."),
    ];
  }
  return [...widthPhrases(f), ...endsPhrases(f), said(bandAdvice(f))];
}

function widthPhrases(f: BandFacts): Phrase[] {
  const limit = plainNumber(f.limit, 1);
  if (f.usableWidth > 0) {
    const width = `${f.usableOpen ? "more than " : ""}${plainNumber(f.usableWidth / 1e3, 0)} kHz`;
    return [said(`SWR stays below ${limit} over `), linked(width, "usableWidth"), said(". ")];
  }
  if (f.lowestAtEdge) return [said(`SWR is nowhere below ${limit} here. `)];
  return [
    said(`SWR is nowhere below ${limit}; it is lowest, `),
    linked(swrText(f.lowestSwr), "lowestSwr"),
    said(`, at ${megahertz(f.lowestSwrFrequency)}. `),
  ];
}

function endsPhrases(f: BandFacts): Phrase[] {
  const { atAntenna, atTransmitter, frequency } = f.ends;
  if (!f.onlyLoss || atAntenna - atTransmitter < 0.15) return [];
  return [
    said(
      `The line flatters: the antenna is at ${swrText(atAntenna)} where the meter shows ${swrText(atTransmitter)}, at ${megahertz(frequency)}. `,
    ),
  ];
}

export function bandAdvice(f: BandFacts): string {
  if (f.matchedLoss !== null && f.matchedLoss >= 3)
    return "Much of this fine curve is loss: mend the line before the match.";
  if (f.verdict === "good") return "Leave it.";
  if (f.tuner) return "The tuner has to do the rest.";
  const middle = (f.from + f.to) / 2;
  const off = f.lowestSwrFrequency - middle;
  if (f.lowestSwr >= f.limit) return "No trimming brings it down: match it, or change height or line.";
  if (Math.abs(off) < 0.1 * (f.to - f.from))
    return "It sits in the middle of the band already; a tuner in the shack covers the edges at little cost.";
  return off > 0
    ? "A little longer wire moves the curve down to the middle of the band."
    : "A little shorter wire moves the curve up to the middle of the band; fold back before cutting.";
}

export function bandMistakenIdea(f: BandFacts): { idea: string; refutation: string } {
  const { atAntenna, atTransmitter, frequency } = f.ends;
  if (!f.onlyLoss) {
    return {
      idea: "“The SWR on the meter is the antenna's SWR.”",
      refutation: `At ${megahertz(frequency)} the shack shows ${swrText(atTransmitter)} and the feed point is at ${swrText(atAntenna)} on the same reference: what lies between changes the impedance. Only watts can be followed from one end to the other.`,
    };
  }
  if (
    f.resonantFrequency !== null &&
    Math.abs(f.resonantFrequency - f.lowestSwrFrequency) > 0.002 * f.resonantFrequency &&
    atAntenna - atTransmitter < 0.3
  ) {
    return {
      idea: "“Lowest SWR is where the antenna is resonant.”",
      refutation: `Here SWR is lowest at ${megahertz(f.lowestSwrFrequency)} and the antenna resonant at ${megahertz(f.resonantFrequency)}. The set cares for SWR; resonance is no virtue in itself.`,
    };
  }
  return {
    idea: "“A low reading in the shack means a good antenna.”",
    refutation: `At ${megahertz(frequency)} the antenna is at SWR ${swrText(atAntenna)} while the shack shows ${swrText(atTransmitter)}${f.matchedLoss === null ? "" : `: the line's ${decibels(f.matchedLoss)} make it look better`}. A worse line would make it look better still.`,
  };
}

export const bandReason = (f: BandFacts): string =>
  `SWR at the transmitter is below ${plainNumber(f.limit, 1)} over ${plainNumber(100 * f.share, 0)} % of the band`;
