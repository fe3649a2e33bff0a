/** An answer to `listen`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer } from "@feedpath/engine";
import { exampleAnswer, mixes } from "./exampleAnswer";

const count = 40;
const frequencies = Array.from({ length: count }, (_, i) => 1.8 * 240 ** (i / (count - 1)));

/** `lossy`: the line matters from some frequency on, and the answer is for a band there. */
export function exampleListen(lossy = true): Answer {
  const answer = exampleAnswer(mixes.usual!);
  const of = (unit: string, value: (f: number) => number) => ({ unit, values: frequencies.map(value) });
  const outside = (f: number): number => 70 - 26 * Math.log10(f);
  const cost = (f: number): number => (lossy ? 0.02 * f ** 0.95 : 0.0005 * f);
  const bands = lossy ? [7.1, 28.5, 145] : [7.1];
  return {
    ...answer,
    question: "listen",
    band: lossy ? "2 m" : "",
    frequency: lossy ? 145e6 : 7.1e6,
    parameters: { noisePlace: "residential" },
    values: {
      ...answer.values,
      snrLossByLine: { value: lossy ? 2.3 : 0.004, unit: "dB" },
      lineMattersFrom: lossy ? { value: 29.6, unit: "MHz" } : { value: null, unit: "MHz", reason: "nowhere" },
    },
    tables: [
      {
        name: "byBand",
        axis: "frequency",
        labels: bands.map((f) => `${f} MHz`),
        columns: {
          frequency: { unit: "MHz", values: bands },
          snrLossByLine: { unit: "dB", values: bands.map((f) => 1.1 * cost(f)) },
        },
      },
      {
        name: "byFrequency",
        axis: "frequency",
        columns: {
          frequency: of("MHz", (f) => f),
          externalNoise: {
            ...of("dB", outside),
            low: frequencies.map((f) => outside(f) - 5),
            high: frequencies.map((f) => outside(f) + 10),
          },
          receiverNoiseAtAntenna: of("dB", (f) => 10 + 0.25 * Math.sqrt(f)),
          matchedLineLoss: of("dB", (f) => 0.25 * Math.sqrt(f)),
          snrLossByLine: {
            ...of("dB", cost),
            low: frequencies.map((f) => 0.6 * cost(f)),
            high: frequencies.map((f) => 1.3 * cost(f)),
          },
        },
      },
    ],
  };
}
