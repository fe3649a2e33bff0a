/** Sentences of `why`. English. */
import type { Phrase, RuleOfThumb } from "../answer/answer";
import { plainNumber, withPrefix } from "../quantity/format";
import { capital, linked, said } from "./phrases";

export interface WhyStanding {
  readonly impedance: number;
  /** Percent over the least attenuation, and of the most power. */
  readonly extraAttenuation: number;
  readonly powerShare: number;
}

export interface WhyFacts {
  readonly shape: "coaxial" | "pair";
  readonly dielectric: string;
  /** A permittivity that was asked for, whatever material stands behind it; null where none was. */
  readonly askedPermittivity: number | null;
  readonly held: "size" | "weight" | "cost";
  /** Ohm; null where there is no best. */
  readonly attenuationOptimum: number | null;
  readonly voltageOptimum: number | null;
  readonly powerOptimum: number | null;
  readonly heatOptimum: number | null;
  /** Ohm between which the attenuation stays within a tenth of its least. */
  readonly flat: { readonly from: number; readonly to: number } | null;
  /** Least conductor loss with air between the same conductors; coaxial lines of one size only. */
  readonly optimumInAir: number | null;
  readonly means: { readonly arithmetic: number; readonly geometric: number } | null;
  /** Two at least, in rising order. */
  readonly standards: readonly WhyStanding[];
  /** V/m. */
  readonly breakdown: number;
  readonly frequency: number;
}

const ohm = (value: number): string => `${plainNumber(value, 0)} Ω`;
/** Percent with at most one decimal; "almost nothing" for less than a tenth. */
const more = (value: number): string =>
  value < 0.05 ? "almost nothing" : `${plainNumber(value, value < 9.95 ? 1 : 0)} %`;

const share = (percent: number): string => (percent < 1 ? "under 1 %" : `${plainNumber(percent, 0)} %`);

/** "Cable" is left out beside a name of two words: a headline has twelve at most. */
function subject(f: WhyFacts): string {
  if (f.shape === "pair") return f.dielectric === "air" ? "An open pair" : `A pair in ${f.dielectric}`;
  return `${capital(f.dielectric)}${f.dielectric.includes(" ") ? "" : " cable"}`;
}

export function whyHeadline(f: WhyFacts): Phrase[] {
  const [first] = f.standards;
  const asked = f.askedPermittivity;
  if (f.attenuationOptimum === null || !first) {
    return [said(`${asked === null ? subject(f) : "This line"} has no impedance of least loss between those studied.`)];
  }
  const best = linked(`${plainNumber(f.attenuationOptimum, 1)} Ω`, "attenuationOptimumAtFrequency");
  return [
    ...(asked === null
      ? [said(`${subject(f)} warms least at `), best]
      : [said(`At permittivity ${asked}, `), best, said(" warms least")]),
    said(`; ${first.impedance} Ω adds `),
    linked(more(first.extraAttenuation), `extraAttenuationAt${first.impedance}`),
    said("."),
  ];
}

const heldSays: Readonly<Record<WhyFacts["held"], string>> = {
  size: "At equal size",
  weight: "At equal weight",
  cost: "At equal cost of its materials",
};

export function whyVerdict(f: WhyFacts): Phrase[] {
  const [first, second] = f.standards;
  if (f.voltageOptimum === null || f.powerOptimum === null || !first || !second) return [said(whyNext(f))];
  const at = (name: string, standing: WhyStanding): string => `${name}At${standing.impedance}`;
  return [
    said(`${heldSays[f.held]} it bears the highest voltage at `),
    linked(ohm(f.voltageOptimum), "voltageOptimum"),
    said(f.heatOptimum === null ? " and the most peak power at " : ", the most peak power at "),
    linked(ohm(f.powerOptimum), "powerOptimum"),
    ...(f.heatOptimum === null
      ? []
      : [said(" and, before it is too warm, the most mean power at "), linked(ohm(f.heatOptimum), "heatOptimum")]),
    said(`. ${first.impedance} Ω bears `),
    linked(share(first.powerShare), at("peakPowerShare", first)),
    said(` of that peak power and ${second.impedance} Ω `),
    linked(share(second.powerShare), at("peakPowerShare", second)),
    said(`; ${second.impedance} Ω adds `),
    linked(more(second.extraAttenuation), at("extraAttenuation", second)),
    said(` to the attenuation. ${whyNext(f)}`),
  ];
}

