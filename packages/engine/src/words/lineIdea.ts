/** The mistaken idea that `line` corrects, its reasons, cautions and what it leaves out. English. */
import { decibels, metres, plainNumber, significantNumber, swrText, watts, wholeWatts } from "../quantity/format";
import { sharePhrase } from "./line";
import { type ByLength, type LineFacts, onBand, troubleFrom, worthBuying } from "./lineFacts";
import type { Idea } from "./wattsIdea";

export function lineMistakenIdea(f: LineFacts): Idea {
  if (f.coaxial) return pairIdea(f, f.coaxial.watts, f.coaxial.name);
  if (f.byLength) return lengthIdea(f.byLength);
  return {
    idea: "“A better line is always worth its money.”",
    refutation: `All of this line's heat is ${watts(f.delivered - f.present.watts)} of ${watts(f.delivered)}: no line brings more than ${decibels(f.present.loss)}.`,
  };
}

function lengthIdea(b: ByLength): Idea {
  const reads = b.behindTuner ? "the tuner" : "the set";
  const down =
    b.leastDelivered < 0.95 * b.ratedPower
      ? `; what it costs is the set, which gives only ${wholeWatts(b.leastDelivered)} of ${wholeWatts(b.ratedPower)} at the worst of them`
      : "";
  return {
    idea: "“A line of the wrong impedance throws power away, or always gives 1.5.”",
    refutation: `By its length alone ${b.present ? "this" : "a"} line of ${b.name} shows ${reads} anything from ${swrText(b.low)} to ${swrText(b.high)} (${swrText(b.onRatedLow)} to ${swrText(b.onRatedHigh)} if the antenna were exactly ${plainNumber(b.rated, 0)} Ω). The mismatch adds at most ${decibels(b.mostAdded)} of heat in it at any of these lengths${down}.`,
  };
}

function pairIdea(f: LineFacts, coaxialWatts: number, name: string): Idea {
  const idea = "“A pair line must have the impedance of the antenna, for a high SWR eats the power.”";
  const here = `SWR on this line is ${swrText(f.swrOnLine)}${onBand(f)}, and it takes ${watts(f.heat)} of ${watts(f.delivered)}`;
  const { quietest } = f;
  if (coaxialWatts < f.present.watts)
    return {
      idea,
      refutation: `${here}. With ${name} in its place ${wholeWatts(coaxialWatts)} would reach the antenna, not ${wholeWatts(f.present.watts)}.`,
    };
  const there = quietest
    ? `; on ${quietest.band} it is ${swrText(quietest.swrOnLine)}, and it takes ${watts(quietest.heat)}`
    : "";
  return { idea, refutation: `${here}${there}: loss and length decide, not SWR alone.` };
}

/** A limit as the end of "that at which ...". */
const limitWords = (says: string): string => (says === "its published working voltage" ? "it is rated" : says);

export interface Reason {
  readonly says: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly source: string;
}

export function lineReasons(f: LineFacts): Reason[] {
  const { best, worth, present } = f;
  const gained = Math.max(0, (worth ?? best)?.gained ?? 0);
  const reasons: Reason[] = [
    {
      says: best
        ? `${worth ? `the least line that is worth it, ${worth.name}` : `even the best that would stand there, ${best.name}`}, brings ${decibels(gained)} more${onBand(f)}`
        : "no other line would stand there as it is",
      value: gained,
      limit: gained > troubleFrom ? troubleFrom : worthBuying,
      unit: "dB",
      source:
        "our rule: below 1 dB a change of line is not heard, from 3 dB, half an S-unit, the line is the thing to mend",
    },
  ];
  if (present.voltageShare !== null)
    reasons.push({
      says: `the highest voltage along it is ${sharePhrase(present.voltageShare)} that at which ${limitWords(present.voltageSays)}`,
      value: 100 * present.voltageShare,
      limit: 100,
      unit: "%",
      source: "peak voltage at peak envelope power, against the published voltage, else the least that its build gives",
    });
  if (present.powerMargin !== null)
    reasons.push({
      says: `it would bear ${significantNumber(present.powerMargin, 2)} times this mean power`,
      value: present.powerMargin,
      limit: 1,
      unit: "times",
      source: "steady heat balance in the manner of IEC 60287, sending without end at the mean of `duty`",
    });
  return reasons;
}

export interface LeftOut {
  /** Lines that could not be worked out. */
  readonly lines: readonly string[];
  /** How many of the lines shown have no published value. */
  readonly noVoltage: number;
  readonly noMargin: number;
  readonly noWeight: number;
  readonly noPrice: number;
  readonly shown: number;
  readonly outsideKept: boolean;
  readonly pairs: boolean;
}

export function lineNotCovered(l: LeftOut): string[] {
  const missing = (count: number, what: string): string[] =>
    count === 0
      ? []
      : [
          `${count === l.shown ? "All" : `${count}`} of the ${l.shown} lines ${count === 1 ? "has" : "have"} no ${what} here: shown as not known, and ranked last by it.`,
        ];
  return [
    ...(l.outsideKept
      ? [
          "A jacket of another diameter: the outside of the line stands in this antenna's model and is kept as it is with the present line.",
        ]
      : []),
    ...(l.lines.length === 0 ? [] : [`Lines that cannot be worked out at these frequencies: ${l.lines.join("; ")}.`]),
    ...missing(l.noVoltage, "known voltage"),
    ...missing(l.noMargin, "known build, from which their heat would follow,"),
    ...missing(l.noWeight, "published weight"),
    ...missing(l.noPrice, "price in the file"),
    ...(l.pairs
      ? [
          "Rain, dirt, ice and metal near pair lines: they are taken as dry and alone; a wet pair in a web takes several times as much (handbooks).",
        ]
      : []),
    "What connectors stand and bear, and heat by turns of sending and pause.",
    "Noise that the line picks up on its outside, and lightning far away.",
  ];
}

/** Lengths of a line in a sentence: "9.3 m (9 to 9.6 m)". */
export const lengthText = (length: number, low: number, high: number): string =>
  high - low < 0.005 ? metres(length) : `${metres(length)} (${metres(low)} to ${metres(high)})`;

/** Of lines that were looked at. Common practice, no source. */
export function lineCautions(of: { readonly drop: boolean; readonly pairs: boolean }): string[] {
  return [
    ...(of.drop
      ? [
          "Drop cable has an aluminium foil and a hard inner conductor: it takes crimped plugs of its own kind, no solder, and water creeps in where they are not sealed (common practice, no source).",
        ]
      : []),
    ...(of.pairs
      ? [
          "Pair lines carry high voltage within reach: keep them off walls, metal and people, and give them an arrestor where they enter the house (common practice, no source).",
        ]
      : []),
  ];
}
