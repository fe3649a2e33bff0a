/** An answer to `radials`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

function swept(name: string, axis: "count" | "length", at: readonly number[], other: number): Table {
  const share = (x: number): number => 30 * (1 - Math.exp(-x / 5));
  const of = (unit: string, value: (x: number) => number) => ({ unit, values: at.map(value) });
  return {
    name,
    axis,
    columns: {
      count: of("1", (x) => (axis === "count" ? x : other)),
      length: of("m", (x) => (axis === "length" ? x : other)),
      wattsToSky: { ...of("W", share), low: at.map((x) => 0.9 * share(x)), high: at.map((x) => 1.08 * share(x)) },
      skyShare: of("%", (x) => share(x) / 0.9),
      swrAtFeedPoint: of("1", (x) => 1.2 + 0.01 * x + 2 * Math.exp(-x / 2)),
      swrAtTransmitter: of("1", (x) => 1.15 + 0.01 * x + 1.6 * Math.exp(-x / 2)),
      feedPointResistance: of("ohm", (x) => 36 + 60 * Math.exp(-x / 4)),
      sendingResistance: of("ohm", () => 11),
    },
  };
}

export function exampleRadials(): Answer {
  const base = exampleAnswer();
  return {
    ...base,
    question: "radials",
    asked: "How many radials, how long, up or down?",
    values: {
      ...base.values,
      powerIntoAntenna: { value: 90, unit: "W" },
      radialCount: { value: 8, unit: "1" },
      radialLength: { value: 6, unit: "m" },
    },
    tables: [
      swept("radialCount", "count", [1, 2, 4, 8, 16, 32], 6),
      swept("radialLength", "length", [1, 2, 4, 6, 9, 12], 8),
      ...base.tables,
    ],
  };
}
