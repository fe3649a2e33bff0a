/** Sentences of `watts`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, plainNumber, swrText, watts, wholeWatts } from "../quantity/format";
import { linked, listed, said } from "./phrases";
import { asSUnits } from "./sUnits";

/** One thing that takes power: its name in the sentence, its watts, the value it links to. */
export interface Taker {
  readonly kind: "soil" | "line" | "part" | "wires";
  readonly name: string;
  /** Takes a verb in the plural. */
  readonly several: boolean;
  readonly watts: number;
  /** The same, rounded so that sentence and headline add up. */
  readonly rounded: number;
  readonly value: string;
}

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
  readonly addedByMismatch: number;
  readonly heatInLines: number;
  /** The antenna works against radials. */
  readonly onRadials: boolean;
  readonly tuner: { readonly name: string; readonly impedance: string } | null;
}

const whole = (x: number): string => wholeWatts(x);

export function wattsHeadline(f: WattsFacts): Phrase[] {
  const sky = linked(whole(f.radiatedRounded), "radiatedPower");
  if (f.delivered < 0.995 * f.rated) {
    return [
      said(`Of ${whole(f.rated)}, the transmitter gives `),
      linked(whole(f.delivered), "powerFromTransmitter"),
      said("; "),
      sky,
      said(" leave for the sky."),
    ];
  }
  return [said(`Of ${whole(f.rated)}, `), sky, said(" leave for the sky.")];
}

export function wattsVerdict(f: WattsFacts): Phrase[] {
  const told = f.takers.filter((t) => t.rounded >= Math.max(0.5, 0.005 * f.rated));
  const task = f.tuner
    ? [said(` ${capital(f.tuner.name)} has to match `), linked(f.tuner.impedance, "impedanceToMatch"), said(".")]
    : [];
  const advice = said(` ${wattsAdvice(f)}`);
  if (told.length === 0) return [said("Nearly all of it leaves."), ...task, advice];
  const items = told.map((t, i) => [
    said(i === 0 ? `${capital(t.name)} ${t.several ? "take" : "takes"} ` : `${t.name} `),
    linked(whole(t.rounded), t.value),
  ]);
  return [...listed(items), said(`: ${items.length > 1 ? "together " : ""}${asSUnits(f.totalLoss)}.`), ...task, advice];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The one thing to do, also when that is nothing. */
export function wattsAdvice(f: WattsFacts): string {
  if (f.delivered < 0.9 * f.rated) return "Match the line: the transmitter turns itself down at this SWR.";
  const largest = [...f.takers].sort((a, b) => b.watts - a.watts)[0];
  if (!largest || f.totalLoss < 1.7) return "Leave line and match alone.";
  if (largest.kind === "line" && f.addedByMismatch > 0.5 * f.heatInLines)
    return "Bring the match to the antenna, or use a line that bears this SWR.";
  if (largest.kind === "line")
    return "A line of lower loss, or a shorter one, is where most can be won, on receiving too.";
  if (largest.kind === "soil")
    return f.onRadials
      ? "Look at the radials first: the soil takes most."
      : "Ask how high it should hang: the soil takes most.";
  if (largest.kind === "wires") return "Look at wire and coils first: they take most.";
  return `Look at ${largest.name} first.`;
}

export function wattsMistakenIdea(f: WattsFacts): { idea: string; refutation: string } {
  if (f.tuner) {
    const added =
      f.addedByMismatch > 0.05 ? `, ${watts(f.addedByMismatch)} of that because of the mismatch behind the tuner` : "";
    return {
      idea: "“With the tuner the SWR is 1, so nothing is lost.”",
      refutation: `The tuner matches the set, not the line: behind it the lines still take ${watts(f.heatInLines)}${added}.`,
    };
  }
  const rho2 = ((f.swrAtTransmitter - 1) / (f.swrAtTransmitter + 1)) ** 2;
  if (f.swrAtTransmitter < 1.2) {
    return {
      idea: "“My SWR is low, so my power gets out.”",
      refutation: `SWR ${swrText(f.swrAtTransmitter)} here, and still ${watts(f.delivered - f.radiated)} of ${watts(f.delivered)} turn into heat. SWR says nothing about where the watts go.`,
    };
  }
  const share = `${plainNumber(100 * rho2, 0)} %`;
  const mismatch =
    f.addedByMismatch > 0.05
      ? `Here the mismatch costs ${watts(f.addedByMismatch)}: the line takes ${watts(f.heatInLines)}, and would take ${watts(f.heatInLines - f.addedByMismatch)} at SWR 1.`
      : `Here the mismatch adds nothing to the heat of the line (${watts(f.heatInLines)}).`;
  return {
    idea: `“SWR ${swrText(f.swrAtTransmitter)} throws ${share} of my power back, and it is lost.”`,
    refutation: `What comes back is sent out again. ${mismatch}`,
  };
}

export const wattsReason = (f: WattsFacts): string =>
  `${decibels(f.totalLoss)} lie between the transmitter's rated power and the sky`;
