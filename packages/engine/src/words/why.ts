/** Sentences of `why`. English. */
import type { FigureListing, Phrase, RuleOfThumb } from "../answer/answer";
import { plainNumber, withPrefix } from "../quantity/format";
import { linked, said } from "./phrases";

export interface WhyFacts {
  readonly dielectric: string;
  /** Ohm. */
  readonly attenuationOptimum: number;
  /** The same conductors with air between them. */
  readonly optimumInAir: number;
  readonly voltageOptimum: number;
  readonly powerOptimum: number;
  readonly arithmeticMean: number;
  readonly geometricMean: number;
  /** At 50 and 75 ohm, percent. */
  readonly at50: { readonly extraAttenuation: number; readonly powerShare: number };
  readonly at75: { readonly extraAttenuation: number; readonly powerShare: number };
  /** V/m. */
  readonly breakdown: number;
  readonly frequency: number;
  readonly outerSize: number;
}

const ohm = (value: number): string => `${plainNumber(value, 0)} Ω`;
/** Percent with at most one decimal; "almost nothing" for less than a tenth. */
const more = (value: number): string => (value < 0.05 ? "almost nothing" : `${plainNumber(value, 1)} %`);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Cable" is left out beside a name of two words: a headline has twelve at most. */
export const whyHeadline = (f: WhyFacts): Phrase[] => [
  said(`${capital(f.dielectric)}${f.dielectric.includes(" ") ? "" : " cable"} warms least at `),
  linked(`${plainNumber(f.attenuationOptimum, 1)} Ω`, "attenuationOptimumAtFrequency"),
  said("; 50 Ω adds "),
  linked(more(f.at50.extraAttenuation), "extraAttenuationAt50"),
  said("."),
];

export const whyVerdict = (f: WhyFacts): Phrase[] => [
  said("At equal size it bears the highest voltage at "),
  linked(ohm(f.voltageOptimum), "voltageOptimum"),
  said(" and the most power at "),
  linked(ohm(f.powerOptimum), "powerOptimum"),
  said(". 50 Ω bears "),
  linked(`${plainNumber(f.at50.powerShare, 0)} %`, "peakPowerShareAt50"),
  said(" of that power and 75 Ω "),
  linked(`${plainNumber(f.at75.powerShare, 0)} %`, "peakPowerShareAt75"),
  said("; 75 Ω adds "),
  linked(more(f.at75.extraAttenuation), "extraAttenuationAt75"),
  said(` to the attenuation. ${whyNext(f)}`),
];

/** Below this a difference of attenuation between 50 and 75 ohm cannot be heard on any usual length: our rule. */
const hardlyMatters = 15;

export function whyNext(f: WhyFacts): string {
  const worst = Math.max(f.at50.extraAttenuation, f.at75.extraAttenuation);
  if (worst <= hardlyMatters) return "Take the impedance your transmitter and plugs are made for.";
  const kinder = f.at50.extraAttenuation < f.at75.extraAttenuation ? 50 : 75;
  return `At equal outer size ${kinder} Ω warms less; the transmitter and the plugs still decide.`;
}

export function whyMistakenIdea(f: WhyFacts): { idea: string; refutation: string } {
  const filled = f.dielectric === "air" ? "" : ` and at ${plainNumber(f.attenuationOptimum, 1)} Ω with ${f.dielectric}`;
  return {
    idea: "“The transmitter has 50 Ω inside, so cable must have 50 Ω.”",
    refutation:
      "50 Ω is what it is made to feed, not what it has inside, and no law of nature: this size of cable warms least " +
      `at ${ohm(f.optimumInAir)} with air${filled}, and bears most power at ${ohm(f.powerOptimum)}.`,
  };
}

export const whyRules = (f: WhyFacts): RuleOfThumb[] => [
  {
    rule: "coaxial line warms least at 77 Ω",
    ruleValue: "77 Ω",
    computed: `${plainNumber(f.attenuationOptimum, 1)} Ω with ${f.dielectric}`,
    holds: "air between smooth conductors of one metal; D/d = 3.59 is what stays, filling moves the impedance",
    source: "Chipman, Transmission Lines (Schaum, 1968); published, confirmed in a summary of that book",
  },
  {
    rule: "50 Ω is the mean of 30 Ω for power and 77 Ω for loss",
    ruleValue: "48 Ω to 54 Ω",
    computed: `${plainNumber(f.geometricMean, 1)} Ω (geometric) to ${plainNumber(f.arithmeticMean, 1)} Ω (arithmetic) with ${f.dielectric}`,
    holds: "air only; the stories of how 50 Ω was chosen contradict each other, and the physics does not need them",
    source: "common practice, no source",
  },
];

export const whyFigure = (f: WhyFacts): FigureListing => ({
  name: "impedanceCompromise",
  title: `Least attenuation at ${ohm(f.attenuationOptimum)}, most voltage at ${ohm(f.voltageOptimum)}, most power at ${ohm(f.powerOptimum)}`,
  description:
    `Attenuation, peak voltage and peak power against characteristic impedance from 10 to 150 Ω for ${f.dielectric} ` +
    `${plainNumber(1000 * f.outerSize, 2)} mm across at ${withPrefix(f.frequency, "Hz")}, each over its best value, with 50 and 75 Ω marked.`,
});

export const whyCautions = (f: WhyFacts): string[] => [
  `Peak voltage and power here are where the insulation itself fails (${withPrefix(f.breakdown, "V/m", 3)}), far above what a cable and its plugs bear: stay below the working voltage on the cable's sheet.`,
];

export const whyNotCovered: readonly string[] = [
  "Strands, braid and rough surfaces: both conductors are taken smooth and solid, except where a value says as built.",
  "Power limited by heat, which has its own best impedance.",
  "Short impulses, corona, gaps and voids, altitude and ageing: no derating of the breakdown field.",
  "Why a dipole near 70 Ω is fed with 50 Ω: that is a matter of its height, and of what a mismatch costs.",
  "Parallel-wire lines, where spacing and not a fixed outer size decides.",
];
