/** How the noise and the line's cost were worked out, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { externalNoise, noiseClasses } from "../../noise/externalNoise";
import {
  addedBehindAntenna,
  decibelsOf,
  factorOf,
  type ReceivingSystem,
  referenceTemperature,
  systemNoiseFactor,
} from "../../noise/systemNoise";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import { sMeter } from "../../words/listen";
import type { Worked } from "../common/worked";
import type { Listening } from "./parameters";
import { unheard } from "./reception";

const recommendation = "ITU-R P.372-16 (2022), from memory";

export function listenWorking(worked: Worked, listening: Listening, system: ReceivingSystem): WorkingStep[] {
  return [
    externalStep(worked, listening),
    lossStep(worked, system),
    behindStep(listening, system),
    systemStep(system),
    costStep(system),
    meterStep(worked, listening, system),
    riseStep(worked, system),
    preamplifierStep(worked, listening),
  ];
}

function externalStep({ frequency }: Worked, { place }: Listening): WorkingStep {
  const { c, d } = noiseClasses[place];
  const noise = externalNoise(place, frequency);
  const f = plainNumber(frequency / 1e6, 4);
  const galactic =
    noise.galactic === null
      ? ""
      : `, \\; F_{\\mathrm{gal}} = 52 - 23 \\log_{10} ${f} = ${fixedNumber(noise.galactic, 1)} \\; \\mathrm{dB}`;
  return {
    text: `Median man-made noise of a ${place} place${noise.galactic === null ? "" : " and of the galaxy, added as powers"}, over k T0 b; between its deciles within an hour ${fixedNumber(noise.lower, 1)} to ${fixedNumber(noise.upper, 1)} dB:`,
    formula: "F_a = c - d \\log_{10} f_{\\mathrm{MHz}}",
    substituted: `${c} - ${d} \\log_{10} ${f} = ${fixedNumber(noise.manMade, 1)} \\; \\mathrm{dB}${galactic}, \\; F_a = ${fixedNumber(noise.total, 1)} \\; \\mathrm{dB}`,
    result: { value: noise.total, unit: "dB" },
    source: recommendation,
    explains: ["externalNoise"],
  };
}

function lossStep({ point, numbers }: Worked, { antennaLoss, lineLoss }: ReceivingSystem): WorkingStep {
  const [out, into, sky] = [point.powerFromTransmitter, point.powerIntoAntenna, numbers.radiatedPower!];
  return {
    text: "By reciprocity the path takes from what is received the share that it takes from what is sent, at its real load; so do wires and soil:",
    formula:
      "l_t = \\frac{P_{\\mathrm{set}}}{P_{\\mathrm{antenna}}}, \\; l_c = \\frac{P_{\\mathrm{antenna}}}{P_{\\mathrm{sky}}}",
    substituted: `l_t = \\frac{${significantNumber(out, 4)}}{${significantNumber(into, 4)}} = ${fixedNumber(decibelsOf(lineLoss), 2)} \\; \\mathrm{dB}, \\; l_c = \\frac{${significantNumber(into, 4)}}{${significantNumber(sky, 4)}} = ${fixedNumber(decibelsOf(antennaLoss), 2)} \\; \\mathrm{dB}`,
    source:
      "reciprocity: the available gain one way is the power gain the other way, for the same two ends; elementary",
    explains: ["pathLoss", "antennaLoss"],
  };
}

const ratio = (kelvin: number): string => significantNumber(kelvin / referenceTemperature, 3);

function behindStep({ receiver }: Listening, system: ReceivingSystem): WorkingStep {
  const { lineLoss, lineTemperature } = system;
  const added = addedBehindAntenna(system);
  const lt = significantNumber(lineLoss, 4);
  return {
    text: `What the line, at ${plainNumber(lineTemperature, 0)} K, and a receiver of ${plainNumber(receiver.value, 1)} dB noise figure add, as seen from the antenna's terminals:`,
    formula: "r = (l_t - 1) \\frac{T_t}{T_0} + l_t (f_r - 1)",
    substituted: `${significantNumber(lineLoss - 1, 3)} \\times ${ratio(lineTemperature)} + ${lt} \\times ${significantNumber(system.receiver - 1, 4)} = ${significantNumber(added, 4)}`,
    result: { value: decibelsOf(added), unit: "dB" },
    source: recommendation,
    explains: ["receiverNoiseAtAntenna", "receiverNoiseFigure"],
  };
}

function systemStep(system: ReceivingSystem): WorkingStep {
  const { external, antennaLoss, antennaTemperature } = system;
  const total = systemNoiseFactor(system);
  return {
    text: `Noise of the whole, with antenna and soil at ${plainNumber(antennaTemperature, 0)} K:`,
    formula: "f = f_a + (l_c - 1) \\frac{T_c}{T_0} + l_c r",
    substituted: `${significantNumber(external, 4)} + ${significantNumber(antennaLoss - 1, 3)} \\times ${ratio(antennaTemperature)} + ${significantNumber(antennaLoss, 4)} \\times ${significantNumber(addedBehindAntenna(system), 4)} = ${significantNumber(total, 5)}`,
    result: { value: decibelsOf(total), unit: "dB" },
    source: recommendation,
    explains: ["systemNoise"],
  };
}

function costStep(system: ReceivingSystem): WorkingStep {
  const [now, without] = [systemNoiseFactor(system), systemNoiseFactor({ ...system, lineLoss: 1 })];
  const cost = decibelsOf(now / without);
  return {
    text: "The same with a line that takes nothing; the ratio is what the line costs in signal to noise:",
    formula: "D = 10 \\log_{10} \\frac{f(l_t)}{f(1)}",
    substituted: `D = 10 \\log_{10} \\frac{${significantNumber(now, 6)}}{${significantNumber(without, 6)}} = ${significantNumber(cost, 2)} \\; \\mathrm{dB}`,
    result: { value: cost, unit: "dB" },
    source: "definition",
    explains: ["snrLossByLine"],
  };
}

function meterStep({ numbers, frequency }: Worked, { bandwidth }: Listening, system: ReceivingSystem): WorkingStep {
  const [dBm, units] = [numbers.noiseAtReceiver!, numbers.noiseOnMeter!];
  const reference = frequency < 30e6 ? -73 : -93;
  const total = systemNoiseFactor(system) / (system.antennaLoss * system.lineLoss);
  return {
    text: `At the receiver's input, in a bandwidth of ${withPrefix(bandwidth, "Hz")}, its own noise counted in: ${sMeter(units)} on a meter that keeps to 6 dB a step.`,
    formula: "P = k T_0 b \\frac{f}{l_c l_t}",
    substituted: `P = -174.0 \\; \\mathrm{dBm} + 10 \\log_{10} ${plainNumber(bandwidth, 0)} + ${fixedNumber(decibelsOf(total), 1)} \\; \\mathrm{dB} = ${fixedNumber(dBm, 1)} \\; \\mathrm{dBm}`,
    result: { value: dBm, unit: "dBm" },
    source: `S9 is ${String(reference).replace("-", "−")} dBm here, one S-unit 6 dB: IARU Region 1 Technical Recommendation R.1`,
    explains: ["noiseAtReceiver", "noiseOnMeter"],
  };
}

function riseStep({ numbers }: Worked, { lineLoss }: ReceivingSystem): WorkingStep {
  const needed = numbers.noiseRiseNeeded ?? null;
  const share = 1 - factorOf(-unheard);
  return {
    text:
      needed === null
        ? `The line takes so little that it cannot cost ${unheard} dB, whatever the noise. By the antenna the noise rises over that of a dummy load by:`
        : "How far the noise must rise when the antenna takes the place of a dummy load, so that the line costs no more than that limit, whatever its kind; and how far it rises here:",
    formula: "R_{\\mathrm{least}} = \\frac{1 - 1/l_t}{1 - 10^{-D/10}}, \\; R = \\frac{f}{l_c l_t f_r}",
    substituted: `${needed === null ? "" : `R_{\\mathrm{least}} = \\frac{${significantNumber(1 - 1 / lineLoss, 3)}}{${significantNumber(share, 3)}} = ${fixedNumber(needed, 1)} \\; \\mathrm{dB}, \\; `}R = ${fixedNumber(numbers.noiseRise!, 1)} \\; \\mathrm{dB}`,
    source: "from the equation above with the line at T0; elementary",
    explains: ["noiseRise", "noiseRiseNeeded"],
  };
}

function preamplifierStep({ numbers }: Worked, { preamplifier }: Listening): WorkingStep {
  const [shack, antenna] = [numbers.wonByPreamplifierInShack!, numbers.wonByPreamplifierAtAntenna!];
  return {
    text: `A preamplifier of ${plainNumber(preamplifier.noise, 1)} dB noise figure and ${plainNumber(preamplifier.gain, 1)} dB gain, before the receiver and before the line:`,
    formula: "f_{12} = f_1 + \\frac{f_2 - 1}{g_1}",
    substituted: `D_{\\mathrm{shack}} = ${fixedNumber(shack, 2)} \\; \\mathrm{dB}, \\; D_{\\mathrm{antenna}} = ${fixedNumber(antenna, 2)} \\; \\mathrm{dB}`,
    result: { value: antenna, unit: "dB" },
    source: "Friis, Proc. IRE 32 (1944) 419",
    explains: ["wonByPreamplifierInShack", "wonByPreamplifierAtAntenna"],
  };
}
