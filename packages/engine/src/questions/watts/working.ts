/** How the watts were worked out, step by step, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import type { WorkedPart } from "../../chain/workedPoint";
import { powerWaveReflection, swr } from "../../lines/reflection";
import { complex, magnitude } from "../../numerics/complex";
import { fixedNumber, metres, ohms, plainNumber, significantNumber, swrText, watts } from "../../quantity/format";
import { toDecibels } from "../common/stationNumbers";
import type { Worked } from "../common/worked";
import { wattsFromAntenna } from "./antennaStep";

/** Lines told one by one; more are told by their sum. */
const mostLinesTold = 3;

export function wattsWorking(worked: Worked): WorkingStep[] {
  const lines = worked.point.parts.filter((p) => p.edge.inUse && p.edge.part?.kind === "line");
  return [
    reflectionStep(worked),
    ...lines.slice(0, mostLinesTold).flatMap((p) => lineSteps(worked, p)),
    ...otherParts(worked),
    ...wattsFromAntenna(worked),
    totalStep(worked),
  ];
}

function reflectionStep({ point }: Worked): WorkingStep {
  const feed = point.joints.find((j) => j.name.startsWith("feed point"))!;
  const r = point.ratedResistance;
  const rho = magnitude(powerWaveReflection(feed.impedance, complex(r)));
  return {
    text: `The antenna is ${ohms(feed.impedance)} at its feed point, the transmitter is made for ${plainNumber(r, 1)} Ω:`,
    formula: "|\\Gamma| = \\left|\\frac{Z - R}{Z + R}\\right|",
    substituted: `|\\Gamma| = ${fixedNumber(rho, 3)}, \\; \\mathrm{SWR} = \\frac{1 + |\\Gamma|}{1 - |\\Gamma|} = ${swrText(swr(feed.impedance, r))}`,
    result: { value: swr(feed.impedance, r), unit: "1" },
    source: "definition; IEEE Std 145",
    explains: ["swrAtFeedPoint", "feedPointImpedance", "feedPointResistance", "feedPointReactance"],
  };
}

function lineSteps({ frequency }: Worked, part: WorkedPart): WorkingStep[] {
  if (part.edge.part?.kind !== "line") return [];
  const { z0, gamma, velocityFactor } = constantsOf(part.edge.part, frequency);
  const length = part.length;
  const alpha = (part.matchedLoss ?? 0) / length;
  const source = part.edge.part.line.sources[0];
  return [
    {
      text: `Closed with its own impedance, ${part.edge.name} (${metres(length)} of ${part.edge.part.line.designation}) would take:`,
      formula: "L_0 = \\alpha \\ell",
      substituted: `${significantNumber(100 * alpha, 3)} \\; \\mathrm{dB/100\\,m} \\times ${plainNumber(length, 2)} \\; \\mathrm{m} = ${fixedNumber(part.matchedLoss ?? 0, 3)} \\; \\mathrm{dB}`,
      result: { value: part.matchedLoss ?? 0, unit: "dB" },
      source: source ? `${source.source} (${source.status})` : "the station file",
      explains: ["matchedLineLoss"],
    },
    {
      text: `At the impedance it really works into it takes another amount. With Z0 = ${ohms(z0, 2)} and velocity factor ${fixedNumber(velocityFactor, 3)}:`,
      formula: "V_1 = V_2 \\cosh \\gamma\\ell + I_2 Z_0 \\sinh \\gamma\\ell",
      substituted: `\\gamma\\ell = ${significantNumber(gamma.re * length, 3)} + j\\,${significantNumber(gamma.im * length, 4)}, \\; P_1 = \\mathrm{Re}(V_1 I_1^*) = ${plainNumber(part.powerIn, 1)} \\; \\mathrm{W}, \\; P_2 = ${plainNumber(part.powerOut, 1)} \\; \\mathrm{W}`,
      result: { value: part.heat, unit: "W" },
      source: "telegrapher's equations, exact for complex Z0",
      explains: ["lineLoss", "heatInLines", "heatAddedByMismatch"],
    },
  ];
}

function otherParts({ point }: Worked): WorkingStep[] {
  const rest = point.parts.filter((p) => p.edge.part?.kind !== "line" && p.heat > 0.0005 * point.powerFromTransmitter);
  if (rest.length === 0) return [];
  return [
    {
      text: `Other parts of the path: ${rest.map((p) => `${p.edge.name} ${watts(p.heat)}`).join(", ")}. Each is a two-port with the loss the file states.`,
      source: "the station file",
      explains: ["heatInPath", "pathLoss"],
    },
  ];
}

function totalStep({ point, numbers }: Worked): WorkingStep {
  const radiated = numbers.radiatedPower!;
  const loss = toDecibels(point.ratedPower / radiated);
  return {
    text: "From the transmitter's rated power to the sky:",
    formula: "L = 10 \\log_{10} \\frac{P}{P_{\\mathrm{sky}}}",
    substituted: `L = 10 \\log_{10} \\frac{${plainNumber(point.ratedPower, 1)}}{${plainNumber(radiated, 1)}} = ${fixedNumber(loss, 2)} \\; \\mathrm{dB} = ${fixedNumber(loss / 6, 2)} \\; \\mathrm{S\\text{-}units}`,
    result: { value: loss, unit: "dB" },
    source: "definition; one S-unit is 6 dB: IARU Region 1 Technical Recommendation R.1 (from memory)",
    explains: ["radiatedPower", "powerFromTransmitter"],
  };
}
