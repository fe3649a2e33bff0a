/** An answer to `radials`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Grid, Table } from "@feedpath/engine";
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

/** The same 48 m of wire in so many pieces. */
function cut(name: string, counts: readonly number[], factor: number): Table {
  const of = (unit: string, value: (n: number) => number) => ({ unit, values: counts.map(value) });
  const share = (n: number): number => factor * (28 - 4 * Math.abs(Math.log2(n / 8)));
  return {
    name,
    axis: "count",
    columns: {
      count: of("1", (n) => n),
      length: of("m", (n) => 48 / n),
      wattsToSky: of("W", share),
      skyShare: of("%", (n) => share(n) / 0.9),
      swrAtFeedPoint: of("1", (n) => 1.2 + 0.4 * factor * Math.abs(Math.log2(n / 6))),
    },
  };
}

/** `spread`: how much more the first of the radials carries than the last. */
function currents(spread: number): { readonly table: Table; readonly grid: Grid } {
  const radials = Array.from({ length: 8 }, (_, i) => i);
  const start = (i: number): number => 0.2 * (1 + ((spread - 1) * (7 - i)) / 7);
  const sum = radials.reduce((total, i) => total + start(i), 0);
  const of = (unit: string, value: (i: number) => number) => ({ unit, values: radials.map(value) });
  const columns = {
    radial: of("1", (i) => i + 1),
    azimuth: of("deg", (i) => 45 * i),
    length: of("m", () => 6),
    current: of("A", start),
    share: of("%", (i) => (100 * start(i)) / sum),
  };
  const places = Array.from({ length: 11 }, (_, i) => 10 * i);
  return {
    table: { name: "radialCurrents", axis: "radial", columns },
    grid: {
      name: "radialCurrentAlong",
      rows: { name: "radial", unit: "1", values: radials.map((i) => i + 1) },
      columns: { name: "place", unit: "%", values: places },
      value: "current",
      unit: "A",
      values: radials.map((i) => places.map((p) => start(i) * Math.cos((Math.PI * p) / 200))),
    },
  };
}

export function exampleRadials(spread = 1): Answer {
  const base = exampleAnswer();
  const { table, grid } = currents(spread);
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
    parameters: { ...base.parameters, lie: "on the soil", otherLie: "2.5 m up" },
    grids: [grid],
    tables: [
      swept("radialCount", "count", [1, 2, 4, 8, 16, 32], 6),
      swept("radialLength", "length", [1, 2, 4, 6, 9, 12], 8),
      cut("sameWire", [2, 3, 4, 6, 8, 12, 16, 24, 32], 1),
      cut("sameWireOtherwise", [2, 3, 4, 6, 8, 12, 16], 1.15),
      table,
      ...base.tables,
    ],
  };
}
