/** Answers with swept tables, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Column, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const column = (unit: string, values: number[], spread = 0): Column =>
  spread === 0
    ? { unit, values }
    : {
        unit,
        values,
        low: values.map((v) => v - spread * Math.abs(v)),
        high: values.map((v) => v + spread * Math.abs(v)),
      };

const swrBand = (values: number[], spread: number): Column => ({
  ...column("1", values, spread),
  low: values.map((v) => Math.max(1, v * (1 - spread))),
});

function bandTable(flatters: number): Table {
  const frequency = steps(6.9, 7.3, 41);
  const antenna = frequency.map((f) => 1.74 + 13.5 * (f - 7.2) ** 2 + 0.4 * Math.max(0, 7.1 - f));
  const meter = antenna.map((swr) => 1 + (swr - 1) * flatters);
  return {
    name: "band",
    axis: "frequency",
    columns: {
      frequency: column("MHz", frequency),
      swrAtTransmitter: swrBand(meter, 0.05),
      swrAtFeedPoint: swrBand(antenna, 0.06),
      feedPointResistance: column(
        "ohm",
        frequency.map((f) => 60 + 30 * (f - 6.9)),
      ),
      feedPointReactance: column(
        "ohm",
        frequency.map((f) => 400 * (f - 7.22)),
      ),
      lineLoss: column(
        "dB",
        frequency.map(() => 0.55),
      ),
      radiatedPower: column(
        "W",
        frequency.map((f) => 68 - 20 * (f - 7.1) ** 2),
      ),
    },
  };
}

/** `flatters`: how much of the antenna's SWR above 1 the meter still sees. */
export function exampleBand(flatters = 0.82): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "band",
    asked: "What will the transmitter see across the band?",
    parameters: { judged: "swrAtTransmitter", swrBelow: 2, sweepFrom: 7, sweepTo: 7.2 },
    values: {
      ...base.values,
      lowestSwrFrequency: { value: 7.19, unit: "MHz" },
      resonantFrequency: { value: 7.22, unit: "MHz" },
      usableWidth: { value: 240, unit: "kHz" },
      swrDifferenceFrequency: { value: 7.0, unit: "MHz" },
    },
    tables: [...base.tables, bandTable(flatters)],
  };
}

function heightTable(): Table {
  const height = steps(3, 25, 23);
  const rise = (h: number, scale: number) => 1 - Math.exp(-(h - 1) / scale);
  return {
    name: "height",
    axis: "height",
    columns: {
      height: column("m", height),
      radiatedPower: column(
        "W",
        height.map((h) => 70 * rise(h, 4.2) - 0.012 * (h - 12) ** 2),
        0.12,
      ),
      swrAtTransmitter: swrBand(
        height.map((h) => 1.28 + 0.75 * Math.sin((h - 6) / 8) ** 2),
        0.06,
      ),
      swrAtFeedPoint: swrBand(
        height.map((h) => 1.33 + 0.85 * Math.sin((h - 6) / 8) ** 2),
        0.06,
      ),
      gainLow: column(
        "dBi",
        height.map((h) => -5 + 13.2 * rise(h, 9)),
        0.03,
      ),
      gainHigh: column(
        "dBi",
        height.map((h) => 6.1 - 0.04 * (h - 8) ** 2 - (h > 18 ? 14 * Math.exp(-((h - 21) ** 2) / 3) : 0)),
      ),
      maximumGain: column(
        "dBi",
        height.map((h) => 6 + 0.06 * h),
      ),
      elevationOfMaximum: column(
        "deg",
        height.map((h) => (h < 9 ? 90 : 90 - 3.8 * (h - 9))),
      ),
      feedPointResistance: column(
        "ohm",
        height.map((h) => 66 + 17 * Math.sin((h - 7) / 4.5)),
        0.06,
      ),
      feedPointReactance: column(
        "ohm",
        height.map((h) => -26 + 15 * Math.cos((h - 6.5) / 4)),
        0.08,
      ),
      heatInSoil: column(
        "W",
        height.map((h) => 45 * Math.exp(-(h - 3) / 9)),
      ),
    },
  };
}

function lobesTable(): Table {
  const height = steps(3, 25, 23);
  const lobe = (h: number, born: number) => (h < born ? null : (180 / Math.PI) * Math.asin(born / h));
  return {
    name: "lobesByHeight",
    axis: "height",
    columns: {
      height: column("m", height),
      elevationOfLobe1: { unit: "deg", values: height.map((h) => lobe(Math.max(h, 9), 9)) },
      gainOfLobe1: column(
        "dBi",
        height.map((h) => 6 + 0.06 * h),
      ),
      elevationOfLobe2: { unit: "deg", values: height.map((h) => lobe(h, 20)) },
      gainOfLobe2: { unit: "dBi", values: height.map((h) => (h < 20 ? null : 0.8 * (h - 20))) },
      minimumAfterLobe1: { unit: "deg", values: height.map((h) => lobe(h, 17)) },
    },
  };
}

export function exampleHeight(): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "height",
    asked: "How high should it hang?",
    parameters: { judged: "radiatedPower", elevation: 20 },
    values: {
      ...base.values,
      presentHeight: { value: 12, unit: "m" },
      lowestSwrHeight: { value: 6, unit: "m" },
      splitHeight: { value: 14.8, unit: "m" },
    },
    tables: [...base.tables, heightTable(), lobesTable()],
  };
}

function impedanceTable(): Table {
  const z = steps(10, 150, 57);
  return {
    name: "impedanceCompromise",
    axis: "characteristicImpedance",
    columns: {
      characteristicImpedance: column("ohm", z),
      attenuation: column(
        "dB/100 m",
        z.map((o) => 1.5 * (0.55 * (80 / o) + 0.45 * (o / 80) ** 1.2)),
      ),
      peakVoltage: column(
        "V",
        z.map((o) => 4200 * (o / 62) * Math.exp(1 - o / 62)),
      ),
      peakPower: column(
        "W",
        z.map((o) => 310e3 * (o / 31) * Math.exp(1 - o / 31)),
      ),
    },
  };
}

export function exampleWhy(): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "why",
    asked: "Why this impedance?",
    headline: "An invented compromise.",
    parameters: {},
    uncertainties: [],
    values: {
      attenuationOptimumAtFrequency: { value: 80, unit: "ohm" },
      voltageOptimum: { value: 62, unit: "ohm" },
      powerOptimum: { value: 31, unit: "ohm" },
      arithmeticMean: { value: 55.5, unit: "ohm" },
      geometricMean: { value: 49.8, unit: "ohm" },
      extraAttenuationAt50: { value: 9.1, unit: "%" },
      extraAttenuationAt75: { value: 0.2, unit: "%" },
      peakVoltageShareAt50: { value: 97.6, unit: "%" },
      peakVoltageShareAt75: { value: 98.1, unit: "%" },
      peakPowerShareAt50: { value: 83, unit: "%" },
      peakPowerShareAt75: { value: 52, unit: "%" },
    },
    joints: [],
    parts: [],
    tables: [impedanceTable()],
    drawing: null,
  };
}
