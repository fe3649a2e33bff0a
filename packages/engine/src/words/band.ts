/** Headline, verdict and advice of `band`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { fixedNumber, megahertz, plainNumber, swrText } from "../quantity/format";
import { asking } from "./asking";
import { capital, linked, said, theName } from "./phrases";

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
  readonly usableFrom: number | null;
  readonly usableTo: number | null;
  readonly usableOpen: boolean;
  /** Both ends of the path where their SWR differs most inside the wanted span. */
  readonly ends: { readonly frequency: number; readonly atAntenna: number; readonly atTransmitter: number };
  /** The path holds nothing but lines of about the rated impedance: a difference of its ends is loss and nothing else. */
  readonly onlyLoss: boolean;
  /** Parts other than lines take nothing either: the loss is the line's alone. */
  readonly onlyLines: boolean;
  readonly matchedLoss: number | null;
  /** So much of the power is heat in path and wires that a low SWR is no good news. */
  readonly flattered: boolean;
  /** Rated load of the transmitter, ohm: the reference of every SWR. */
  readonly rated: number;
  /** dB in the lines where the SWR at the transmitter is lowest and highest inside the wanted span. */
  readonly lineLossAtBest: number;
  readonly lineLossAtWorst: number;
  /** What is made longer or shorter to move the curve. */
  readonly trimmed: Trimmed;
  /** What the outside of the line does: lowest SWR with the chokes as they are less that with a perfect one, Hz; null where it is not in the model. */
  readonly outsideShift: number | null;
  readonly tuner: {
    readonly name: string;
    readonly frequency: number;
    readonly impedance: string;
    /** A line lies between it and the antenna. */
    readonly lineBehind: boolean;
  } | null;
}

export type Trimmed = "wire" | "vertical" | "loop" | "driven element" | "antenna" | "capacitor";

/** "7.0 to 7.2 MHz": both ends with the same decimals. */
const span = (f: BandFacts): string => {
  const decimals = [f.from, f.to].map((x) => (plainNumber(x / 1e6, 3).split(".")[1] ?? "").length);
  const one = (x: number) => fixedNumber(x / 1e6, Math.max(...decimals));
  return `${one(f.from)} to ${one(f.to)} MHz`;
};

/** In a headline an SWR has one decimal, as on a meter. */
const oneDecimal = (swr: number): string => (swr < 1.195 ? fixedNumber(swr, 1) : swrText(swr));

export function bandHeadline(f: BandFacts): Phrase[] {
  const who = f.tuner ? "Without the tuner: SWR " : "The transmitter sees SWR ";
  const [best, worst] = [oneDecimal(f.best), oneDecimal(f.worst)];
  const start = best === worst ? [] : [linked(best, "bestSwrInBand"), said(" to ")];
  return [said(who), ...start, linked(worst, "worstSwrInBand"), said(` from ${span(f)}.`)];
}

export function bandVerdict(f: BandFacts): Phrase[] {
  if (f.tuner) {
    return [
      said(`At ${megahertz(f.tuner.frequency)} ${theName(f.tuner.name)} has to match `),
      linked(f.tuner.impedance, "impedanceToMatch"),
      said(`; whether it can is not worked out yet. ${bandAdvice(f)}`),
    ];
  }
  return [...widthPhrases(f), ...endsPhrases(f), ...outsidePhrases(f), said(bandAdvice(f))];
}

/** "301 kHz", "10.6 MHz". */
const widthText = (hertz: number): string =>
  hertz < 999.5e3 ? `${plainNumber(hertz / 1e3, 0)} kHz` : `${plainNumber(hertz / 1e6, 1)} MHz`;

function widthPhrases(f: BandFacts): Phrase[] {
  const limit = plainNumber(f.limit, 1);
  if (f.usableWidth > 0) {
    const width = linked(`${f.usableOpen ? "more than " : ""}${widthText(f.usableWidth)}`, "usableWidth");
    if (f.share >= 1) return [said(`SWR stays below ${limit} over the whole band, `), width, said(" in all. ")];
    // Two stretches below the limit: the one with the lowest SWR lies outside of the band.
    if (f.share > 0 && !meetsBand(f))
      return [said(`SWR is below ${limit} over ${plainNumber(100 * f.share, 0)} % of the band. `)];
    return [said(`SWR is below ${limit} ${place(f)}, over `), width, said(". ")];
  }
  if (f.lowestAtEdge) return [said(`SWR is nowhere below ${limit} here. `)];
  return [
    said(`SWR is nowhere below ${limit}; it is lowest, `),
    linked(swrText(f.lowestSwr), "lowestSwr"),
    said(`, at ${megahertz(f.lowestSwrFrequency, 2)}. `),
  ];
}

const meetsBand = (f: BandFacts): boolean =>
  (f.usableFrom === null || f.usableFrom < f.to) && (f.usableTo === null || f.usableTo > f.from);

