/** The mistaken idea that `trim` corrects: the one that this station's own numbers refute. English. */
import { decibels, megahertz, plainNumber, significantNumber, swrText, watts } from "../quantity/format";
import { metres3, type TrimFacts } from "./trim";

export interface LineFacts {
  readonly line: string;
  readonly length: number;
  /** Hz. */
  readonly atFeedPoint: number;
  readonly inShack: number | null;
  readonly zeroShift: number | null;
  readonly dipShift: number | null;
}

/** A rule of length with its value here, m. */
export interface LengthRule {
  readonly rule: string;
  readonly length: number;
}

interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** Smallest differences that are told: of a frequency and of a length, as shares. */
const apart = 0.002;
const off = 0.005;

export function trimMistakenIdea(f: TrimFacts, line: LineFacts | null, rule: LengthRule | null): Idea {
  const shack = line && line.inShack !== null && Math.abs(line.inShack / line.atFeedPoint - 1) > apart ? line : null;
  const formula = rule && f.target !== null && Math.abs(rule.length / f.target - 1) > off ? rule : null;
  if (shack && (f.measured || !formula)) return shackIdea(shack, shack.inShack!);
  if (formula) return formulaIdea(f.target!, formula);
  return resonantIdea(f);
}

const kilohertz = (hertz: number): string => `${significantNumber(Math.abs(hertz) / 1e3, 2)} kHz`;

function shackIdea(f: LineFacts, inShack: number): Idea {
  const moved =
    f.zeroShift === null || f.dipShift === null
      ? ""
      : ` One metre more of ${f.line} moves X = 0 in the shack by ${kilohertz(f.zeroShift)}, and the lowest SWR by ${kilohertz(f.dipShift)}.`;
  return {
    idea: "“X = 0 in the shack is X = 0 at the wire.”",
    refutation: `With ${metres3(f.length)} the wire is resonant at ${megahertz(f.atFeedPoint)}, and the shack reads X = 0 nearest to that at ${megahertz(inShack)}.${moved}${trust(f)}`,
  };
}

/** The lowest SWR is worth trusting where the line shifts it much less than X = 0. */
const steady = 0.3;

function trust({ zeroShift, dipShift }: LineFacts): string {
  if (zeroShift === null || dipShift === null) return " Trim by the lowest SWR.";
  return Math.abs(dipShift) < steady * Math.abs(zeroShift)
    ? " Trim by the lowest SWR."
    : " Here the line shifts both: sweep at the feed point, or measure the line first.";
}

function formulaIdea(target: number, rule: LengthRule): Idea {
  const by = (rule.length / target - 1) * 100;
  return {
    idea: "“One formula gives the length anywhere.”",
    refutation: `${rule.rule} gives ${metres3(rule.length)}. Here, with this wire at this height, the SWR is lowest with ${metres3(target)}: the formula is ${plainNumber(Math.abs(by), 1)} % too ${by > 0 ? "long" : "short"}.`,
  };
}

function resonantIdea(f: TrimFacts): Idea {
  const idea = "“A resonant antenna is an efficient one.”";
  if (f.resonance === null || f.wattsResonant === null)
    return {
      idea,
      refutation: `This one is not resonant (X = 0) at any length near ${metres3(f.present)}, and ${watts(f.wattsNow)} reach it all the same.`,
    };
  if (f.target === null || Math.abs(f.target / f.resonance - 1) < apart)
    return quietIdea(idea, f, f.resonance, f.wattsResonant);
  const best =
    f.target === null || f.wattsBest === null
      ? `as it is, with ${metres3(f.present)}, ${watts(f.wattsNow)}`
      : `with ${metres3(f.target)}, where the SWR is lowest, ${watts(f.wattsBest)}`;
  return {
    idea,
    refutation: `Resonant, with ${metres3(f.resonance)}, the antenna takes ${watts(f.wattsResonant)} at SWR ${swrText(f.swrResonant)}; ${best}. Resonance is no virtue in itself.`,
  };
}

/** dB up to which nobody hears a difference. Our rule. */
const unheard = 1;

/** Where lowest SWR and X = 0 are one length: what being off it costs. */
function quietIdea(idea: string, f: TrimFacts, resonance: number, wattsResonant: number): Idea {
  const by = 10 * Math.log10(wattsResonant / f.wattsNow);
  const heard = Math.abs(by) < unheard ? "which nobody hears" : "which comes from the match, not from resonance";
  return {
    idea,
    refutation: `Resonant, with ${metres3(resonance)}, the antenna takes ${watts(wattsResonant)}; as it is, with ${metres3(f.present)}, ${watts(f.wattsNow)}. That is ${decibels(Math.abs(by))}, ${heard}.`,
  };
}
