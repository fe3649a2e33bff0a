/** An answer to `line`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Column, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const column = (unit: string, values: (number | null)[]): Column => ({ unit, values });

const names = [
  "thick line",
  "RG-213/U",
  "50-ohm corrugated foam line 1/2 in",
  "RG-58C/U",
  "75-ohm drop cable",
  "600-ohm pair",
];
const watts = [96, 88, 92, 64, 86.4, 90];

function shortList(priced: boolean): Table {
  return {
    name: "shortList",
    axis: "line",
    labels: names,
    columns: {
      line: column(
        "1",
        names.map((_, i) => i + 1),
      ),
      wattsIntoAntenna: { unit: "W", values: watts, low: watts.map((w) => 0.96 * w), high: watts.map((w) => w + 1.2) },
      lossAtLoad: column("dB", [0.06, 0.52, 0.3, 1.9, 0.6, 0.5]),
      swrSeen: column("1", [1.8, 1.7, 1.8, 1.5, 2.1, 1.7]),
      voltageUsed: column("%", [2, 3, 4, 6, null, null]),
      weight: column("kg", [12, 4.3, 7.1, 1.1, 1.2, null]),
      bendRadius: column("m", [0.4, 0.1, 0.13, 0.05, null, null]),
      price: column("EUR", priced ? [310, 62, 144, 24, 12, null] : names.map(() => null)),
      standing: column("1", [1, 1, 1, 1, 2, 3]),
      present: column("1", [0, 0, 0, 1, 0, 0]),
    },
  };
}

function lengthTable(): Table {
  const length = Array.from({ length: 61 }, (_, i) => 20 + 0.4 * i);
  const turn = length.map((l) => (2 * Math.PI * (l - 24)) / 17.6);
  return {
    name: "lineLength",
    axis: "length",
    columns: {
      length: column("m", length),
      wattsIntoAntenna: column(
        "W",
        length.map((l) => 92 - 0.3 * (l - 20)),
      ),
      swrSeen: column(
        "1",
        turn.map((t) => 1.55 - 0.5 * Math.cos(t)),
      ),
      resistanceSeen: column(
        "ohm",
        turn.map((t) => 78 - 27 * Math.cos(t)),
      ),
      reactanceSeen: column(
        "ohm",
        turn.map((t) => 26 * Math.sin(t)),
      ),
    },
  };
}

const halfWaves: Table = {
  name: "halfWaves",
  axis: "halfWave",
  labels: ["1 × λ/2, 7.1 MHz", "2 × λ/2, 7.1 MHz"],
  columns: {
    halfWave: column("1", [1, 2]),
    wattsIntoAntenna: column("W", [88, 83]),
    swrSeen: column("1", [1.7, 1.6]),
    length: column("m", [24, 41.6]),
    multiple: column("1", [1, 2]),
    frequency: column("MHz", [7.1, 7.1]),
  },
};

const matchedEnds: Table = {
  name: "matchedEnds",
  axis: "row",
  labels: ["plain, 40 m", "quarter-wave, 40 m", "two short sections, 40 m"],
  columns: {
    row: column("1", [1, 2, 3]),
    wattsIntoAntenna: column("W", [86.4, 82, 84.1]),
    lossAtLoad: column("dB", [0.6, 0.86, 0.75]),
    swrSeen: column("1", [2.1, 1.7, 1.8]),
    frequency: column("MHz", [7.1, 7.1, 7.1]),
  },
};

const sideBySide: Table = {
  name: "sideBySide",
  axis: "pair",
  labels: ["two RG-58C/U"],
  columns: {
    pair: column("1", [1]),
    wattsIntoAntenna: column("W", [58]),
    lossAtLoad: column("dB", [2.3]),
    swrSeen: column("1", [1.5]),
  },
};

/** `kept`: nothing is proposed and no price is known. */
export function exampleLine(kept = false): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "line",
    asked: "Which feed line suits?",
    frequency: 7.1e6,
    parameters: {
      judged: "powerIntoAntenna",
      line: "line 1",
      present: "RG-58C/U",
      length: 28,
      matters: "watts",
      proposal: kept ? null : "RG-213/U",
      lengthOf: "75-ohm drop cable",
      decidedOn: kept ? null : "40 m",
      side: "coaxial",
      seenBy: "transmitter",
    },
    values: {
      ...base.values,
      powerFromTransmitter: { value: 100, unit: "W" },
      wattsOfPresent: { value: 64, unit: "W" },
      lowestSwrByLength: { value: 1.05, unit: "1", reference: 50 },
      highestSwrByLength: { value: 2.05, unit: "1", reference: 50 },
    },
    tables: [...base.tables, shortList(!kept), lengthTable(), halfWaves, matchedEnds, sideBySide],
  };
}
