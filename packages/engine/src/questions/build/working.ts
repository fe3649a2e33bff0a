/** How the constants of a line were found, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, ohms, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import { buildSteps } from "./buildSteps";
import { measuredStep } from "./dip";
import { sheetSteps } from "./sheetSteps";
import { type BuildResult, decibelsPerMetre } from "./study";
import { typeset } from "./typeset";

export const buildWorking = (result: BuildResult): WorkingStep[] => [
  ...sheetSteps(result),
  ...buildSteps(result),
  constantsStep(result),
  velocityStep(result),
  ...(result.measured ? [measuredStep(result.measured)] : []),
  lossStep(result),
  ...cutOffStep(result),
  ...resistanceStep(result),
  ...shieldStep(result),
  ...sendsStep(result),
  ...voltageSteps(result),
  ...ratedStep(result),
  ...sourceSteps(result),
];

function constantsStep({ main, input }: BuildResult): WorkingStep {
  const { z0, resistance, inductance, conductance, capacitance } = main.constants;
  return {
    text: `Resistance, inductance, conductance and capacitance per metre at ${withPrefix(input.frequency, "Hz")} give the characteristic impedance, always complex:`,
    formula: "Z_0 = \\sqrt{\\frac{R + j\\omega L}{G + j\\omega C}}",
    substituted: `R = ${typeset(resistance, "Ω/m")}, \\; L = ${typeset(inductance, "H/m")}, \\; G = ${typeset(conductance, "S/m")}, \\; C = ${typeset(capacitance, "F/m")}: \\; Z_0 = ${fixedNumber(z0.re, 2)} ${z0.im < 0 ? "-" : "+"} j\\,${fixedNumber(Math.abs(z0.im), 2)}\\; \\Omega`,
    source: "telegrapher's equations",
    explains: [
      ...["characteristicImpedance", "characteristicResistance", "characteristicReactance", "resistance"],
      ...["inductance", "conductance", "capacitance"],
    ],
  };
}

function velocityStep({ main, input }: BuildResult): WorkingStep {
  const { gamma, velocityFactor } = main.constants;
  const omega = 2 * Math.PI * input.frequency;
  return {
    text: "The imaginary part of the same root tells how fast waves run:",
    formula:
      "\\gamma = \\alpha + j\\beta = \\sqrt{(R + j\\omega L)(G + j\\omega C)}, \\quad v = \\frac{\\omega}{\\beta}",
    substituted: `\\frac{v}{c} = \\frac{${significantNumber(omega / 1e6, 4)} \\times 10^{6}}{${significantNumber(gamma.im, 4)} \\times 2.998 \\times 10^{8}} = ${fixedNumber(velocityFactor, 4)}, \\quad \\frac{\\beta}{\\omega} = ${typeset(gamma.im / omega, "s/m")}`,
    source: "telegrapher's equations",
    explains: ["velocityFactor", "delay", "wavelengthOnLine"],
  };
}

function lossStep({ main, input }: BuildResult): WorkingStep {
  const alpha = decibelsPerMetre(main.constants.gamma.re);
  const loss = (alpha + input.excess) * input.length;
  const over = input.excess > 0 ? ` + ${significantNumber(100 * input.excess, 3)} \\; (\\mathrm{over\\,new})` : "";
  return {
    text: `Its real part is the attenuation. ${significantNumber(input.length, 3)} m of the line, ended in its own impedance, let pass:`,
    formula: "P_2 = P_1 \\times 10^{-\\alpha \\ell / 10\\,\\mathrm{dB}}",
    substituted: `\\alpha = ${significantNumber(100 * alpha, 4)}${over} \\; \\mathrm{dB/100\\,m}, \\; \\alpha \\ell = ${significantNumber(loss, 3)} \\; \\mathrm{dB}: \\; P_2 = ${fixedNumber(input.power * 10 ** (-loss / 10), 2)} \\; \\mathrm{W}`,
    source: "telegrapher's equations; definition of the decibel",
    explains: ["attenuation", "attenuationOverNew", "lossOfLength", "powerThrough"],
  };
}

function cutOffStep({ cutOff }: BuildResult): WorkingStep[] {
  if (cutOff === null) return [];
  return [
    {
      text: "Above the cut-off of the TE11 mode a second wave can travel, and one set of constants no longer tells the line. The usual estimate asks for a mean circumference of one wave; the exact cut-off is the least root of the cross-product, a is the inner radius, x is D/d:",
      formula: "J_1'(u) Y_1'(u x) - J_1'(u x) Y_1'(u) = 0, \\quad f_c = \\frac{c u}{2\\pi a \\sqrt{\\varepsilon_r}}",
      substituted: `f_c = ${fixedNumber(cutOff.overEstimate, 4)} \\times ${typeset(cutOff.usualEstimate, "Hz", 4)} = ${typeset(cutOff.frequency, "Hz", 4)}`,
      source:
        "boundary values of the TE11 mode; e.g. Pozar, Microwave Engineering, 4th ed. 2012, section 3.5 (not seen)",
      explains: ["cutOff", "cutOffEstimate"],
    },
  ];
}

function resistanceStep({ direct, input }: BuildResult): WorkingStep[] {
  if (direct === null) return [];
  return [
    {
      text: "An ohm-meter with the far end shorted shows the direct-current resistance of both conductors together:",
      formula: "R = R' \\ell",
      substituted: `${typeset(direct.loop, "Ω/m")} \\times ${significantNumber(input.length, 3)}\\; \\mathrm{m} = ${typeset(direct.loop * input.length, "Ω")}`,
      source: direct.from === "sheet" ? "the line's data sheet" : "conductivity and cross-section of its conductors",
      explains: ["loopResistance", "loopResistanceOfLength"],
    },
  ];
}

function shieldStep({ leak, input }: BuildResult): WorkingStep[] {
  if (leak === null) return [];
  const dB = (x: number): string => `${plainNumber(x, 0)} dB`;
  const differ = Math.abs(leak.screening - leak.otherScreening) >= 0.5;
  const other = differ ? ` (another model of a braid's holes says ${dB(leak.otherScreening)})` : "";
  return [
    {
      text: `Through its shield the current inside drives a voltage outside, per metre the transfer impedance. Against an outside of 150 Ω the power inside is ${dB(leak.screening)} above the most that gets out, whatever the length${other}. That is no attenuation per metre and stands in none of the sums here.`,
      formula: "Z_T = \\frac{U_{\\mathrm{outside}}}{I_{\\mathrm{inside}} \\ell}",
      substituted: `|Z_T| = ${typeset(leak.transferImpedance, "Ω/m")} \\; (${typeset(input.frequency, "Hz")})`,
      source: "braids: Tyni 1976 and Vance 1975; definitions of IEC 62153-4-1 and 62153-4-4 (from memory)",
      explains: ["transferImpedance", "screeningAttenuation"],
    },
  ];
}

function sendsStep({ sends, input }: BuildResult): WorkingStep[] {
  if (sends === null) return [];
  return [
    {
      text: `The pair sends a little by itself, off its two ends; the wave it carries is taken as running one way over ${significantNumber(input.length, 3)} m:`,
      formula:
        "R = \\frac{\\eta_0}{2\\pi} (k s)^2 \\left(1 - \\frac{\\sin 2 k \\ell}{2 k \\ell}\\right), \\quad \\frac{P}{P_0} = \\frac{R}{\\mathrm{Re} \\, Z_0}",
      substituted: `\\frac{P}{P_0} = ${significantNumber(1e6 * sends, 3)} \\times 10^{-6}`,
      source: "far field of two opposite travelling waves; Storer and King, Proc. IRE 39 (1951) 1408 (from memory)",
      explains: ["sentByPair"],
    },
  ];
}

/** Far above what plugs and a sheet's working voltage allow: told so that the margin can be seen. */
const voltageSteps = ({ voltages }: BuildResult): WorkingStep[] =>
  voltages.map(({ kind, peak, low, high, says, source }) => ({
    text: `From about ${withPrefix(peak, "V", 2)} peak (${withPrefix(low, "V", 2)} to ${withPrefix(high, "V", 2)}) ${says}. Plugs and damaged places fail earlier.`,
    source,
    explains: [kind === "glow" ? "glowVoltage" : "breakdownVoltage"],
  }));

