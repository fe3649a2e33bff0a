/** Sentences of `build`: headline, verdict and advice. English. */
import type { Phrase } from "../answer/answer";
import { fixedNumber, ohms, plainNumber, significantNumber, watts, wholeWatts, withPrefix } from "../quantity/format";
import { linked, said } from "./phrases";

export interface BuildFacts {
  readonly designation: string;
  /** Hz, m, W. */
  readonly frequency: number;
  readonly length: number;
  readonly power: number;
  readonly powerThrough: number;
  /** dB/100 m. */
  readonly attenuation: number;
  /** Of the attenuation, 0 to 1, in the conductors: of the route that splits it. */
  readonly conductorShare: number;
  readonly splitByBuild: boolean;
  readonly z0: { readonly re: number; readonly im: number };
  /** At the lowest frequency shown, by the route that reaches it. */
  readonly lowest: { readonly frequency: number; readonly z0: { readonly re: number; readonly im: number } };
  readonly velocityFactor: { readonly value: number; readonly low: number; readonly high: number };
  readonly loopResistance: number | null;
  readonly sheet: SheetWords | null;
  readonly build: BuildWords | null;
  readonly cutOff: { readonly frequency: number; readonly usualEstimate: number } | null;
}

export interface SheetWords {
  /** Hz. */
  readonly from: number;
  readonly to: number;
  /** Relative. */
  readonly worstDeviation: number;
  readonly findings: readonly { readonly says: string; readonly suggestion: string | null }[];
  /** Loss of the highest point, dB/100 m, and its frequency: what the root rule starts from. */
  readonly top: { readonly frequency: number; readonly attenuation: number };
}

export interface BuildWords {
  readonly kind: "coaxial" | "parallel-wire" | "twisted pair" | "wire over plane" | "four-wire" | "shielded pair";
  /** dB/100 m, and over the sheet's, relative; null where there is no sheet. */
  readonly attenuation: number;
  readonly againstSheet: number | null;
  readonly impedance: number;
  /** Outer over inner diameter, or width over diameter, as measured with a caliper. */
  readonly ratio: number;
  /** Null where it does not fill all the field. */
  readonly permittivity: number | null;
  readonly insulation: string;
  /** Hz up to which a pair is followed; null for a coaxial line. */
  readonly pairsEnd: number | null;
}

export const per100 = (attenuation: number): string => `${significantNumber(attenuation, 2)} dB per 100 m`;
export const hertz = (frequency: number): string => withPrefix(frequency, "Hz", 4);
export const lengthSays = (metres: number): string => `${significantNumber(metres, 3)} m`;
const wordCount = (text: string): number => text.split(/\s+/).length;

/** Below a watt in milliwatts; one decimal where the line takes little. */
const through = (f: BuildFacts): string =>
  f.power < 0.95 ? withPrefix(f.powerThrough, "W", 3) : watts(f.powerThrough).replace(/\.0 W$/, " W");
const into = (f: BuildFacts): string => (f.power < 0.95 ? withPrefix(f.power, "W", 3) : wholeWatts(f.power));

/** A designation of many words is left to the verdict: a headline has twelve at most. */
export const buildHeadline = (f: BuildFacts): Phrase[] => {
  const name = wordCount(f.designation) > 3 ? "this line" : f.designation;
  return [
    said(`Of ${into(f)}, `),
    linked(through(f), "powerThrough"),
    said(` ${/^1 m?W$/.test(through(f)) ? "passes" : "pass"} ${lengthSays(f.length)} of ${name}.`),
  ];
};

export function buildVerdict(f: BuildFacts): Phrase[] {
  const share = f.conductorShare > 0.995 ? "all of it" : `${plainNumber(100 * f.conductorShare, 0)} % of it`;
  const by = f.splitByBuild ? " by its build" : "";
  return [
    said(`At ${hertz(f.frequency)}, matched, ${wordCount(f.designation) > 3 ? f.designation : "it"} takes `),
    linked(per100(f.attenuation), "attenuation"),
    said(`, ${share} in the metal${by}. Its impedance there is `),
    linked(ohms(f.z0), "characteristicImpedance"),
    said("; its waves run at "),
    linked(fixedNumber(f.velocityFactor.value, 3), "velocityFactor"),
    said(` of the speed of light. ${buildNext(f)}`),
  ];
}

/** Bounds of the velocity factor this close need no measurement for ordinary cuts: our rule. */
const closeEnough = 0.002;

export function buildNext(f: BuildFacts): string {
  const wrong = f.sheet?.findings[0];
  if (wrong) return wrong.suggestion === null ? `Check the data sheet: ${uncapital(wrong.says)}` : wrong.suggestion;
  if (f.sheet && f.frequency < 0.5 * f.sheet.from && f.build?.againstSheet === undefined) {
    return `Measure a length at ${hertz(f.frequency)}: the sheet begins at ${hertz(f.sheet.from)}, and thin foil or clad steel may take more below.`;
  }
  const { value, low, high } = f.velocityFactor;
  if (f.build !== null && f.build.pairsEnd !== null && f.build.kind !== "shielded pair") {
    return "Keep it dry and two or three of its widths away from metal: either changes these constants more than anything told here.";
  }
  const spread = (high - low) / 2 / value;
  return spread > closeEnough
    ? `Cut by measurement where an electrical length matters: the velocity factor is known within ${significantNumber(100 * spread, 1)} %.`
    : "Take these constants as they are; only connectors and age come on top.";
}

const uncapital = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const buildSettles = (f: BuildFacts): string | null =>
  f.velocityFactor.high > f.velocityFactor.low || f.sheet
    ? "Two sweeps of one piece, its far end open and shorted: the root of the product of both impedances is the characteristic impedance, the dips give the velocity factor, and half the return loss of the open piece is its loss."
    : null;

export const buildNotCovered = (f: BuildFacts): string[] => [
  ...(f.sheet ? ["Cable sold under this name that does not meet the sheet: measure what you have."] : []),
  ...(f.build !== null && f.build.pairsEnd !== null
    ? ["Metal, rain and dirt near the wires of a pair, and what it sends where it bends or stands unequally."]
    : ["Connectors, bends, crushed places and water inside."]),
  "Mismatch: all losses here are those of the line ended in its own impedance; `watts` works with the real one.",
];

export const buildCautions = (f: BuildFacts): string[] => [
  ...(f.build !== null && f.build.pairsEnd !== null && f.frequency > f.build.pairsEnd
    ? [
        `From ${hertz(f.build.pairsEnd)} on the wires stand more than a tenth of a wave apart: the pair sends, which is not in these numbers.`,
      ]
    : []),
  ...(f.sheet?.findings ?? []).map(({ says, suggestion }) => (suggestion === null ? says : `${says} ${suggestion}`)),
  ...(f.build?.againstSheet !== null && f.build !== null && Math.abs(f.build.againstSheet) > 0.15
    ? [
        `Sheet and build disagree by ${plainNumber(Math.abs(100 * f.build.againstSheet), 0)} % at ${hertz(f.frequency)}: more than the 15 % that a nominal sheet is taken for.`,
      ]
    : []),
];
