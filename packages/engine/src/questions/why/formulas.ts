/** Formulas of `why` by the shape of the line, in the notation of docs/conventions.md. */
import type { StudyPoint } from "../../lines/study/studyPoint";
import { fixedNumber, significantNumber, withPrefix } from "../../quantity/format";

/** "26.6 kV" for a formula. */
export const typeset = (value: number, unit: string): string =>
  withPrefix(value, unit, 3).replace(/ (.*)$/, " \\; \\mathrm{$1}");

/** A result in ohm. */
export const ohm = (value: number): { value: number; unit: string } => ({ value, unit: "ohm" });

const root = (permittivity: number): string => `\\sqrt{${significantNumber(permittivity, 4)}}`;
const ohms = (value: number): string => `${fixedNumber(value, 1)} \\; \\Omega`;
const millimetres = (metres: number): string => `${significantNumber(1000 * metres, 4)} \\; \\mathrm{mm}`;

export const impedanceTexts = {
  coaxial: {
    sizes: "the diameters D and d",
    ratio: "D/d",
    formula: "Z_0 = \\frac{\\eta_0}{2\\pi\\sqrt{\\varepsilon_r}} \\ln x",
    substituted: (permittivity: number, ratio: number, impedance: number): string =>
      `Z_0 = \\frac{59.96}{${root(permittivity)}} \\ln ${fixedNumber(ratio, 3)} = ${ohms(impedance)}`,
  },
  pair: {
    sizes: "the spacing D between centres and the diameter d of the wires",
    ratio: "D/d",
    formula: "Z_0 = \\frac{\\eta_0}{\\pi\\sqrt{\\varepsilon_r}} \\operatorname{arcosh}(x)",
    substituted: (permittivity: number, ratio: number, impedance: number): string =>
      `Z_0 = \\frac{119.9}{${root(permittivity)}} \\operatorname{arcosh}(${fixedNumber(ratio, 3)}) = ${ohms(impedance)}`,
  },
} as const;

export const lossTexts = {
  coaxial: {
    says: (inner: string, outer: string): string =>
      `Conductor loss for a fixed D, ${inner} inside and ${outer} outside (r: ratio of their surface resistances), ` +
      "has its least where its slope is zero. The loss of the insulation does not depend on x.",
    formula: "\\alpha \\propto \\frac{x + r}{\\ln x}, \\quad \\ln x = 1 + \\frac{r}{x}",
    substituted: (r: number, ratio: number): string => `r = ${fixedNumber(r, 3)}: \\; x = ${fixedNumber(ratio, 4)}`,
    source: "stationary point, solved to rounding; e.g. Chipman, Transmission Lines (Schaum, 1968)",
  },
  pair: {
    says: (inner: string): string =>
      `Conductor loss of two ${inner} wires for a fixed spacing, their crowded currents included, has its least where its slope is zero.`,
    formula:
      "\\alpha \\propto \\frac{x^2}{\\sqrt{x^2 - 1} \\operatorname{arcosh}(x)}, \\quad \\operatorname{arcosh}(x) = \\frac{x \\sqrt{x^2 - 1}}{x^2 - 2}",
    substituted: (_: number, ratio: number): string => `x = ${fixedNumber(ratio, 4)}`,
    source: "field of two line charges; stationary point, solved to rounding",
  },
} as const;

export const voltageTexts = {
  coaxial: {
    formula: "\\hat{V} = E \\frac{d}{2} \\ln x",
    substituted: (field: number, { innerSize, ratio, peakVoltage }: StudyPoint): string =>
      `\\hat{V} = ${typeset(field, "V/m")} \\times ${millimetres(innerSize / 2)} \\times \\ln ${fixedNumber(ratio, 3)} = ${typeset(peakVoltage, "V")}`,
    optimum: "elementary; for a fixed D greatest where ln x = 1",
  },
  pair: {
    formula: "\\hat{V} = E d \\operatorname{arcosh}(x) \\sqrt{\\frac{x - 1}{x + 1}}",
    substituted: (field: number, { innerSize, ratio, peakVoltage }: StudyPoint): string =>
      `\\hat{V} = ${typeset(field, "V/m")} \\times ${millimetres(innerSize)} \\times \\operatorname{arcosh}(${fixedNumber(ratio, 3)}) \\sqrt{\\frac{${fixedNumber(ratio - 1, 3)}}{${fixedNumber(ratio + 1, 3)}}} = ${typeset(peakVoltage, "V")}`,
    optimum: "field of two line charges; for a fixed spacing greatest where its slope is zero",
  },
} as const;

export const powerTexts = {
  formula: "P = \\frac{\\hat{V}^2}{2 Z_0}",
  optimum: {
    coaxial: "elementary; for a fixed D greatest where ln x = 1/2",
    pair: "for a fixed spacing greatest where its slope is zero",
  },
} as const;