/** Below this a difference of attenuation between 50 and 75 ohm cannot be heard on any usual length: our rule. */
const hardlyMatters = 15;

export function whyNext(f: WhyFacts): string {
  if (f.shape === "pair") {
    return "Wires of a pair are chosen for the room between them, not for least loss: thick wires well apart warm little at any of these impedances.";
  }
  const [first, second] = f.standards;
  const worst = Math.max(first?.extraAttenuation ?? 0, second?.extraAttenuation ?? 0);
  if (worst <= hardlyMatters) return "Take the impedance your transmitter and plugs are made for.";
  const kinder = (first?.extraAttenuation ?? 0) < (second?.extraAttenuation ?? 0) ? first : second;
  return `${heldSays[f.held]} ${kinder?.impedance} Ω warms less; the transmitter and the plugs still decide.`;
}

export function whyMistakenIdea(f: WhyFacts): { idea: string; refutation: string } | null {
  if (f.shape === "pair") {
    const [narrow, wide] = [f.standards[0], f.standards.at(-1)];
    if (!(narrow && wide) || f.attenuationOptimum === null) return null;
    return {
      idea: "“A higher impedance always loses less.”",
      refutation:
        `Only while the wires stay as they are. At one spacing more ohms mean thinner wires: they warm least at ${ohm(f.attenuationOptimum)}, ` +
        `${narrow.impedance} Ω adds ${more(narrow.extraAttenuation)}, ${wide.impedance} Ω ${more(wide.extraAttenuation)}.`,
    };
  }
  if (f.attenuationOptimum === null || f.powerOptimum === null) return null;
  const here = `${plainNumber(f.attenuationOptimum, 1)} Ω with ${f.dielectric}`;
  const least =
    f.optimumInAir === null
      ? `${heldSays[f.held].toLowerCase()} cable warms least at ${here}`
      : `this size of cable warms least at ${f.dielectric === "air" ? here : `${ohm(f.optimumInAir)} with air and at ${here}`}`;
  return {
    idea: "“The transmitter has 50 Ω inside, so cable must have 50 Ω.”",
    refutation:
      "50 Ω is what it is made to feed, not what it has inside, and no law of nature: " +
      `${least}, and bears most peak power at ${ohm(f.powerOptimum)}.`,
  };
}

export function whyRules(f: WhyFacts): RuleOfThumb[] {
  if (f.shape === "pair" || f.held !== "size" || f.attenuationOptimum === null || f.means === null) return [];
  return [
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
      computed: `${plainNumber(f.means.geometric, 1)} Ω (geometric) to ${plainNumber(f.means.arithmetic, 1)} Ω (arithmetic) with ${f.dielectric}`,
      holds: "air only; the stories of how 50 Ω was chosen contradict each other, and the physics does not need them",
      source: "common practice, no source",
    },
  ];
}

export const whyCautions = (f: WhyFacts): string[] => [
  `Peak voltage and power here are where the insulation itself fails (${withPrefix(f.breakdown, "V/m", 3)}), far above what a cable and its plugs bear: stay below the working voltage on the cable's sheet.`,
  "Mean power here warms the conductors to all that the insulation bears, matched and in still shade: hot to the touch. Ask “limits” of your own line.",
];

export const whyNotCovered = (f: WhyFacts): string[] => [
  "Strands, braid and rough surfaces: both conductors are taken smooth and solid, except where a value says as built.",
  "Short impulses, corona, gaps and voids, altitude and ageing: no derating of the breakdown field.",
  ...(f.shape === "pair"
    ? ["Radiation of the pair, spreaders, rain and metal near by, which are what keeps a pair from being very wide."]
    : ["Why a dipole near 70 Ω is fed with 50 Ω: that is a matter of its height, and of what a mismatch costs."]),
  ...(f.heatOptimum === null ? ["Power limited by heat: it is not known how this insulation carries heat."] : []),
];
