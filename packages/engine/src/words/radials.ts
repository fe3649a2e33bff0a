/** Headline, verdict and advice of `radials`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, swrText, wholeWatts } from "../quantity/format";
import { linked, said } from "./phrases";

/** Radials as they are or as they were tried. Watts are those that leave of the power that reaches the antenna now. */
export interface TriedFacts {
  readonly count: number;
  /** m */
  readonly length: number;
  /** m, or on the soil. */
  readonly lie: number | "on the soil";
  readonly watts: number;
  /** 0 to 1, of the power into the antenna. */
  readonly share: number;
  readonly resistance: number;
  readonly swrAtFeedPoint: number;
  readonly swrAtTransmitter: number;
  /** dBi at the elevation looked at. */
  readonly gain: number;
}

export interface RadialFacts {
  readonly verdict: Verdict;
  readonly now: TriedFacts;
  /** The earth that the antenna works against alone; null where it has radials. */
  readonly earthAlone: string | null;
  /** W into the antenna. */
  readonly into: number;
  readonly elevation: number;
  /** m */
  readonly wave: number;
  /** The same wire in the same place cut best, the present cut included; null without radials. */
  readonly sameWire: TriedFacts | null;
  readonly sameWirePoints: readonly TriedFacts[];
  readonly byCount: readonly TriedFacts[];
  readonly byLength: readonly TriedFacts[];
  /** The most that leaves with more radials of the same length, and the fewest that come near to it. */
  readonly most: TriedFacts;
  readonly enough: TriedFacts;
  /** The same wire at the other place at its best; null where it could not be worked out. */
  readonly otherwise: TriedFacts | null;
  readonly otherLie: number | "on the soil";
  readonly allRound: TriedFacts | null;
  readonly spread: number | null;
  readonly sector: boolean;
  /** dB between now and the best use of the same wire, the most by number, and the same wire at the other place. */
  readonly behindSameWire: number;
  readonly behindMost: number;
  readonly behindOtherwise: number;
}

/** dB up to which the verdict holds: against the best use of the same wire, and against more of them or the other place. Our rule. */
export const goodSameWire = 0.5;
export const workableSameWire = 1.5;
export const goodMost = 1.5;
export const workableMost = 3;

/** dB from which another cut of the same wire is told as worth the work; more wire has to bring more. Our rule. */
const worthCutting = goodSameWire;
const worthBuying = 0.5;
/** dB from which moving the whole antenna up or down is told as worth it. */
const worthMoving = 1;

/** "4 radials of 10 m", "1 radial of 8 m". */
export const radialsText = ({ count, length }: Pick<TriedFacts, "count" | "length">): string =>
  `${count} ${count === 1 ? "radial" : "radials"} of ${metres(length)}`;
/** "8 of 5 m". */
export const shortText = ({ count, length }: Pick<TriedFacts, "count" | "length">): string =>
  `${count} of ${metres(length)}`;
export const lieText = (lie: number | "on the soil"): string => (lie === "on the soil" ? lie : `${metres(lie)} up`);
/** Differences of watts, one decimal where they are few. */
const difference = (value: number): string => (value >= 9.95 ? wholeWatts(value) : `${plainNumber(value, 1)} W`);
const more = (f: RadialFacts, other: TriedFacts): string => difference(other.watts - f.now.watts);
export const gained = (from: TriedFacts, to: TriedFacts): number => 10 * Math.log10(to.share / from.share);

type Step = "cut" | "add" | "lengthen" | "move" | "keep";

/** What to do first. */
export function stepOf(f: RadialFacts): Step {
  if (f.behindSameWire >= worthCutting) return "cut";
  if (f.enough.count > f.now.count && gained(f.now, f.enough) >= worthBuying) return "add";
  if (longer(f)) return "lengthen";
  return f.otherwise && gained(f.now, f.otherwise) >= worthMoving ? "move" : "keep";
}

/** The shortest longer radials that bring something worth buying; null where none do. */
export const longer = (f: RadialFacts): TriedFacts | null =>
  f.byLength.find((t) => t.length > f.now.length && gained(f.now, t) >= worthBuying) ?? null;

/** "Cut the 4 of 10 m into 8 of 5 m". */
const recut = (f: RadialFacts, best: TriedFacts): string =>
  `${best.count > f.now.count ? "Cut" : "Join"} the ${shortText(f.now)} into ${shortText(best)}`;

export function radialHeadline(f: RadialFacts): Phrase[] {
  if (f.earthAlone !== null) return earthHeadline(f);
  const best = f.sameWire ?? f.now;
  switch (stepOf(f)) {
    case "cut":
      return [
        said(`As ${shortText(best)} the same wire sends `),
        linked(more(f, best), "wattsMoreFromSameWire"),
        said(" more."),
      ];
    case "add":
      return [
        said(`${f.now.lie === "on the soil" ? "Lay" : "Put up"} ${f.enough.count} radials, not ${f.now.count}: `),
        linked(more(f, f.enough), "wattsMoreFromMore"),
        said(" more leave."),
      ];
    case "lengthen":
      return [
        said(`Make the radials ${metres(longer(f)!.length)} long: `),
        linked(more(f, longer(f)!), "wattsMoreFromLonger"),
        said(" more leave."),
      ];
    case "move":
      return [
        said(
          `${f.otherLie === "on the soil" ? "Lay the wire on the soil" : `Raise the radials to ${metres(f.otherLie)}`}: `,
        ),
        linked(more(f, f.otherwise!), "wattsMoreFromMoving"),
        said(" more leave."),
      ];
    case "keep":
      return [
        said(`Keep the ${radialsText(f.now)}: `),
        linked(wholeWatts(f.now.watts), "radiatedPower"),
        said(" leave."),
      ];
  }
}

