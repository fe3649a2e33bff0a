/** The same lines on every frequency from 1.8 to 432 MHz, with an antenna there that takes nothing. */
import type { Table } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import type { WorkedPoint } from "../../chain/workedPoint";
import { matchedLoss } from "../../lines/lineConstants";
import { externalNoise } from "../../noise/externalNoise";
import {
  addedBehindAntenna,
  costOfLine,
  decibelsOf,
  factorOf,
  type ReceivingSystem,
  systemNoiseFactor,
} from "../../noise/systemNoise";
import type { LinePart } from "../../station/path";
import { columnOver } from "../common/columns";
import type { Listening } from "./parameters";
import { readable, unheard } from "./reception";

export const span = { from: 1.8e6, to: 432e6 };
const points = 97;

export const frequencies = Array.from(
  { length: points },
  (_, i) => span.from * (span.to / span.from) ** (i / (points - 1)),
);

/** Lines on the way in use. */
export const linesOf = ({ parts }: WorkedPoint): LinePart[] =>
  parts.flatMap(({ edge }) => (edge.inUse && edge.part?.kind === "line" ? [edge.part] : []));

/** dB of all lines, each ended in its own impedance. */
const lossAt = (lines: readonly LinePart[], frequency: number): number =>
  lines.reduce((sum, line) => sum + matchedLoss(constantsOf(line, frequency), line.length.value), 0);

function systemAt(listening: Listening, lines: readonly LinePart[], frequency: number): ReceivingSystem {
  return {
    external: factorOf(externalNoise(listening.place, frequency).total),
    antennaLoss: 1,
    antennaTemperature: listening.temperature,
    lineLoss: factorOf(lossAt(lines, frequency)),
    lineTemperature: listening.temperature,
    receiver: factorOf(listening.receiver.value),
  };
}

/** Noise from outside, what line and receiver add, and what the line costs, against frequency. */
export function frequencyTable(listening: Listening, point: WorkedPoint): Table {
  const lines = linesOf(point);
  const systems = frequencies.map((f) => systemAt(listening, lines, f));
  const deciles = frequencies.map((f) => externalNoise(listening.place, f));
  const costs = (decile: "lower" | "upper"): number[] =>
    systems.map((system, i) => readable(costOfLine({ ...system, external: factorOf(deciles[i]![decile]) })));
  return {
    name: "byFrequency",
    axis: "frequency",
    columns: {
      frequency: columnOver(frequencies, "MHz", (f) => f / 1e6),
      externalNoise: {
        unit: "dB",
        values: deciles.map((d) => d.total),
        low: deciles.map((d) => d.lower),
        high: deciles.map((d) => d.upper),
      },
      receiverNoiseAtAntenna: columnOver(systems, "dB", (s) => decibelsOf(addedBehindAntenna(s))),
      systemNoise: columnOver(systems, "dB", (s) => decibelsOf(systemNoiseFactor(s))),
      matchedLineLoss: columnOver(systems, "dB", (s) => decibelsOf(s.lineLoss)),
      snrLossByLine: {
        unit: "dB",
        values: systems.map((s) => readable(costOfLine(s))),
        low: costs("upper"),
        high: costs("lower"),
      },
    },
  };
}

/** Hz from which on the line always costs more than `unheard` dB, up to the end of the span; null where it never does there. */
export function mattersFrom(listening: Listening, point: WorkedPoint): number | null {
  const lines = linesOf(point);
  const cost = (f: number): number => costOfLine(systemAt(listening, lines, f));
  const below = frequencies.findLastIndex((f) => cost(f) < unheard);
  if (below === frequencies.length - 1) return null;
  if (below < 0) return span.from;
  let [low, high] = [frequencies[below]!, frequencies[below + 1]!];
  // Twenty halvings of a step of 6 %: a frequency good to a hertz or so.
  for (let i = 0; i < 20; i++) {
    const middle = Math.sqrt(low * high);
    if (cost(middle) < unheard) low = middle;
    else high = middle;
  }
  return high;
}
