/** A worked point heard from the other end: what the antenna, the line and the receiver make of signal and noise. */
import type { WorkedPoint } from "../../chain/workedPoint";
import { externalNoise, manMadeFrom, type NoiseClass } from "../../noise/externalNoise";
import {
  addedBehindAntenna,
  costOfLine,
  decibelsOf,
  factorOf,
  noiseAtReceiver,
  type ReceivingSystem,
  riseNeeded,
  riseOverDummyLoad,
  sUnitsOf,
  systemNoiseFactor,
  wonAtAntenna,
  wonInShack,
} from "../../noise/systemNoise";
import type { Numbers } from "../common/bounds";
import type { Listening } from "./parameters";

/** dB of signal to noise up to which the line's cost cannot be heard: our rule. */
export const unheard = 0.5;

/** Hz: where the formulas of P.372 begin, and up to where this question carries them on. */
const heardFrom = manMadeFrom;
const heardUpTo = 1e9;
export const canHear = (frequency: number): boolean => frequency >= heardFrom && frequency <= heardUpTo;

/** What may differ from the nominal case. */
export interface Heard {
  readonly place?: NoiseClass;
  readonly decile?: "lower" | "upper";
  readonly receiver?: number;
}

export const externalOf = (listening: Listening, frequency: number, heard: Heard = {}): number =>
  externalNoise(heard.place ?? listening.place, frequency)[heard.decile ?? "total"];

/**
 * By reciprocity the path's available gain towards the receiver is its power gain towards the antenna, exactly, at the same
 * two ends: what leaves the transmitter over what reaches the antenna is the loss on receiving. `radiated` in W of the same point.
 */
export function systemOf(
  listening: Listening,
  point: WorkedPoint,
  radiated: number,
  heard: Heard = {},
): ReceivingSystem {
  return {
    external: factorOf(externalOf(listening, point.frequency, heard)),
    antennaLoss: Math.max(1, point.powerIntoAntenna / radiated),
    antennaTemperature: listening.temperature,
    lineLoss: Math.max(1, point.powerFromTransmitter / point.powerIntoAntenna),
    lineTemperature: lineTemperature(listening, point),
    receiver: factorOf(heard.receiver ?? listening.receiver.value),
  };
}

/** K, each part weighted by its loss; parts that say nothing are as warm as the air. */
function lineTemperature({ temperature }: Listening, { parts }: WorkedPoint): number {
  const used = parts.filter((p) => p.edge.inUse && p.loss > 0);
  const all = used.reduce((sum, p) => sum + p.loss, 0);
  if (all === 0) return temperature;
  const kelvin = (p: (typeof used)[number]): number =>
    p.edge.part?.kind === "line" ? (p.edge.part.temperature?.value ?? temperature) : temperature;
  return used.reduce((sum, p) => sum + p.loss * kelvin(p), 0) / all;
}

/** dB as tables show it: what is below a thousandth is nothing to anybody. */
export const readable = (decibels: number): number => Math.round(1000 * decibels) / 1000;

export const listenUnits: Readonly<Record<string, string>> = {
  externalNoise: "dB",
  receiverNoiseFigure: "dB",
  receiverNoiseAtAntenna: "dB",
  systemNoise: "dB",
  antennaLoss: "dB",
  snrLossByLine: "dB",
  noiseAtReceiver: "dBm",
  noiseOnMeter: "S-units",
  noiseRise: "dB",
  noiseRiseNeeded: "dB",
  wonByPreamplifierInShack: "dB",
  wonByPreamplifierAtAntenna: "dB",
};

/** The numbers of `listen` for one system, by the names of docs/answer.md. */
export function receptionOf(listening: Listening, frequency: number, system: ReceivingSystem): Numbers {
  const preamplifier = {
    noise: factorOf(listening.preamplifier.noise),
    gain: factorOf(listening.preamplifier.gain),
  };
  const dBm = noiseAtReceiver(system, listening.bandwidth);
  const needed = riseNeeded(system.lineLoss, unheard);
  return {
    externalNoise: decibelsOf(system.external),
    receiverNoiseFigure: decibelsOf(system.receiver),
    receiverNoiseAtAntenna: decibelsOf(addedBehindAntenna(system)),
    systemNoise: decibelsOf(systemNoiseFactor(system)),
    antennaLoss: decibelsOf(system.antennaLoss),
    snrLossByLine: costOfLine(system),
    noiseAtReceiver: dBm,
    noiseOnMeter: sUnitsOf(dBm, frequency),
    noiseRise: riseOverDummyLoad(system),
    noiseRiseNeeded: needed > 0 ? needed : null,
    wonByPreamplifierInShack: wonInShack(system, preamplifier),
    wonByPreamplifierAtAntenna: wonAtAntenna(system, preamplifier),
  };
}