function ratedStep({ input, main }: BuildResult): WorkingStep[] {
  const volts = input.chosen.entry.ratings?.voltage?.value;
  if (volts === undefined) return [];
  const { z0 } = main.constants;
  return [
    {
      text: `Matched, and with no thought of heat, its working voltage (${plainNumber(volts, 0)} V rms) is reached at`,
      formula: "P = \\frac{V^2}{\\mathrm{Re} \\, Z_0}",
      substituted: `\\frac{(${typeset(volts, "V")})^2}{${fixedNumber(z0.re, 1)}\\; \\Omega} = ${typeset(volts ** 2 / z0.re, "W")}`,
      source: sourceOf(input.chosen.entry.sources, /volt|\bV\b/i),
      explains: ["ratedVoltage", "powerAtRatedVoltage"],
    },
  ];
}

const sourceOf = (
  sources: readonly { readonly value: string; readonly source: string; readonly status: string }[],
  about: RegExp,
): string => {
  const found = sources.find((s) => about.test(s.value));
  return found ? `${found.source} (${found.status})` : "the line's entry";
};

/** What is known of the line, from where, and how well. */
const sourceSteps = ({ input, main }: BuildResult): WorkingStep[] => [
  ...input.chosen.entry.sources.map(({ value, source, status }) => ({
    text: `Taken for ${input.chosen.entry.designation}: ${value}.`,
    source: `${source} (${status})`,
    explains: [],
  })),
  ...(input.chosen.entry.sources.length === 0
    ? [
        {
          text: `${input.chosen.entry.designation} is described in the station file; its impedance comes to ${ohms(main.constants.z0)}.`,
          source: "the station file",
          explains: [],
        },
      ]
    : []),
];