/** Where the usable stretch lies, as seen from the band. */
function place(f: BandFacts): string {
  const [low, high] = [f.usableFrom, f.usableTo].map((x) => (x === null ? null : megahertz(x, 2)));
  if (f.share <= 0) {
    if (f.usableFrom !== null && f.usableFrom >= f.to) return `only above the band, from ${low} up`;
    if (f.usableTo !== null && f.usableTo <= f.from) return `only below the band, up to ${high}`;
  }
  const below = f.usableFrom === null || f.usableFrom <= f.from;
  const above = f.usableTo === null || f.usableTo >= f.to;
  if (below && above) return "over most of the band";
  if (below) return `up to ${high}`;
  return above ? `from ${low} up` : `from ${low?.replace(/ MHz$/, "")} to ${high} only`;
}

/** Smallest difference of SWR between shack and antenna that is told. */
export const flatters = 0.15;

function endsPhrases(f: BandFacts): Phrase[] {
  const { atAntenna, atTransmitter, frequency } = f.ends;
  if (!f.onlyLoss || atAntenna - atTransmitter < flatters) return [];
  return [
    said(
      `The line flatters: at ${megahertz(frequency, 2)} the antenna is at ${swrText(atAntenna)} where the meter shows ${swrText(atTransmitter)}. `,
    ),
  ];
}

/** Share of the frequency by which the outside of the line must move the lowest SWR to be told: our rule. */
const noticeable = 0.002;

function outsidePhrases({ outsideShift, lowestSwrFrequency }: BandFacts): Phrase[] {
  if (outsideShift === null || Math.abs(outsideShift) < noticeable * lowestSwrFrequency) return [];
  return [
    said("The outside of the line moves the lowest SWR "),
    linked(`${outsideShift > 0 ? "up" : "down"} by ${widthText(Math.abs(outsideShift))}`, "outsideShift"),
    said(`: ${asking("outside")} tells why. `),
  ];
}

export function bandAdvice(f: BandFacts): string {
  if (f.tuner)
    return `Tune at low power; where no match is found, ${f.tuner.lineBehind ? "a line some metres" : "a wire somewhat"} longer or shorter changes what the tuner meets.`;
  if (f.flattered) return "Much of this fine curve is loss: ask “Where does my power go?” before you trust it.";
  if (f.verdict === "good") return "Leave it.";
  if (f.trimmed === "capacitor")
    return `The curve is that of one setting of its capacitor: retune as you move; one setting covers ${widthText(f.usableWidth)}.`;
  const middle = (f.from + f.to) / 2;
  const off = f.lowestSwrFrequency - middle;
  if (f.lowestSwr >= f.limit && !f.lowestAtEdge)
    return `Trimming alone does not bring it below ${plainNumber(f.limit, 1)}: match it, or change height or line.`;
  if (Math.abs(off) < 0.1 * (f.to - f.from)) return middleAdvice(f);
  return `${trimAdvice(f, off > 0)}.${howMuch(f)}`;
}

/** Where the whole of what is cut is one piece, `trim` tells how much. */
function howMuch(f: BandFacts): string {
  if (f.trimmed !== "antenna") return ` Ask ${asking("trim")} for how much.`;
  return f.onlyLoss ? "" : " Change little and measure again: what lies between shifts the curve too.";
}

function middleAdvice(f: BandFacts): string {
  const cost =
    f.lineLossAtWorst > 0 ? `; at SWR ${swrText(f.worst)} the line takes ${fixedNumber(f.lineLossAtWorst, 1)} dB` : "";
  return `It sits in the middle of the band already: a tuner in the shack covers the edges${cost}.`;
}

const longer: Readonly<Record<Trimmed, string>> = {
  wire: "a little longer wire",
  vertical: "a little longer vertical",
  loop: "a little more wire in the loop",
  "driven element": "a little longer driven element",
  antenna: "a little more length in the antenna",
  capacitor: "a little more capacitance",
};
const shorter: Readonly<Record<Trimmed, string>> = {
  wire: "a little shorter wire",
  vertical: "a little shorter vertical",
  loop: "a little less wire in the loop",
  "driven element": "a little shorter driven element",
  antenna: "a little less length in the antenna",
  capacitor: "a little less capacitance",
};

function trimAdvice(f: BandFacts, down: boolean): string {
  const change = capital((down ? longer : shorter)[f.trimmed]);
  const fold = !down && (f.trimmed === "wire" || f.trimmed === "antenna") ? "; fold back before cutting" : "";
  if (f.lowestAtEdge) return `${change} moves the curve ${down ? "down" : "up"} towards the band${fold}`;
  return `${change} moves the curve ${down ? "down" : "up"} to the middle of the band${fold}`;
}

export const bandReason = (f: BandFacts): string =>
  `SWR at the transmitter is below ${plainNumber(f.limit, 1)} over ${plainNumber(100 * f.share, 0)} % of the band`;
