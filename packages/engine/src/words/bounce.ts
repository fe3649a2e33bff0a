/** Sentences of `bounce`. English. */
import type { Phrase } from "../answer/answer";
import { metres, ohms, plainNumber, significantNumber, wholeWatts, withPrefix } from "../quantity/format";
import { shareOut } from "../quantity/shareOut";
import { linked, said, theName } from "./phrases";

interface Impedance {
  readonly re: number;
  readonly im: number;
}

export interface BounceFacts {
  readonly signal: "carrier" | "step" | "pulse";
  readonly line: string;
  readonly designation: string;
  readonly length: number;
  readonly lengthTried: boolean;
  readonly frequency: number;
  readonly loadKind: "antenna" | "rest" | "tried" | "open" | "shorted";
  readonly load: Impedance | null;
  /** Seconds, one way. */
  readonly delay: number;
  readonly waves: number;
  readonly impedance: Impedance;
  readonly surgeImpedance: number;
  readonly source: number;
  readonly sourceAssumed: boolean;
  readonly echoes: number | null;
  /** Seconds until the film is settled at the load, null where it ends first; its last period against the phasor answer, relative. */
  readonly settling: { readonly time: number | null; readonly deviation: number } | null;
  /** W, net, once all is settled. */
  readonly powerIn: number;
  readonly powerOut: number;
  readonly firstWave: number;
  readonly forwardAtLoad: number;
  readonly reflectedAtLoad: number;
  readonly swrAtLoad: number;
  readonly reflectionAtLoad: number;
  readonly reflectionAtSource: number;
  readonly heat: number;
  readonly matchedHeat: number;
  readonly sources: readonly { readonly name: string; readonly echoes: number | null }[];
  /** Step and pulse: first echo as it is home, signed percent of the first wave, and ohm at the start before it and at the end of the film. */
  readonly home: {
    readonly share: number;
    readonly before: number | null;
    readonly after: number | null;
    /** Seconds of the film. */
    readonly filmed: number;
  } | null;
  readonly shows: "waves" | "sizes";
  readonly cut: boolean;
  readonly quality: number | null;
  readonly fitDeviation: number | null;
  readonly lossDeviation: number;
}

export const nanoseconds = (seconds: number): string => withPrefix(seconds, "s", 3);
export const echoesSay = (n: number): string => (n === 1 ? "1 echo" : `${n} echoes`);
const oneDecimal = (power: number): number => (power >= 20 ? 0 : power >= 0.95 ? 1 : 3);

/** "25 Ω", "25 − j10 Ω". */
export const ohmic = (z: Impedance): string =>
  z.im === 0 ? `${significantNumber(z.re, 3)} Ω` : ohms(z, z.re < 10 ? 1 : 0);

export function loadSays(f: BounceFacts): string {
  if (f.loadKind === "antenna") return "the antenna";
  if (f.loadKind === "rest") return "the rest of the path";
  if (f.loadKind === "open") return "an open end";
  return f.loadKind === "shorted" ? "a short" : ohmic(f.load!);
}

/** Watts out of the line and into heat that add up to what goes in. */
export function toldWatts(f: BounceFacts): { into: string; out: string; heat: string } {
  const decimals = oneDecimal(f.powerIn);
  const [out, heat] = shareOut([f.powerOut, f.heat], f.powerIn, decimals);
  const told = (w: number): string => plainNumber(w, decimals);
  return { into: `${told(f.powerIn)} W`, out: told(out!), heat: `${told(heat!)} W` };
}

export function bounceVerdict(f: BounceFacts): Phrase[] {
  if (f.signal !== "carrier") return testVerdict(f);
  const walk = `One way along ${theName(f.line)} takes `;
  const both: Phrase[] = [said(walk), linked(nanoseconds(f.delay), "oneWayTime"), ...slowLoad(f), said(". ")];
  if (f.loadKind === "open" || f.loadKind === "shorted") {
    return [
      ...both,
      said("All that comes to the end goes back; what the source still gives, "),
      linked(wholeWatts(f.powerIn), "powerIntoLine"),
      said(`, warms the line. ${bounceNext(f)}`),
    ];
  }
  return [
    ...both,
    said("At its end "),
    linked(wholeWatts(f.forwardAtLoad), "forwardPowerAtLoad"),
    said(" stand for the wave that comes and "),
    linked(wholeWatts(f.reflectedAtLoad), "reflectedPowerAtLoad"),
    said(` for the one that goes back${notSimply(f)}; what passes is `),
    linked(wholeWatts(f.powerOut), "powerOutOfLine"),
    said(", and "),
    linked(toldWatts(f).heat, "heatInLine"),
    said(` ${plural(f.heat)} the line. ${bounceNext(f)}`),
  ];
}

/** Ways along the line beyond the last echo that counts, from which on, and a period to look at, the load is called slow. */
const patience = 2;

/** Seconds until the load is in swing, where that is later than its last echo that counts. */
export function swingTime({ settling, echoes, delay, frequency }: BounceFacts): number | null {
  const time = settling?.time ?? null;
  return time !== null && echoes !== null && time > (echoes + patience) * delay + 1 / frequency ? time : null;
}

function slowLoad(f: BounceFacts): Phrase[] {
  if (swingTime(f) === null || f.echoes === null || f.quality === null) return [];
  const load = f.loadKind === "antenna" ? "the antenna" : "what stands at its end";
  return [
    said("; "),
    linked(echoesSay(f.echoes), "echoesToSettle"),
    said(` ${f.echoes === 1 ? "counts" : "count"}, but ${load} comes into swing `),
    linked("more slowly", "loadQuality"),
    said(" than they fade"),
  ];
}

/** From here on, share of what passes, somebody who subtracts the two watts is told why it fails. */
const noticed = 0.02;

const notSimply = (f: BounceFacts): string =>
  Math.abs(f.forwardAtLoad - f.reflectedAtLoad - f.powerOut) > noticed * f.powerOut
    ? " (they do not simply subtract: the line's impedance is complex)"
    : "";

const plural = (watts: number): string => (watts === 1 ? "warms" : "warm");

function testVerdict(f: BounceFacts): Phrase[] {
  const first: Phrase[] = [
    said(
      "Until the first echo is home, the start of the line cannot know what stands at its end: it answers with its own ",
    ),
    linked(`${plainNumber(f.surgeImpedance, 1)} Ω`, "surgeImpedance"),
    said(", which is a ratio of the wave's volts and amperes and no heat. "),
  ];
  return [...first, said(bounceNext(f))];
}

export function bounceNext(f: BounceFacts): string {
  if (f.signal === "pulse") {
    return `To find where an echo comes from, count ${metres((5e-9 * f.length) / f.delay)} of this line for every 10 ns until it is home.`;
  }
  if (f.signal === "step") {
    return "A tester at direct current shows what comes after the last echo: the wire and whatever stands at its end.";
  }
  if (f.loadKind === "open" || f.loadKind === "shorted")
    return "Do not send into it: close the line before power is applied.";
  const added = f.heat - f.matchedHeat;
  if (added > 0.05 * f.powerIn) {
    return `The mismatch adds ${wholeWatts(added)} of heat in this line: match at its far end, or take a line with less loss.`;
  }
  return `Judge by what passes, not by what comes back: the mismatch costs ${costSays(added)} in this line.`;
}

const costSays = (watts: number): string => (watts < 0.05 ? "almost nothing" : wholeWatts(watts));
