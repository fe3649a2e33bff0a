/** Headline, verdict and advice of `watts`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, plainNumber, swrText, watts, wholeWatts } from "../quantity/format";
import { asking } from "./asking";
import { capital, linked, listed, said, theName } from "./phrases";
import { asSUnits } from "./sUnits";

/** One thing that takes power: its name in the sentence, its watts, the value it links to. */
export interface Taker {
  readonly kind: "soil" | "line" | "part" | "wires" | "loads" | "chokes";
  readonly name: string;
  /** Takes a verb in the plural. */
  readonly several: boolean;
  readonly watts: number;
  /** The same, rounded so that sentence and headline add up. */
  readonly rounded: number;
  readonly value: string;
}

/** What the antenna works against, as far as advice depends on it. */
export type ReturnSide = "radials" | "nearby" | "line" | "itself";

export interface WattsFacts {
  readonly rated: number;
  readonly delivered: number;
  readonly radiated: number;
  readonly radiatedRounded: number;
  readonly takers: readonly Taker[];
  /** dB from rated power to radiated power. */
  readonly totalLoss: number;
  readonly verdict: Verdict;
  readonly swrAtTransmitter: number;
  readonly swrAtFeedPoint: number;
  readonly addedByMismatch: number;
  readonly heatInLines: number;
  readonly returnSide: ReturnSide;
  /** "coils", "resistor": the loads of the antenna. */
  readonly loads: string;
  readonly tuner: {
    readonly name: string;
    readonly impedance: string;
    /** Lines between the tuner and the antenna: their heat, the mismatch's share of it, the highest SWR on one of them. */
    readonly behind: { readonly heat: number; readonly added: number; readonly swr: number } | null;
  } | null;
}

/** The transmitter turns itself down by more than rounding. */
export const turnsDown = (f: WattsFacts): boolean => f.delivered < 0.995 * f.rated;

/** Below a watt in milliwatts, else whole watts with at most one decimal where they are few. */
function told(f: WattsFacts, x: number): string {
  return f.rated < 0.95 ? `${plainNumber(1000 * x, 0)} mW` : wholeWatts(x);
}

const leave = (text: string): string => (/^1 m?W$/.test(text) ? "leaves" : "leave");

export function wattsHeadline(f: WattsFacts): Phrase[] {
  const radiated = told(f, f.radiatedRounded);
  const sky = linked(radiated, "radiatedPower");
  const leaving = said(` ${leave(radiated)} for the sky.`);
  if (turnsDown(f)) {
    const given = linked(told(f, f.delivered), "powerFromTransmitter");
    return [said("The transmitter gives only "), given, said("; "), sky, leaving];
  }
  return [said(`Of ${told(f, f.rated)}, `), sky, leaving];
}

/** Smallest share of the rated power that the sentence names. */
const leastTold = 0.005;

export function wattsVerdict(f: WattsFacts): Phrase[] {
  const task = f.tuner
    ? [
        said(` ${capital(theName(f.tuner.name))} has to match `),
        linked(f.tuner.impedance, "impedanceToMatch"),
        said("."),
      ]
    : [];
  const advice = said(` ${wattsAdvice(f)}`);
  const takers = f.takers.filter((t) => t.rounded >= leastTold * f.rated);
  const items = [
    ...(turnsDown(f)
      ? [[said("the transmitter holds back "), linked(told(f, f.rated - f.delivered), "powerFromTransmitter")]]
      : []),
    ...takers.map((t, i) => [said(takes(t, i === 0)), linked(told(f, t.rounded), t.value)]),
  ];
  const [first, ...rest] = listed(items);
  if (!first) return [said("Nearly all of it leaves."), ...task, advice];
  const together = `: ${items.length > 1 ? "together " : ""}${asSUnits(f.totalLoss)}.`;
  return [said(capital(first.text)), ...rest, said(together), ...task, advice];
}

/** Later takers lean on the verb of the first: "the soil takes 18 W, the line 12 W", "connector 2 with 3 W". */
function takes(t: Taker, first: boolean): string {
  if (first) return `${t.name} ${t.several ? "take" : "takes"} `;
  return /\d$/.test(t.name) ? `${t.name} with ` : `${t.name} `;
}

/** dB up to which there is nothing to do: a quarter of an S-unit. Our rule. */
const leaveAlone = 1.7;

/** The one thing to do, also when that is nothing. */
export function wattsAdvice(f: WattsFacts): string {
  if (f.delivered < 0.9 * f.rated)
    return `Bring the SWR at the transmitter down first: at ${swrText(f.swrAtTransmitter)} it turns itself down.`;
  const largest = [...f.takers].sort((a, b) => b.watts - a.watts)[0];
  if (!largest || f.totalLoss < leaveAlone) return "Leave line and match alone.";
  switch (largest.kind) {
    case "line":
      return lineAdvice(f);
    case "soil":
      return soilAdvice(f.returnSide);
    case "wires":
      return "Look at the wire first: it takes most.";
    case "loads":
      return `Look at the ${f.loads} first: ${f.loads.endsWith("s") ? "they take" : "it takes"} most.`;
    case "chokes":
      return `Ask ${asking("outside")} next: chokes on it take most.`;
    case "part":
      return `Look at ${largest.name} first: ${largest.several ? "they take" : "it takes"} most.`;
  }
}

function lineAdvice(f: WattsFacts): string {
  if (f.addedByMismatch > 0.5 * f.heatInLines)
    return "Bring the match to the antenna, or use a line that bears this SWR.";
  const gained = 10 * Math.log10(f.delivered / (f.delivered - f.heatInLines));
  return `A shorter line or one of lower loss helps most: at best ${asSUnits(gained)}.`;
}

function soilAdvice(returnSide: ReturnSide): string {
  switch (returnSide) {
    case "radials":
      return `Ask ${asking("radials")} next: the soil takes most.`;
    case "nearby":
      return "The soil takes most: a higher wire or a longer return may help. Change it in the file and ask again.";
    case "line":
      return `The soil takes most, and the line is half of this antenna: ask ${asking("outside")} next.`;
    case "itself":
      return `Ask ${asking("height")} next: the soil takes most.`;
  }
}

export const wattsReason = (f: WattsFacts): string =>
  `${decibels(f.totalLoss)} lie between the transmitter's rated power and the sky`;

/** Watts as a refutation tells them: one decimal; milliwatts in a station of less than a watt. */
export const precisely = (f: WattsFacts, x: number): string => (f.rated < 0.95 ? told(f, x) : watts(x));
