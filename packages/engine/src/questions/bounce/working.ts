/** How the echoes were worked out, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { decibelsPerNeper } from "../../lines/lineConstants";
import { magnitude } from "../../numerics/complex";
import { fixedNumber, metres, ohms, plainNumber, significantNumber } from "../../quantity/format";
import { type BounceFacts, nanoseconds } from "../../words/bounce";
import type { BounceStudy } from "./study";

export function bounceWorking(study: BounceStudy, f: BounceFacts): WorkingStep[] {
  const carrier = f.signal === "carrier";
  return [
    delayStep(study, f),
    reflectionStep(study, f),
    ...(carrier ? carrierSteps(study, f) : []),
    filmStep(study, f),
  ];
}

function delayStep({ stepped, constants }: BounceStudy, f: BounceFacts): WorkingStep {
  const loss = decibelsPerNeper * constants.gamma.re * f.length;
  return {
    text: `${metres(f.length)} of ${f.designation}: inductance and capacitance in the limit of high frequency set the time of a front; one way takes ${nanoseconds(f.delay)}, and at the frequency ${significantNumber(loss, 3)} dB.`,
    formula: "\\tau = \\ell \\sqrt{L C}, \\quad Z = \\sqrt{\\frac{L}{C}}",
    substituted: `\\tau = ${plainNumber(1e9 * f.delay, 1)} \\; \\mathrm{ns}, \\; Z = ${fixedNumber(stepped.surgeImpedance, 2)} \\; \\Omega`,
    result: { value: 1e9 * f.delay, unit: "ns" },
    source: "telegrapher's equations; constants from the line's data or build",
    explains: ["oneWayTime", "surgeImpedance", "firstEchoHome", "wavesOnLine"],
  };
}

function reflectionStep({ lattice, source }: BounceStudy, f: BounceFacts): WorkingStep {
  const load = f.load === null ? "open" : ohms(f.load);
  return {
    text: `The line is ${ohms(f.impedance, 2)} at the frequency; its end is ${load}, its source ${ohms(source)}. Each end sends back a share of the wave that comes:`,
    formula: "\\Gamma = \\frac{Z - Z_0}{Z + Z_0}",
    substituted: `|\\Gamma_{2}| = ${fixedNumber(f.reflectionAtLoad, 3)}, \\; |\\Gamma_{1}| = ${fixedNumber(f.reflectionAtSource, 3)}, \\; |e^{-\\gamma \\ell}| = ${fixedNumber(magnitude(lattice.oneWay), 4)}`,
    source: "definition; voltage waves on the line's own complex impedance",
    explains: [
      "reflectionAtLoad",
      "reflectionAtSource",
      "loadImpedance",
      "sourceResistance",
      "swrAtLoad",
      "firstEchoShare",
      "characteristicImpedance",
    ],
  };
}

function carrierSteps({ lattice }: BounceStudy, f: BounceFacts): WorkingStep[] {
  const round = magnitude(lattice.round);
  return [
    {
      text: "There and back each wave is multiplied by the same factor, so that all echoes are a geometric series; what is missing after n rounds is the factor's power. Within 1 % is called settled.",
      formula:
        "q = \\Gamma_{1} \\Gamma_{2} e^{-2 \\gamma \\ell}, \\quad V = V_0 (1 + q + q^{2} + ...) = \\frac{V_0}{1 - q}",
      substituted: `|q| = ${fixedNumber(round, 4)}${f.echoes === null ? "" : `: \\; ${f.echoes} \\; \\mathrm{echoes}`}`,
      source: "derivation; the sum without end is the phasor answer at any joint",
      explains: ["echoesToSettle", "firstWavePower"],
    },
    {
      text: "Once settled, the sums of both directions give volts and amperes at either end. The source is not in them: it only decides from which voltage the same power is delivered.",
      formula: "P = \\Re (V I^{*}), \\quad P_{+} = |V_{+}|^{2} \\Re \\frac{1}{Z_0}",
      substituted: `P_{+} - P_{-} = ${fixedNumber(f.forwardAtLoad, 2)} - ${fixedNumber(f.reflectedAtLoad, 2)} = ${fixedNumber(f.forwardAtLoad - f.reflectedAtLoad, 2)} \\; \\mathrm{W}, \\; P = ${fixedNumber(f.powerOut, 2)} \\; \\mathrm{W}`,
      result: { value: f.powerOut, unit: "W" },
      source: "telegrapher's equations, exact for complex Z0",
      explains: [
        "powerOutOfLine",
        "powerIntoLine",
        "heatInLine",
        "forwardPowerAtLoad",
        "reflectedPowerAtLoad",
        "crossPowerAtLoad",
        "voltageAtEnd",
        "voltageAtStart",
        "impedanceAtStart",
        "matchedHeatInLine",
      ],
    },
  ];
}

function filmStep({ stepped, moments }: BounceStudy, f: BounceFacts): WorkingStep {
  const { energy } = moments[moments.length - 1]!;
  const micro = (joule: number): string => significantNumber(1e6 * joule, 4);
  return {
    text: `The film steps the waves through ${stepped.sections} delays with the line's losses between them as resistors, coils and capacitors, which meet its loss within ${significantNumber(100 * f.lossDeviation, 2)} %. At its last moment, in microjoules:`,
    formula: "W = W_{\\mathrm{line}} + W_{\\mathrm{heat}} + W_{\\mathrm{load}}",
    substituted: `${micro(energy.delivered)} = ${micro(energy.storedInLine)} + ${micro(energy.heatInLine)} + ${micro(energy.intoLoad)}`,
    source: "Johns and Beurle, Proc. IEE 118 (1971) 1203; Fettweis, Proc. IEEE 74 (1986) 270 (both from memory)",
    explains: [
      "energyResidue",
      "settlingTime",
      "filmDeviation",
      "loadQuality",
      "loadFitDeviation",
      "lossDeviation",
      "seenBeforeEcho",
      "seenAtLast",
    ],
  };
}
