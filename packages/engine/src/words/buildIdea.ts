/** Rules of thumb and the mistaken idea of `build`. English. */
import type { RuleOfThumb } from "../answer/answer";
import { fixedNumber, ohms, plainNumber, withPrefix } from "../quantity/format";
import { type BuildFacts, type BuildWords, hertz, lengthSays, per100 } from "./buildFacts";

const practice = "common practice, no source";

export const buildRules = (f: BuildFacts): RuleOfThumb[] => [
  ...rootRule(f),
  ...diameterRule(f),
  ...velocityRule(f),
  ...cutOffRule(f),
];

function rootRule(f: BuildFacts): RuleOfThumb[] {
  const top = f.sheet?.top;
  if (!top || top.frequency === f.frequency) return [];
  const ruled = top.attenuation * Math.sqrt(f.frequency / top.frequency);
  return [
    {
      rule: "attenuation goes with the root of frequency",
      ruleValue: `${per100(ruled)} from the ${hertz(top.frequency)} of its sheet`,
      computed: per100(f.attenuation),
      holds: "while conductors take nearly all and the skin depth is small; insulation grows with frequency itself",
      source: practice,
    },
  ];
}

/** Factor of lg, what it is applied to, and where it holds. */
const diameterRules = {
  coaxial: {
    factor: 138,
    times: 1,
    rule: "138 lg(D/d) over the root of the permittivity",
    holds: "smooth solid conductors at high frequency; strands count for 0.94 to 0.98 of their outer diameter",
    source: "elementary; eta0/(2 pi) ln 10 = 138.06 Ω",
  },
  "parallel-wire": {
    factor: 276,
    times: 2,
    rule: "276 lg(2D/d) over the root of the permittivity",
    holds: "wires more than about three diameters apart",
    source: "elementary; eta0/pi ln 10 = 276.1 Ω",
  },
  "wire over plane": {
    factor: 138,
    times: 2,
    rule: "138 lg(4h/d) over the root of the permittivity",
    holds: "a wire more than two diameters above the plane",
    source: "elementary; half of a pair with its image",
  },
} as const;

/** The rule of thumb for a line's impedance: its words, and ohms from caliper and permittivity; null where none is usual. */
export function impedanceRule(
  build: Pick<BuildWords, "kind" | "ratio" | "permittivity">,
): { readonly short: string; readonly ohms: number } | null {
  if (build.permittivity === null || !(build.kind in diameterRules)) return null;
  const { factor, times, rule } = diameterRules[build.kind as keyof typeof diameterRules];
  const short = rule.replace(/ over.*/, build.permittivity < 1.01 ? "" : "/√εr");
  return { short, ohms: (factor * Math.log10(times * build.ratio)) / Math.sqrt(build.permittivity) };
}

function diameterRule({ build, z0 }: BuildFacts): RuleOfThumb[] {
  const ruled = build === null ? null : impedanceRule(build);
  if (build === null || ruled === null) return [];
  const { rule, holds, source } = diameterRules[build.kind as keyof typeof diameterRules];
  return [
    {
      rule,
      holds,
      source,
      ruleValue: `${plainNumber(ruled.ohms, 1)} Ω`,
      computed: `${plainNumber(build.impedance, 1)} Ω by its build${build.againstSheet === null ? "" : `, ${plainNumber(z0.re, 1)} Ω by its sheet`}`,
    },
  ];
}

function velocityRule({ build, velocityFactor }: BuildFacts): RuleOfThumb[] {
  if (build === null || build.permittivity === null) return [];
  return [
    {
      rule: "velocity factor is one over the root of the permittivity",
      ruleValue: fixedNumber(1 / Math.sqrt(build.permittivity), 3),
      computed: fixedNumber(velocityFactor.value, 3),
      holds: "while inner inductance of the conductors is small: towards low frequency waves slow down",
      source: "elementary",
    },
  ];
}

function cutOffRule({ cutOff }: BuildFacts): RuleOfThumb[] {
  if (cutOff === null) return [];
  return [
    {
      rule: "a second mode comes when the mean circumference is a wave long",
      ruleValue: withPrefix(cutOff.usualEstimate, "Hz", 3),
      computed: withPrefix(cutOff.frequency, "Hz", 3),
      holds: "within 3 % for usual impedances; the true cut-off lies above it",
      source:
        "e.g. Pozar, Microwave Engineering, 4th ed. 2012, section 3.5 (not seen); exact: root of the Bessel cross-product",
    },
  ];
}

/** The ohm-meter where the resistance is known, else the root rule from the top of the sheet, else how Z0 is no constant. */
export function buildMistakenIdea(f: BuildFacts): { idea: string; refutation: string } {
  if (f.measured) {
    return {
      idea: "“The printed velocity factor is exact.”",
      refutation: `Your piece measures ${fixedNumber(f.measured.value, 3)}; what is known of this line says ${fixedNumber(f.measured.expected.value, 3)} at that frequency. It differs from reel to reel, and falls a little towards low frequency.`,
    };
  }
  if (f.loopResistance !== null) {
    const shorted = withPrefix(f.loopResistance * f.length, "Ω", 2);
    return {
      idea: "“An ohm-meter shows the impedance of a line.”",
      refutation: `On ${lengthSays(f.length)} of ${f.designation} it shows ${shorted} with the far end shorted, and no end with it open. ${plainNumber(f.z0.re, 0)} Ω is what a wave meets until its echo is back.`,
    };
  }
  const top = f.sheet?.top;
  if (top && top.frequency > 1.5 * f.frequency) {
    const ruled = top.attenuation * Math.sqrt(f.frequency / top.frequency);
    return {
      idea: "“Loss goes with the root of frequency, all the way down.”",
      refutation: `From ${hertz(top.frequency)} down to ${hertz(f.frequency)} the root gives ${per100(ruled)}; worked out it is ${per100(f.attenuation)}.`,
    };
  }
  return {
    idea: "“The impedance of a line is one number.”",
    refutation: `It is ${ohms(f.z0)} at ${hertz(f.frequency)} and ${ohms(f.lowest.z0, 0)} at ${hertz(f.lowest.frequency)}.`,
  };
}
