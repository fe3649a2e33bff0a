/** How the impedance of least loss was found. */
import type { WorkingStep } from "../../answer/answer";
import { significantNumber, withPrefix } from "../../quantity/format";
import { impedanceTexts, lossTexts, ohm } from "./formulas";
import type { WhyResult } from "./result";

export function impedanceStep({ input, limit, standards }: WhyResult): WorkingStep {
  const { dielectric, shape } = input.study;
  const at = limit ?? standards[0]!;
  const texts = impedanceTexts[shape];
  return {
    text: `With ${dielectric.name} between them, ${texts.sizes} alone decide the impedance; x stands for ${texts.ratio}.`,
    formula: texts.formula,
    substituted: texts.substituted(dielectric.permittivity, at.ratio, at.impedance),
    source: `elementary; permittivity: ${input.dielectricSource}`,
    explains: ["attenuationOptimum", "attenuationOptimumRatio"],
  };
}

export function limitStep({ input, surfaceRatio, limit }: WhyResult): WorkingStep[] {
  if (limit === null) return [];
  const { inner, outer, shape } = input.study;
  const texts = lossTexts[shape];
  return [
    {
      text: texts.says(inner.name, outer.name),
      formula: texts.formula,
      substituted: texts.substituted(surfaceRatio, limit.ratio),
      result: ohm(limit.impedance),
      source: texts.source,
      explains: ["attenuationOptimum", "attenuationOptimumRatio"],
    },
  ];
}

/** What stays the same where the size does not. */
const heldSays = (result: WhyResult): string => {
  const { held } = result.input.study;
  if (held.by === "size") return "That holds in the limit of small skin depth.";
  return `At equal ${held.by} a line of another impedance has another size, so that its least loss has no closed form.`;
};

export function skinStep(result: WhyResult): WorkingStep[] {
  const { input, optima } = result;
  if (optima.attenuation === null) return [];
  const { point } = optima.attenuation;
  return [
    {
      text:
        `${heldSays(result)} At ${withPrefix(input.study.frequency, "Hz")}, skin depth and inner reactance as they are, ` +
        `the least attenuation is ${significantNumber(100 * point.attenuation, 3)} dB/100 m, at`,
      result: ohm(point.impedance),
      source:
        "telegrapher's equations, conductors after Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532; golden section",
      explains: ["attenuationOptimumAtFrequency", "leastAttenuation"],
    },
  ];
}

export function asBuiltStep({ asBuilt, input }: WhyResult): WorkingStep[] {
  if (asBuilt === null || input.line === null) return [];
  const { inner, outer } = input.line.build;
  return [
    {
      text:
        `Strands and braid of ${input.line.designation} raise the resistance ${significantNumber(inner.resistanceFactor, 3)} times inside and ` +
        `${significantNumber(outer.resistanceFactor, 3)} times outside. A worse outer conductor asks for a thinner inner one:`,
      formula: "r' = r \\, \\frac{k_{\\mathrm{outer}}}{k_{\\mathrm{inner}}}",
      result: ohm(asBuilt),
      source:
        "factors of the build: field round strands, and wires of a braid that keep their current (derived, no source)",
      explains: ["attenuationOptimumAsBuilt"],
    },
  ];
}