function earthHeadline(f: RadialFacts): Phrase[] {
  const add = f.enough;
  if (gained(f.now, add) < worthBuying)
    return [
      said("Radials would bring little: "),
      linked(wholeWatts(f.now.watts), "radiatedPower"),
      said(" leave now."),
    ];
  return [said(`Add ${radialsText(add)}: `), linked(more(f, add), "wattsMoreFromMore"), said(" more leave.")];
}

export function radialVerdict(f: RadialFacts): Phrase[] {
  const wire = f.earthAlone === null ? radialsText(f.now) : `${f.earthAlone} alone`;
  return [
    said(`With ${wire}, `),
    linked(wholeWatts(f.now.watts), "radiatedPower"),
    said(` of the ${wholeWatts(f.into)} in the antenna leave. `),
    ...otherPhrases(f),
    said(radialAdvice(f)),
  ];
}

/** What the other place would do with the same wire. */
function otherPhrases(f: RadialFacts): Phrase[] {
  if (!f.otherwise || stepOf(f) === "move") return [];
  const where = f.otherLie === "on the soil" ? "On the soil" : `Raised to ${metres(f.otherLie)}`;
  return [
    said(`${where}, the same wire would send `),
    linked(wholeWatts(f.otherwise.watts), "radiatedWithSameWireOtherwise"),
    said(` as ${shortText(f.otherwise)}. `),
  ];
}

/** SWR steps that are told. */
const noticed = 0.25;

/** "The SWR at the transmitter goes from 1.2 to 1.7: trim the antenna then." */
function swrWords(f: RadialFacts, to: TriedFacts): string {
  const [before, after] = [f.now.swrAtTransmitter, to.swrAtTransmitter];
  if (Math.abs(after - before) < noticed) return "";
  const act = after > before && after > 1.5 ? " Trim the antenna afterwards; do not put the loss back." : "";
  return ` The SWR at the transmitter goes from ${swrText(before)} to ${swrText(after)}.${act}`;
}

/** The one thing to do. */
export function radialAdvice(f: RadialFacts): string {
  if (f.earthAlone !== null)
    return `${gained(f.now, f.enough) < worthBuying ? "Leave it" : `Lay ${radialsText(f.enough)} around the foot, tied to ${f.earthAlone}`}.${swrWords(f, f.enough)}`;
  const best = f.sameWire ?? f.now;
  switch (stepOf(f)) {
    case "cut":
      return `${recut(f, best)}: the same wire, ${decibels(f.behindSameWire)} more.${swrWords(f, best)}`;
    case "add":
      return `Go to ${radialsText(f.enough)}: ${decibels(gained(f.now, f.enough))} more${beyondWords(f)}.${swrWords(f, f.enough)}`;
    case "lengthen":
      return `Make them ${metres(longer(f)!.length)} long: ${decibels(gained(f.now, longer(f)!))} more.${swrWords(f, longer(f)!)}`;
    case "move":
      return `${f.otherLie === "on the soil" ? "Bring the antenna down and lay" : `Raise the antenna's foot to ${metres(f.otherLie)} and put up`} ${shortText(f.otherwise!)}: ${decibels(gained(f.now, f.otherwise!))} more.${swrWords(f, f.otherwise!)}`;
    case "keep":
      return `Leave them: ${keepWords(f)}.`;
  }
}

const beyondWords = (f: RadialFacts): string =>
  f.most.count > f.enough.count
    ? `; ${f.most.count} would bring only ${difference(f.most.watts - f.enough.watts)} beyond that`
    : "";

function keepWords(f: RadialFacts): string {
  const brings = f.most.watts - f.now.watts;
  if (f.most.count > f.now.count && brings >= 0.05)
    return `${f.most.count} in place of ${f.now.count} would bring ${difference(brings)}`;
  return "none of the others that were tried sends more";
}

export const sameWireReason = (f: RadialFacts): string =>
  f.behindSameWire < 0.05
    ? "no other cut of the same wire sends more"
    : `${decibels(f.behindSameWire)} more would leave with the same wire as ${f.sameWire ? radialsText(f.sameWire) : "radials"}`;

export const mostReason = (f: RadialFacts): string =>
  f.behindMost < 0.05
    ? "no larger number of radials of this length that was tried sends more"
    : `${decibels(f.behindMost)} more would leave with ${radialsText(f.most)}`;

export const otherwiseReason = (f: RadialFacts): string =>
  `${decibels(f.behindOtherwise)} more would leave with the same wire ${lieText(f.otherLie)}`;

/** "42 Ω, of which 10 Ω send". */
export const ohmsSplit = (t: TriedFacts): string =>
  `${plainNumber(t.resistance, 0)} Ω, of which ${plainNumber(t.resistance * t.share, t.resistance * t.share < 9.95 ? 1 : 0)} Ω send`;

export const percentText = (share: number): string => `${fixedNumber(100 * share, 0)} %`;

/** Largest over smallest current from which the spread is told. Our rule. */
export const unequal = 1.3;

/** What few, or one-sided, radials do; "" where their currents are alike. */
export function spreadWords(f: RadialFacts): string {
  if (f.spread === null || (f.spread < unequal && !f.sector)) return "";
  const currents =
    f.spread >= unequal
      ? `the largest current is ${fixedNumber(f.spread, 1)} times the smallest`
      : "their currents are nearly alike";
  const round = f.allRound
    ? ` Spread all round, the same radials would send ${wholeWatts(f.allRound.watts)} in place of ${wholeWatts(f.now.watts)}.`
    : "";
  return `The radials do not share evenly: ${currents}. The pattern leans with them, and the outside of the line may join in.${round}`.replace(
    "The radials do not share evenly: their currents are nearly alike.",
    "The radials cover a part of the round only.",
  );
}
