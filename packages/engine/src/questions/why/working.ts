/** How the optima of `why` were found, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import type { StandardPoint, WhyResult } from "./result";

/** "26.6 kV" for a formula. */
const typeset = (value: number, unit: string): string =>
  withPrefix(value, unit, 3).replace(/ (.*)$/, " \\; \\mathrm{$1}");

const ohm = (value: number): { value: number; unit: string } => ({ value, unit: "ohm" });

export function whyWorking(result: WhyResult): WorkingStep[] {
  return [
    impedanceStep(result),
    attenuationStep(result),
    skinStep(result),
    ...asBuiltStep(result),
    voltageStep(result),
    powerStep(result),
    meanStep(result),
    ...result.standards.map((point) => standardStep(result, point)),
  ];
}

function impedanceStep({ input, attenuation }: WhyResult): WorkingStep {
  const { permittivity, name } = input.study.dielectric;
  return {
    text: `With ${name} between them, the diameters D and d alone decide the impedance; x stands for D/d.`,
    formula: "Z_0 = \\frac{\\eta_0}{2\\pi\\sqrt{\\varepsilon_r}} \\ln x",
    substituted: `Z_0 = \\frac{59.96}{\\sqrt{${significantNumber(permittivity, 4)}}} \\ln ${fixedNumber(attenuation.ratio, 3)} = ${fixedNumber(attenuation.impedance, 1)} \\; \\Omega`,
    source: `elementary; permittivity: ${input.dielectricSource}`,
    explains: ["attenuationOptimum", "attenuationOptimumRatio"],
  };
}

function attenuationStep({ input, surfaceRatio, attenuation }: WhyResult): WorkingStep {
  const { inner, outer } = input.study;
  return {
    text:
      `Conductor loss for a fixed D, ${inner.name} inside and ${outer.name} outside (r: ratio of their surface resistances), ` +
      "has its least where its slope is zero. The loss of the insulation does not depend on x.",
    formula: "\\alpha \\propto \\frac{x + r}{\\ln x}, \\quad \\ln x = 1 + \\frac{r}{x}",
    substituted: `r = ${fixedNumber(surfaceRatio, 3)}: \\; x = ${fixedNumber(attenuation.ratio, 4)}`,
    result: ohm(attenuation.impedance),
    source: "stationary point, solved to rounding; e.g. Chipman, Transmission Lines (Schaum, 1968)",
    explains: ["attenuationOptimum", "attenuationOptimumRatio"],
  };
}

function skinStep({ input, least }: WhyResult): WorkingStep {
  return {
    text:
      `That holds in the limit of small skin depth. At ${withPrefix(input.study.frequency, "Hz")}, skin depth and inner reactance as they are, ` +
      `the least attenuation is ${significantNumber(100 * least.attenuation, 3)} dB/100 m, at`,
    result: ohm(least.impedance),
    source: "telegrapher's equations, conductors after Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532; golden section",
    explains: ["attenuationOptimumAtFrequency", "leastAttenuation"],
  };
}

function asBuiltStep({ asBuilt, input }: WhyResult): WorkingStep[] {
  if (asBuilt === null || input.line === null) return [];
  const { inner, outer } = input.line.build;
  return [
    {
      text:
        `Strands and braid of ${input.line.designation} raise the resistance ${significantNumber(inner.resistanceFactor, 3)} times inside and ` +
        `${significantNumber(outer.resistanceFactor, 3)} times outside. A worse outer conductor asks for a thinner inner one:`,
      formula: "r' = r \\, \\frac{k_{\\mathrm{outer}}}{k_{\\mathrm{inner}}}",
      result: ohm(asBuilt),
      source: "factors of the build; for catalogue lines common practice, no source",
      explains: ["attenuationOptimumAsBuilt"],
    },
  ];
}

function voltageStep({ input, voltage }: WhyResult): WorkingStep {
  const { breakdown, outerSize } = input.study;
  return {
    text: `The field is strongest at the inner conductor and may not pass ${withPrefix(breakdown, "V/m", 3)}:`,
    formula: "\\hat{V} = E \\frac{D}{2} \\frac{\\ln x}{x}, \\quad \\ln x = 1",
    substituted: `\\hat{V} = ${typeset(breakdown, "V/m")} \\times ${significantNumber(500 * outerSize, 4)} \\; \\mathrm{mm} \\times \\frac{1}{e} = ${typeset(voltage.peakVoltage, "V")}`,
    result: ohm(voltage.impedance),
    source: `elementary; breakdown field: ${input.breakdownSource}`,
    explains: ["voltageOptimum", "greatestPeakVoltage"],
  };
}

function powerStep({ power }: WhyResult): WorkingStep {
  return {
    text: "Peak envelope power at that voltage, matched:",
    formula: "P = \\frac{\\hat{V}^2}{2 Z_0} \\propto \\frac{\\ln x}{x^2}, \\quad \\ln x = \\frac{1}{2}",
    substituted: `P = \\frac{(${typeset(power.peakVoltage, "V")})^2}{2 \\times ${fixedNumber(power.impedance, 1)} \\; \\Omega} = ${typeset(power.peakPower, "W")}`,
    result: ohm(power.impedance),
    source: "elementary",
    explains: ["powerOptimum", "greatestPeakPower"],
  };
}

function meanStep({ attenuation, power, arithmeticMean, geometricMean }: WhyResult): WorkingStep {
  const [a, p] = [fixedNumber(attenuation.impedance, 1), fixedNumber(power.impedance, 1)];
  return {
    text: "Between the best for loss and the best for power lie their means:",
    formula: "\\frac{Z_\\alpha + Z_P}{2}, \\quad \\sqrt{Z_\\alpha Z_P}",
    substituted: `\\frac{${a} + ${p}}{2} = ${fixedNumber(arithmeticMean, 1)}, \\quad \\sqrt{${a} \\times ${p}} = ${fixedNumber(geometricMean, 1)} \\; \\Omega`,
    source: "arithmetic; that 50 Ω was chosen this way is told without a source",
    explains: ["arithmeticMean", "geometricMean"],
  };
}

function standardStep({ least }: WhyResult, point: StandardPoint): WorkingStep {
  const z = point.impedance;
  return {
    text: `What ${z} Ω gives away: it bears ${plainNumber(point.voltageShare, 1)} % of the greatest voltage and ${plainNumber(point.powerShare, 1)} % of the greatest power. Conductors alone, in the limit of small skin depth, would add ${plainNumber(point.extraConductorLoss, 2)} %.`,
    formula: "\\frac{\\alpha}{\\alpha_{\\mathrm{least}}} - 1",
    substituted: `\\frac{${fixedNumber(100 * point.attenuation, 3)}}{${fixedNumber(100 * least.attenuation, 3)}} - 1 = ${fixedNumber(point.extraAttenuation, 2)} \\; \\%`,
    result: { value: point.extraAttenuation, unit: "%" },
    source: "exact attenuation of smooth conductors: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532",
    explains: [`attenuationAt${z}`, `extraAttenuationAt${z}`, `peakVoltageShareAt${z}`, `peakPowerShareAt${z}`],
  };
}
